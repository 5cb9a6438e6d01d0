package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static runthrough.plant.SoundLine.atSpeed;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.SoundLine;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.check.Message.Severity;
import runthrough.quantity.UnitSystem;

/** What is refused and what is warned of, and what the messages say. 1.5 m/s are 90 m/min, 2.5 m/s are 150 m/min. */
class LineCheckTest {

    private static final RunPlan LONG_RUN = new RunPlan(new RunPlan.Extent.Changes(200), 0, 50, 7, 0.995);

    private static void assertOnly(SoundLine line, Severity severity, String text) {
        assertThat(LineCheck.check(line.build()))
                .extracting(Message::severity, Message::text)
                .containsExactly(tuple(severity, text));
    }

    private static void assertError(SoundLine line, String text) {
        assertOnly(line, Severity.ERROR, text);
    }

    private static void assertWarning(SoundLine line, String text) {
        assertOnly(line, Severity.WARNING, text);
    }

    @Test
    void lineWithoutFault_nothingIsFound() {
        assertThat(LineCheck.check(line().build(), LONG_RUN)).isEmpty();
        assertThat(LineCheck.check(line().withoutAccumulator().build(), LONG_RUN))
                .isEmpty();
        assertThat(LineCheck.check(line().rethread(Distribution.constant(600)).build(), LONG_RUN))
                .isEmpty();
    }

    @Test
    void severalFaults_allAreFoundAtOnceInTheOrderOfTheParts() {
        Line line = line().coils(coil(Distribution.constant(0.5), 0.4, 0.3))
                .topSpeed(1)
                .reserve(250)
                .slowing(2, 300, Double.NaN)
                .build();
        assertThat(LineCheck.check(line))
                .extracting(Message::path)
                .containsExactly(
                        "coil",
                        "entry.top-speed",
                        "accumulator.reserve",
                        "process.slowing.speed",
                        "process.slowing.level");
    }

    @Test
    void usCustomaryBrief_valuesAreInItsUnits() {
        // 250 m are 820.2 ft, 200 m are 656.2 ft.
        Line line = line().reserve(250).build();
        SimulationRequest request = new SimulationRequest("test", List.of(), line, LONG_RUN, UnitSystem.US_CUSTOMARY);
        assertThat(LineCheck.check(request))
                .extracting(Message::text)
                .containsExactly("accumulator.reserve = 820.2 ft; must be at most the accumulator's capacity, 656.2 ft."
                        + " Give a smaller reserve or a larger accumulator.");
    }

    @Nested
    class Accumulators {

        @Test
        void capacityBelowReserve_isRefused() {
            // Rule CHECK-10.
            assertError(
                    line().reserve(201),
                    "accumulator.reserve = 201 m; must be at most the accumulator's capacity, 200 m."
                            + " Give a smaller reserve or a larger accumulator.");
        }

        @Test
        void capacityBelowStopLevel_isRefused() {
            // Rule CHECK-11.
            // 198 m + 1.5^2/(2 * 0.5) m = 200.25 m
            assertError(
                    line().reserve(198),
                    "accumulator = 200 m of strip; must hold at least 200.3 m: the reserve, 198 m, and what the"
                            + " process takes to stop from 90 m/min. Give a larger accumulator, a smaller reserve, a"
                            + " lower process speed or a faster stop.");
        }

        @Test
        void capacityJustTheStopLevel_isAllowed() {
            // Rule CHECK-11.
            assertThat(LineCheck.check(line().reserve(200 - 2.25).build())).isEmpty();
        }

        @Test
        void stopLevelIsThatOfTheFastestCoil() {
            // Rule CHECK-11.
            // 3^2/(2 * 0.5) = 9 m
            assertThat(LineCheck.check(line().coils(coil(600), atSpeed(coil(600), 3))
                            .topSpeed(4)
                            .capacity(8.9)
                            .build()))
                    .extracting(Message::text)
                    .containsExactly("accumulator = 8.9 m of strip; must hold at least 9 m: the reserve, 0 m, and what"
                            + " the process takes to stop from 180 m/min. Give a larger accumulator, a smaller"
                            + " reserve, a lower process speed or a faster stop.");
        }

