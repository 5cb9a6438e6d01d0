package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.plant.SoundLine.atSpeed;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.check.Found.assertError;
import static runthrough.plant.check.Found.assertWarning;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.SoundLine;
import runthrough.plant.StorageForm;
import runthrough.quantity.UnitSystem;

/** Accumulators, and what slows the process on a low level: what is refused or warned of. 1.5 m/s are 90 m/min, 2.5 m/s are 150 m/min. */
class AccumulatorCheckTest {

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

        /** Whoever gives the bound that is named is within it: 98.757 m are at most 98.75 m, and 0.10034 m at least 0.1004 m. */
        @Test
        void boundsAreRoundedToTheSideThatIsAllowed() {
            assertThat(Wording.in(UnitSystem.METRIC).mostLength(98.757)).isEqualTo("98.75 m");
            assertThat(Wording.in(UnitSystem.METRIC).leastLength(0.10034)).isEqualTo("0.1004 m");
            assertThat(Wording.in(UnitSystem.METRIC).mostLength(72)).isEqualTo("72 m");
            assertThat(Wording.in(UnitSystem.METRIC).leastLength(8 * 12.3)).isEqualTo("98.4 m");
            assertThat(Wording.in(UnitSystem.METRIC).leastSpeed(45 / 60.0)).isEqualTo("45 m/min");
        }

        /** With more reserve than there is accumulator, no level is above the one at which the process must stop. */
        @Test
        void nothingIsSaidOfLevelsThatRestOnAReserveThatIsRefused() {
            assertThat(LineCheck.check(line().reserve(201).slowing(1, 100, 150).build()))
                    .extracting(Message::path)
                    .containsExactly("accumulator.reserve");
        }

        @Test
        void capacityBelowStopLevel_isRefused() {
            // Rule CHECK-11.
            // 198 m + 1.5^2/(2 * 0.5) m = 200.25 m
            assertError(
                    line().reserve(198),
                    "accumulator = 200 m of strip; must hold at least 200.25 m: the reserve, 198 m, and what the"
                            + " process takes to stop from 1.5 m/s. Give a larger accumulator, a smaller reserve, a"
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
                            + " the process takes to stop from 3 m/s. Give a larger accumulator, a smaller"
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
                    "process.restart.level = 2 m; must be more than the level at which the process must stop from"
                            + " 1.5 m/s, 2.25 m. The process would restart into its next stop, again and again: give a"
                            + " higher level, or leave it out for the stop level plus 10 % of the capacity.");
        }

        @Test
        void restartLevelAtStopLevel_isRefusedWhereTheEntryTakesTimeToSpeedUp() {
            assertError(
                    line().restart(2.25, Distribution.constant(0)),
                    "process.restart.level = 2.25 m; must be more than the level at which the process must stop from"
                            + " 1.5 m/s, 2.25 m. The process would restart into its next stop, again and again: give a"
                            + " higher level, or leave it out for the stop level plus 10 % of the capacity.");
            // 0.01 mm above it is above it, however much strip the accumulator holds.
            SoundLine ample = line().accumulator(Accumulator.ofCapacity(2e5));
            assertThat(LineCheck.accepts(
                            ample.restart(2.25001, Distribution.constant(0)).build()))
                    .isTrue();
            SoundLine atOnce = line().entry(2, 2.5, Double.POSITIVE_INFINITY, 0.5);
            assertError(
                    atOnce.restart(2, Distribution.constant(0)),
                    "process.restart.level = 2 m; must be at least the level at which the process must stop from"
                            + " 1.5 m/s, 2.25 m. The process would restart into its next stop, again and again: give a"
                            + " higher level, or leave it out for the stop level plus 10 % of the capacity.");
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
                    "accumulator.emptying-speed = 1.2 m/s of strip from all strands; should be at least the process"
                            + " speed, 1.5 m/s. While the entry stands the carriage cannot follow, so the line is not"
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
                    "process.slowing.speed = 1.5 m/s; must be less than the process speed, 1.5 m/s. Give a lower"
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
                            + " 1.5 m/s, 2.25 m. Give a higher level, or the process stops before it slows.");
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
}
