package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;
import static runthrough.plant.check.Found.assertError;
import static runthrough.plant.check.Found.assertWarning;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.SoundLine;
import runthrough.plant.WorkElement;
import runthrough.plant.check.Message.Severity;
import runthrough.quantity.UnitSystem;

/** Work at a coil change, and practices that leave part of it out: what is refused or warned of. 1.5 m/s are 90 m/min, 2.5 m/s are 150 m/min. */
class WorkAndPracticeCheckTest {

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
        void downtimesWithoutRunningTime_areRefused() {
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
                    "coil-change.reject = 0.02 of passes; should have work that is done again. A rejected joint costs no"
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
                            "process.slowing = 1 m/s; has no part in joining without an accumulator" + IGNORED,
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
                            "entry.creep = 0.5 m/s; has no part in rethreading" + IGNORED,
                            "process.restart.delay = 60 s on average; has no part in rethreading" + IGNORED,
                            "coil-change.tail = 1 element; has no part in rethreading" + IGNORED,
                            "coil-change.join = 1 element; has no part in rethreading" + IGNORED,
                            "coil-change.reject = 0.2 of passes; has no part in rethreading" + IGNORED);
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
}