        @Test
        void noCapacity_isRefusedForJoiningWithAnAccumulator() {
            // Rule CHECK-9.
            assertError(
                    line().accumulator(Accumulator.none()),
                    "accumulator = 0 m of strip; must hold more than 0 to join while the process runs. Give the"
                            + " accumulator, or the practice of joining without one.");
        }

        @Test
        void restartLevelAboveCapacity_isRefused() {
            // Rule CHECK-12.
            assertError(
                    line().restart(200.5, Distribution.constant(0)),
                    "process.restart.level = 200.5 m; must be at most the accumulator's capacity, 200 m. Give a level"
                            + " that the accumulator can reach, or the process never restarts.");
        }

        @Test
        void restartLevelBelowStopLevel_isRefused() {
            // Rule CHECK-13; x_stop(1.5 m/s) = 0 m + 1.5^2/(2 * 0.5) m = 2.25 m
            assertError(
                    line().restart(2, Distribution.constant(0)),
                    "process.restart.level = 2 m; must be at least the level at which the process must stop from"
                            + " 90 m/min, 2.25 m. The process would restart into its next stop, again and again: give a"
                            + " higher level.");
        }

        @Test
        void restartLevelAtStopLevel_isRefusedWhereTheEntryTakesTimeToSpeedUp() {
            assertError(
                    line().restart(2.25, Distribution.constant(0)),
                    "process.restart.level = 2.25 m; must be more than the level at which the process must stop from"
                            + " 90 m/min, 2.25 m. The process would restart into its next stop, again and again: give a"
                            + " higher level.");
            SoundLine atOnce = line().entry(2, 2.5, Double.POSITIVE_INFINITY, 0.5);
            assertThat(LineCheck.check(
                            atOnce.restart(2.25, Distribution.constant(0)).build()))
                    .isEmpty();
        }

        @Test
        void carriageThatCannotFollowTheProcess_isWarnedOf() {
            // Rule CHECK-18.
            // 4 strands at 0.3 m/s give 1.2 m/s.
            StorageForm form = new StorageForm.Strands(4, 50, 1, 0.3, false);
            assertWarning(
                    line().accumulator(Accumulator.of(form)),
                    "accumulator.emptying-speed = 72 m/min of strip from all strands; should be at least the process"
                            + " speed, 90 m/min. While the entry stands the carriage cannot follow, so the line is not"
                            + " feasible as given: let the carriage run faster or the process slower.");
        }

        @Test
        void carriageJustAsFastAsTheProcess_isAllowed() {
            // Rule CHECK-18.
            StorageForm form = new StorageForm.Strands(5, 40, 1, 0.3, false);
            assertThat(LineCheck.check(line().accumulator(Accumulator.of(form)).build()))
                    .isEmpty();
        }
    }

    @Nested
    class Slowing {

        @Test
        void slowedSpeedNotBelowProcessSpeed_isRefused() {
            // Rule CHECK-14.
            assertError(
                    line().slowing(1.5, 20, Double.NaN),
                    "process.slowing.speed = 90 m/min; must be less than the process speed, 90 m/min. Give a lower"
                            + " speed, or leave slowing out.");
        }

        @Test
        void slowingLevelAtCapacity_isRefused() {
            // Rule CHECK-15.
            assertThat(LineCheck.check(line().slowing(1, 200, Double.NaN).build()))
                    .extracting(Message::text)
                    .contains("process.slowing.level = 200 m; must be less than the accumulator's capacity, 200 m."
                            + " Give a level below full, or the process is never at its rated speed.");
        }

        @Test
        void slowingLevelAtStopLevel_isRefused() {
            // Rule CHECK-16.
            assertError(
                    line().slowing(1, 2.25, Double.NaN),
                    "process.slowing.level = 2.25 m; must be more than the level at which the process must stop from"
                            + " 90 m/min, 2.25 m. Give a higher level, or the process stops before it slows.");
        }

        @Test
        void resumeLevelAboveCapacity_isRefused() {
            // Rule CHECK-17.
            assertError(
                    line().slowing(1, 20, 200.1),
                    "process.slowing.resume = 200.1 m; must be at most the accumulator's capacity, 200 m. Give a level"
                            + " that the accumulator can reach, or slowing never ends.");
        }

