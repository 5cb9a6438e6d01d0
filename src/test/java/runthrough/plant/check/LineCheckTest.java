package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;
import static runthrough.plant.check.Found.LONG_RUN;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.check.Message.Severity;
import runthrough.quantity.UnitSystem;

/** The line as a whole and its run: what is refused and what is warned of, and what the messages say. 1.5 m/s are 90 m/min, 2.5 m/s are 150 m/min. */
class LineCheckTest {

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
        // 250 m are 820.2 ft, 200 m are 656.17 ft: 656.1 ft may be given, and 656.2 ft not.
        Line line = line().reserve(250).build();
        SimulationRequest request = new SimulationRequest("test", List.of(), line, LONG_RUN, UnitSystem.US_CUSTOMARY);
        assertThat(LineCheck.check(request))
                .extracting(Message::text)
                .containsExactly("accumulator.reserve = 820.2 ft; must be at most the accumulator's capacity, 656.1 ft."
                        + " Give a smaller reserve or a larger accumulator.");
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
                            "run.target = 0.995; 400 coil changes can show 0.990488 at most, if all run through. Run at"
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
                            "run.target-without-stop = 0.9; should be at least the target to run through, 0.95. A coil"
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
            assertThat(checked(line().build(), 2, 1, 1, 1)).isEmpty();
        }

        @Test
        void firstCoilThatIsMuchOfTheRun_isWarnedOfWithWhatMendsIt() {
            // Rule CHECK-36. 5 coil changes are 6 coils, 1/6 = 17 %; of 99 it is 1 %.
            assertThat(checked(line().build(), 5, 0, 1, 0.9))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "run.leave-out = 0; the first coil, which runs before any coil change, is about 0.17 of a run"
                                    + " of 5: stops, lost time and scrap of 8 h or a year are too low by that, output is"
                                    + " too high. Leave out 1, or run at least 100 coil changes."));
            assertThat(checked(line().build(), 98, 0, 1, 0.9)).hasSize(1);
            assertThat(checked(line().build(), 99, 0, 1, 0.9)).isEmpty();
            assertThat(checked(line().build(), 5, 1, 1, 0.9)).isEmpty();
        }

        @Test
        void runOfAFewCoilsThatEndsWithinOne_isWarnedOf() {
            // Rule CHECK-36. A coil takes 400 s; half of it is 5 % of 4000 s, and 1 % of 20000 s.
            RunPlan run = new RunPlan(new RunPlan.Extent.Time(4000), 0, 1, 1, 0.9);
            assertThat(LineCheck.check(line().build(), run))
                    .extracting(Message::severity, Message::text)
                    .containsExactly(tuple(
                            Severity.WARNING,
                            "run.time = 4000 s; it ends within a coil, so that stops, lost time and scrap of 8 h or a year"
                                    + " are too low by about 0.05, output is too high. Give at least 20000 s, or in its"
                                    + " place a number of coil changes with leave-out: 1."));
            assertThat(LineCheck.check(line().build(), new RunPlan(new RunPlan.Extent.Time(4000), 1, 1, 1, 0.9)))
                    .singleElement()
                    .extracting(Message::text)
                    .asString()
                    .contains("are too high by about 0.05, output is too low");
            assertThat(LineCheck.check(line().build(), run.withExtent(new RunPlan.Extent.Time(20001))))
                    .isEmpty();
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
                            "run.time = 110 s; should be more than it takes to run a coil, 400 s. There may be no"
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
        void whateverIsRandom_isSeen() {
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