        @Test
        void resumeLevelNotAboveSlowingLevel_isRefused() {
            // Rule CHECK-17.
            assertError(
                    line().slowing(1, 20, 20),
                    "process.slowing.resume = 20 m; must be more than the level at which slowing begins, 20 m. Give a"
                            + " higher level to resume from, or a lower one to slow at.");
        }

        @Test
        void slowingWithinBounds_isAllowed() {
            assertThat(LineCheck.check(line().slowing(1, 20, 200).build())).isEmpty();
        }
    }

    @Nested
    class Entries {

        @Test
        void entrySlowerThanProcess_isRefused() {
            // Rule CHECK-6.
            assertError(
                    line().topSpeed(1.4),
                    "entry.top-speed = 84 m/min; must be more than the process speed, 90 m/min. The entry must outrun"
                            + " the process: give a higher speed here or a lower one there.");
        }

        @Test
        void entryAsFastAsProcess_isWarnedOf() {
            // Rule CHECK-6.
            assertWarning(
                    line().topSpeed(1.5),
                    "entry.top-speed = 90 m/min; must be more than the process speed, 90 m/min. As it is, the"
                            + " accumulator never refills: give a higher speed here or a lower one there.");
        }

        @Test
        void entrySlowerThanTheFastestCoil_isRefused() {
            // Rule CHECK-6.
            assertThat(LineCheck.check(
                            line().coils(coil(600), atSpeed(coil(600), 3)).build()))
                    .extracting(Message::text)
                    .containsExactly("entry.top-speed = 150 m/min; must be more than the process speed, 180 m/min. The"
                            + " entry must outrun the process: give a higher speed here or a lower one there.");
        }

        @Test
        void creepTooShortToStopFrom_isRefused() {
            // Rule CHECK-8.
            // 1^2/(2 * 0.5) = 1 m
            assertError(
                    line().creep(1, 0.9),
                    "entry.creep.length = 0.9 m; must be at least what it takes to stop from the creep speed"
                            + " 60 m/min, 1 m. Give more metres of creep or a lower creep speed.");
        }

        @Test
        void creepAsFastAsTheSlowestCoil_isRefused() {
            // Rule CHECK-7.
            assertError(
                    line().coils(coil(600), atSpeed(coil(600), 0.5)).creep(0.5, 3),
                    "entry.creep.speed = 30 m/min; must be less than the slowest process speed, 30 m/min. Give a lower"
                            + " creep speed, or leave creep out.");
        }

        @Test
        void creepOnOneStrip_stopsAtTheSlowerOfBothDecelerations() {
            // The process slows at 0.1 m/s2: 1^2/(2 * 0.1) = 5 m, where the entry alone would take 1 m.
            assertError(
                    line().withoutAccumulator().process(1.5, 0.2, 0.1).creep(1, 4),
                    "entry.creep.length = 4 m; must be at least what it takes to stop from the creep speed 60 m/min,"
                            + " 5 m. Give more metres of creep or a lower creep speed.");
        }

        @Test
        void entrySlowerThanProcessOnOneStrip_runsAtTheEntrysSpeed() {
            assertThat(LineCheck.check(line().withoutAccumulator().topSpeed(1).build()))
                    .isEmpty();
        }
    }

    @Nested
    class Coils {

        @Test
        void coilShorterThanItsCrops_isRefused() {
            // Rule CHECK-2.
            assertError(
                    line().coils(coil(Distribution.constant(0.7), 0.4, 0.3)),
                    "coil = 0 m of usable strip; must be more than 0 after its crops, 0.7 m. Give a longer coil or"
                            + " shorter crops.");
        }

        @Test
        void lengthThatMayFallBelowTheCrops_isWarnedOfWithItsChance() {
            // Rule CHECK-2.
            // Uniform from 0 m to 500 m: 5 m of crops are more than 1 coil in 100.
            assertWarning(
                    line().coils(coil(Distribution.uniform(0, 500), 3, 2)),
                    "coil = -5 m to 495 m of usable strip; should always be more than 0 after its crops, 5 m, but is"
                            + " not for 1 coil in 100. A run that draws such a coil ends with an error: give lengths"
                            + " that are bounded below.");
        }

        @Test
        void lengthThatFallsBelowTheCropsOnlyInTheory_isAllowed() {
            // 4.5 m of crops are twelve standard deviations of the logarithm away: no stream of numbers comes there.
            assertThat(LineCheck.check(line().coils(coil(Distribution.lognormal(600, 30), 2.5, 2))
                            .build()))
                    .isEmpty();
        }

        @Test
        void firstCoilTooShortToStopIn_isRefused() {
            // Rule CHECK-3.
            assertError(
                    line().coils(coil(2), coil(600)),
                    "coils.schedule[1] = 2 m of usable strip; must be at least what it takes to stop the first coil"
                            + " from 90 m/min, 2.25 m. Give a longer first coil, a faster stop or a lower process"
                            + " speed.");
        }

        @Test
        void firstCoilTooShortToCreepAndStop_isRefused() {
            // Rule CHECK-3.
            // 3 m + (1.5^2 - 0.5^2)/(2 * 0.5) m = 5 m
            assertError(
                    line().coils(coil(4.9)).creep(0.5, 3),
                    "coil = 4.9 m of usable strip; must be at least what it takes to stop the first coil from"
                            + " 90 m/min, 5 m. Give a longer first coil, a faster stop or a lower process speed.");
        }

        @Test
        void laterCoilTooShortToStopIn_isOnlyTooShortToReachSpeed() {
            // Rule CHECK-4.
            // 1.5^2/(2 * 0.4) + 1.5^2/(2 * 0.5) = 5.0625 m
            assertWarning(
                    line().coils(coil(600), coil(2), coil(600), coil(3)),
                    "coils.schedule[2] = 2 m of usable strip (and 1 more like it); should be at least what it takes to reach"
                            + " 90 m/min and stop from it again, 5.063 m. The entry cannot refill the accumulator from"
                            + " such a coil: give longer coils or faster ramps.");
        }

        @Test
        void coilOfAMixMayComeFirst_soMustBeLongEnoughToStopIn() {
            // Rule CHECK-3.
            CoilSource mix =
                    new CoilSource.Mix(List.of(new CoilSource.Share(coil(600), 3), new CoilSource.Share(coil(2), 1)));
            assertError(
                    line().coilSource(mix),
                    "coils.mix[2] = 2 m of usable strip; must be at least what it takes to stop the first coil from"
                            + " 90 m/min, 2.25 m. Give a longer first coil, a faster stop or a lower process speed.");
        }

        @Test
        void firstCoilThatMayBeTooShortToStopIn_isWarnedOfWithItsChance() {
            // Rule CHECK-3.
            // Uniform from 0 m to 22.5 m: 1 in 10 is below 2.25 m.
            assertThat(LineCheck.check(line().coils(coil(Distribution.uniform(0, 22.5), 0, 0))
                            .build()))
                    .extracting(Message::severity, Message::what)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "0 m to 22.5 m of usable strip; should always be at least what it takes to stop the first"
                                    + " coil from 90 m/min, 2.25 m, but is not for 1 coil in 10"));
        }

        @Test
        void coilWithinTheUncoilersPath_isWarnedOf() {
            // Rule CHECK-5.
            assertWarning(
                    line().coils(coil(30)).uncoilerPath(30),
                    "coil = 30 m of usable strip; should be more than the strip path from uncoiler to joiner, 30 m. Its"
                            + " tail leaves the uncoiler before it has begun to run, which counts as leaving when its"
                            + " joint is released: give a shorter path or longer coils.");
        }

        @Test
        void massesAndDiametersAreCheckedAsLengths() {
            // 100 kg of 0.002 m x 1.25 m x 7850 kg/m3 are 5.0955 m.
            Coil light = new Coil(
                            "light", new Coil.Strip(0.002, 1.25, 7850), new CoilSize.ByMass(Distribution.constant(100)))
                    .withCrops(3, 3);
            // pi (0.51^2 - 0.5^2)/(4 * 0.002) = 3.966 m
            Coil thin = new Coil("thin", new Coil.Strip(0.002, 1.25, 7850), new CoilSize.ByDiameters(0.51, 0.5, 1))
                    .withCrops(2, 2);
            assertThat(LineCheck.check(line().coils(light, thin).build()))
                    .extracting(Message::what)
                    .containsExactly("-0.9045 m of usable strip (and 1 more like it); must be more than 0 after its"
                            + " crops, 6 m");
        }
    }

    @Nested
    class Work {

        @Test
        void boundedDistributionShiftedBelowZero_isRefusedWithItsChance() {
            // Rule CHECK-19.
            // Triangular 60, 90, 240 less 72: below 72 are (72 - 60)^2/((240 - 60)(90 - 60)) = 0.0267, 1 in 38.
            WorkElement element =
                    timed("fetch coil", Distribution.triangular(60, 90, 240).shifted(-72));
            assertError(
                    line().prepare(timed("open", 10), element),
                    "coil-change.prepare[2] = -12 s at least (fetch coil); must never be below 0, but is for 1 draw in"
                            + " 38. Give a smaller negative shift.");
        }

        @Test
        void unboundedDistributionShiftedBelowZero_isWarnedOfWithItsChance() {
            // Rule CHECK-19.
            // Exponential of mean 10 s: below 1 s are 1 - exp(-0.1) = 0.0952, 1 in 11.
            assertWarning(
                    line().tail(timed("shear", Distribution.exponential(10).shifted(-1))),
                    "coil-change.tail[1] = -1 s at least (shear); should never be below 0, but is for 1 draw in 11. A"
                            + " run that draws such a time ends with an error: give a smaller negative shift.");
        }

        @Test
        void distributionShiftedAbove_isAllowed() {
            assertThat(LineCheck.check(line().tail(
                                    timed("shear", Distribution.uniform(5, 10).shifted(-5)))
                            .build()))
                    .isEmpty();
        }

        @Test
        void everyTimeIsCheckedForNegativeShifts() {
            // Rule CHECK-19.
            Distribution negative = Distribution.constant(3).shifted(-4);
            Line line = line().restart(Double.NaN, negative)
                    .downtime(negative, negative)
                    .change(c -> new CoilChange(
                            2,
                            List.of(timed("a", negative)),
                            List.of(timed("b", negative)),
                            List.of(timed("c", negative), timed("d", 5)),
                            c.reject()))
                    .build();
            assertThat(LineCheck.check(line))
                    .filteredOn(Message::isError)
                    .extracting(Message::path)
                    .containsExactly(
                            "process.downtime.running",
                            "process.downtime.standing",
                            "process.restart.delay",
                            "coil-change.prepare[1]",
                            "coil-change.tail[1]",
                            "coil-change.join[1]");
            assertThat(LineCheck.check(line().rethread(negative).build()))
                    .filteredOn(Message::isError)
                    .extracting(Message::path)
                    .containsExactly("coil-change.rethread");
        }

        @Test
        void ownStopsWithoutRunningTime_areRefused() {
            // Rule CHECK-20.
            assertError(
                    line().downtime(Distribution.constant(0), Distribution.constant(60)),
                    "process.downtime.running = 0 s; must be more than 0. Give the time that the process runs between"
                            + " its stops, or leave them out.");
        }

        @Test
        void jointInNoTime_isWarnedOf() {
            // Rule CHECK-21.
            assertWarning(
                    line().tail().join(),
                    "coil-change.join = 0 s with the tail work; should take more than 0. The joint is made in no time:"
                            + " give the elements of the work while the strip stands.");
        }

        @Test
        void rejectsWithoutAnythingToDoAgain_areWarnedOf() {
            // Rule CHECK-21.
            WorkElement weld = new WorkElement(
                    "weld",
                    new WorkElement.WorkTime.Travel(0.01, Distribution.constant(6)),
                    new WorkElement.Occurrence.Always(),
                    false);
            assertWarning(
                    line().prepare().tail().join(weld).reject(new Reject.Chance(0.02)),
                    "coil-change.reject = 2 % of passes; should have work that is done again. A rejected joint costs no"
                            + " time: mark the elements that are done again.");
        }

        @Test
        void rethreadingWithoutItsTime_isRefused() {
            // Rule CHECK-22.
            assertError(
                    line().rethread(Distribution.constant(0)),
                    "coil-change.rethread = 0 s; must be more than 0 for the practice of rethreading. Give the time"
                            + " that it takes to thread the line anew.");
        }
    }

    @Nested
    class Practices {

        private static final String IGNORED = ". It is ignored: leave it out, or choose another practice.";

        @Test
        void rethreadTimeOfAJoinedLine_isWarnedOf() {
            // Rule CHECK-23.
            assertThat(LineCheck.unused(
                            line().build().practice(),
                            Optional.empty(),
                            Optional.of(Distribution.constant(90)),
                            UnitSystem.METRIC))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "coil-change.rethread = 90 s on average; has no part in joining" + IGNORED));
        }

        @Test
        void storageOfALineThatJoinsWithout_isWarnedOf() {
            // Rule CHECK-23.
            SoundLine line = line().slowing(1, 20, Double.NaN)
                    .restart(50, Distribution.constant(0))
                    .withoutAccumulator();
            assertThat(LineCheck.unused(
                            line.build().practice(),
                            Optional.of(Accumulator.ofCapacity(200)),
                            Optional.empty(),
                            UnitSystem.METRIC))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "accumulator = 200 m of strip; has no part in joining without an accumulator" + IGNORED));
            assertThat(LineCheck.check(line.build()))
                    .extracting(Message::text)
                    .containsExactly(
                            "process.slowing = 60 m/min; has no part in joining without an accumulator" + IGNORED,
                            "process.restart.level = 50 m; has no part in joining without an accumulator" + IGNORED);
        }

        @Test
        void joinerOfALineThatRethreads_isWarnedOf() {
            // Rule CHECK-23.
            Line line = line().creep(0.5, 3)
                    .restart(Double.NaN, Distribution.constant(60))
                    .change(c -> new CoilChange(2, c.prepare(), c.tail(), c.join(), new Reject.Every(4)))
                    .practice(new Practice.Rethread(Distribution.constant(600)))
                    .build();
            assertThat(LineCheck.check(line))
                    .extracting(Message::text)
                    .containsExactly(
                            "entry.creep = 30 m/min; has no part in rethreading" + IGNORED,
                            "process.restart.delay = 60 s on average; has no part in rethreading" + IGNORED,
                            "coil-change.tail = 1 element; has no part in rethreading" + IGNORED,
                            "coil-change.join = 1 element; has no part in rethreading" + IGNORED,
                            "coil-change.reject = 20 % of passes; has no part in rethreading" + IGNORED);
        }

        @Test
        void creepOfALineThatRethreads_isNotCheckedAgainstItsSpeeds() {
            assertThat(LineCheck.check(line().rethread(Distribution.constant(600))
                            .creep(5, 0.1)
                            .build()))
                    .extracting(Message::severity)
                    .containsExactly(Severity.WARNING);
        }
    }

    @Nested
    class Runs {

        private final Line random =
                line().join(timed("weld", Distribution.triangular(60, 80, 120))).build();

        private List<Message> checked(Line line, int changes, int leaveOut, int replications, double target) {
            return LineCheck.check(
                    line, new RunPlan(new RunPlan.Extent.Changes(changes), leaveOut, replications, 1, target));
        }

        @Test
        void leavingOutAllCoilChanges_isRefused() {
            // Rule CHECK-24.
            assertThat(checked(random, 20, 20, 50, 0.9))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.ERROR,
                            "run.leave-out = 20 coil changes; must be less than the coil changes run, 20. Run more coil"
                                    + " changes or leave out fewer."));
        }

        @Test
        void targetBeyondWhatTheRunCanShow_isWarnedOfWithWhatWouldDo() {
            // Rule CHECK-25.
            // (25 - 5) * 20 = 400 changes show 400/(400 + 1.96^2) = 99.05 % at most; 99.5 % take 1.96^2 * 0.995/0.005 =
            // 765.
            assertThat(checked(random, 25, 5, 20, 0.995))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "run.target = 99.5 %; 400 coil changes can show 99.05 % at most, if all run through. Run at"
                                    + " least 765 coil changes in all replications together."));
            assertThat(checked(random, 769, 5, 1, 0.995)).hasSize(1);
            assertThat(checked(random, 770, 5, 1, 0.995)).isEmpty();
        }

        @Test
        void targetWithoutAStopBelowTheTargetToRunThrough_isWarnedOf() {
            // Rule CHECK-34.
            RunPlan run = new RunPlan(new RunPlan.Extent.Changes(1000), 0, 10, 1, 0.95);
            assertThat(LineCheck.check(random, run.withTargetWithoutStop(OptionalDouble.of(0.9))))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "run.target-without-stop = 90 %; should be at least the target to run through, 95 %. A coil"
                                    + " change that runs through goes without a stop, so that this target asks nothing"
                                    + " more: give a higher one, or a lower target to run through."));
            assertThat(LineCheck.check(random, run.withTargetWithoutStop(OptionalDouble.of(0.95))))
                    .isEmpty();
        }

        @Test
        void targetOfAll_cannotBeShownByAnyNumber() {
            assertThat(checked(random, 1000, 0, 100, 1))
                    .extracting(Message::remedy)
                    .containsExactly("No number of coil changes can show it: give a target below 100 %.");
        }

        @Test
        void targetOfALineWithoutChance_isShownByOneRun() {
            assertThat(checked(line().build(), 1, 0, 1, 1)).isEmpty();
        }

        @Test
        void runThatEndsBeforeAnyCoil_isWarnedOf() {
            // Rule CHECK-25.
            // 600 m at 1.5 m/s are 400 s.
            RunPlan run = new RunPlan(new RunPlan.Extent.Time(110), 0, 1, 1, 0.9);
            assertThat(LineCheck.check(line().build(), run))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "run.time = 110 s; should be more than it takes to run a coil, 6.667 min. There may be no"
                                    + " coil change to judge: give a longer time."));
        }
    }

    @Test
    void restartDelayOfALineThatJoinsWithout_isPartOfIt() {
        // Rule CHECK-23.
        assertThat(LineCheck.check(line().withoutAccumulator()
                        .restart(Double.NaN, Distribution.constant(60))
                        .build()))
                .isEmpty();
    }

    @Nested
    class Determinism {

        @Test
        void lineOfConstants_isDeterministic() {
            assertThat(line().build().isDeterministic()).isTrue();
        }

        @Test
        void whateverIsLeftToChance_isSeen() {
            Distribution distribution = Distribution.uniform(50, 60);
            WorkElement rare = new WorkElement(
                    "clean",
                    new WorkElement.WorkTime.Timed(Distribution.constant(5)),
                    new WorkElement.Occurrence.Chance(0.1),
                    true);
            CoilSource mix =
                    new CoilSource.Mix(List.of(new CoilSource.Share(coil(600), 3), new CoilSource.Share(coil(700), 1)));
            assertThat(List.of(
                            line().coils(coil(Distribution.uniform(500, 600), 0, 0)),
                            line().coilSource(mix),
                            line().join(timed("weld", distribution)),
                            line().prepare(timed("load", distribution)),
                            line().tail(rare),
                            line().reject(new Reject.Chance(0.01)),
                            line().restart(Double.NaN, distribution),
                            line().downtime(Distribution.exponential(3600), Distribution.constant(60)),
                            line().downtime(Distribution.constant(3600), distribution),
                            line().rethread(distribution)))
                    .allSatisfy(
                            line -> assertThat(line.build().isDeterministic()).isFalse());
        }

        @Test
        void whatHasNoPartInThePractice_isNoChance() {
            Distribution distribution = Distribution.uniform(50, 60);
            assertThat(line().change(c -> new CoilChange(
                                    2,
                                    List.of(),
                                    List.of(timed("shear", distribution)),
                                    List.of(),
                                    new Reject.Chance(0.5)))
                            .practice(new Practice.Rethread(Distribution.constant(600)))
                            .build()
                            .isDeterministic())
                    .isTrue();
        }

        @Test
        void everyNthTime_isNoChance() {
            WorkElement every = new WorkElement(
                    "clean",
                    new WorkElement.WorkTime.Timed(Distribution.constant(5)),
                    new WorkElement.Occurrence.Every(10),
                    true);
            assertThat(line().tail(every).reject(new Reject.Every(7)).build().isDeterministic())
                    .isTrue();
        }
    }
}
