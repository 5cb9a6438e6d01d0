package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.plant.SoundLine.atSpeed;
import static runthrough.plant.SoundLine.coil;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import runthrough.plant.Accumulator;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.plant.StorageForm;

/**
 * The hand calculation of whole lines. The line changed here draws 140.0625 m at its 90 s of joint (K06 of the closed forms),
 * of 200 m, with a process that stops in 2.25 m; a coil runs for 400 s.
 */
class HandCalculationTest {

    @Test
    void everyNumberStandsBesideWhatThereIs() {
        HandCalculation calculation = HandCalculation.of(line().build());
        Storage storage = calculation.storage().orElseThrow();
        assertThat(calculation.joint().total()).isEqualTo(90);
        assertThat(calculation.coilRun()).isEqualTo(400);
        assertThat(storage.stripDrawn()).isEqualTo(140.0625);
        assertThat(storage.atRatedSpeed().capacity().given()).isEqualTo(200);
        assertThat(storage.atRatedSpeed().capacity().needed()).isEqualTo(142.3125);
        assertThat(storage.withoutSlowing()).isEmpty();
        // (200 - 142.3125)/1.5 s more than 90 s
        assertThat(storage.atRatedSpeed().jointCycleTime().spare()).isCloseTo(38.4583333, within(1e-7));
        assertThat(storage.atRatedSpeed().speed().needed()).isEqualTo(1.5);
        // V^2 (1 + 1.25 + 1) + 90 V - 200 = 0
        double fastest = storage.atRatedSpeed().speed().given();
        assertThat(3.25 * fastest * fastest + 90 * fastest).isCloseTo(200, within(1e-9));
        assertThat(storage.refill().orElseThrow().time()).isEqualTo(142.3125);
        assertThat(storage.coilStrip().orElseThrow().spare()).isCloseTo(1.5 * 160.9375, within(1e-9));
        assertThat(calculation.preparationTime().given()).isEqualTo(400);
        assertThat(calculation.preparationTime().needed()).isEqualTo(120);
        assertThat(calculation.standstill()).isEmpty();
        assertThat(calculation.emptying()).isEmpty();
        assertThat(calculation.bending()).isEmpty();
    }

    @Test
    void processThatSlows_takesMoreNotToSlow() {
        // Rule FORM-7.
        // 140.0625 m drawn and 70 m at which it slows, of 200 m.
        HandCalculation calculation = HandCalculation.of(
                line().slowing(1, 70, Double.NaN).topSpeed(1.6).build());
        Storage storage = calculation.storage().orElseThrow();
        assertThat(storage.atRatedSpeed().capacity().isEnough()).isTrue();
        assertThat(storage.withoutSlowing().orElseThrow().capacity().needed()).isEqualTo(210.0625);
        assertThat(storage.withoutSlowing().orElseThrow().capacity().isEnough()).isFalse();
        // The entry is so slow that it is not refilled in time, but that comes after.
        assertThat(storage.coilStrip().orElseThrow().isEnough()).isFalse();
        assertThat(calculation.limitingFactor()).contains(Limit.CAPACITY);
    }

    @Nested
    class LimitingFactor {

        @Test
        void mostLoadedLimit_isNearest() {
            // Rule FORM-12.
            // Capacity 142.3/200 = 0.71, refill 356.3/597.75 = 0.60, preparation 120/400 = 0.3.
            assertThat(HandCalculation.of(line().build()).limitingFactor()).contains(Limit.CAPACITY);
            assertThat(HandCalculation.of(line().capacity(300).build()).limitingFactor())
                    .contains(Limit.REFILL);
            assertThat(HandCalculation.of(line().prepare(timed("load", 380)).build())
                            .limitingFactor())
                    .contains(Limit.PREPARATION);
        }

        @Test
        void tooSmallAnAccumulator_comesFirst() {
            // Rule FORM-12.
            assertThat(HandCalculation.of(line().capacity(140)
                                    .coils(coil(300))
                                    .prepare(timed("load", 900))
                                    .build())
                            .limitingFactor())
                    .contains(Limit.CAPACITY);
        }

        @Test
        void coilTooShortToRefill_comesBeforePreparation() {
            // Rule FORM-12.
            assertThat(HandCalculation.of(line().coils(coil(300))
                                    .prepare(timed("load", 900))
                                    .build())
                            .limitingFactor())
                    .contains(Limit.REFILL);
        }

        @Test
        void entryThatNeverRefills_isLimitedByRefill() {
            HandCalculation calculation =
                    HandCalculation.of(line().topSpeed(1.5).build());
            assertThat(calculation.limitingFactor()).contains(Limit.REFILL);
            assertThat(calculation.storage().orElseThrow().refill()).isEmpty();
            assertThat(calculation.storage().orElseThrow().coilStrip()).isEmpty();
        }

        @Test
        void waitingThatTheAccumulatorDoesNotBear_isLimitedByPreparation() {
            // One uncoiler: 120 s less the 10 s of tail work are waited for, 200 s of joint in all, 305 m of strip
            // drawn.
            HandCalculation calculation = HandCalculation.of(line().uncoilers(1).build());
            assertThat(calculation.joint().waiting()).isEqualTo(110);
            assertThat(calculation
                            .storage()
                            .orElseThrow()
                            .atRatedSpeed()
                            .capacity()
                            .isEnough())
                    .isFalse();
            assertThat(calculation.limitingFactor()).contains(Limit.PREPARATION);
            assertThat(calculation.preparationTime().isEnough()).isFalse();
        }

        @Test
        void waitingThatTheAccumulatorBears_isNoFailure() {
            // 30 s: 20 s of them waited for, of the 38.46 s that the accumulator has as a margin.
            HandCalculation calculation = HandCalculation.of(
                    line().uncoilers(1).prepare(timed("load", 30)).build());
            assertThat(calculation.preparation().waiting()).isEqualTo(20);
            assertThat(calculation.preparationTime().given()).isCloseTo(10 + 38.4583333, within(1e-7));
            assertThat(calculation.preparationTime().isEnough()).isTrue();
            assertThat(calculation
                            .storage()
                            .orElseThrow()
                            .atRatedSpeed()
                            .capacity()
                            .isEnough())
                    .isTrue();
        }
    }

    @Test
    void rejects_costCropsOfTheNextCoil() {
        // 0.25 extra passes, each 0.7 m: 600 - 0.7 - 0.175 m of usable strip.
        HandCalculation calculation = HandCalculation.of(line().coils(coil(Distribution.constant(600), 0.4, 0.3))
                .reject(new Reject.Chance(0.2))
                .build());
        assertThat(calculation.coilRun()).isCloseTo(599.125 / 1.5, within(1e-9));
    }

    @Nested
    class OneStrip {

        @Test
        void joiningWithout_standsForJointAndRestartDelay() {
            // Rule FORM-10.
            // 90 s and 60 s; ramps of 0.5 and 0.2 m/s2 miss 2.25 m and 5.625 m: 232.875 m in 3 + 150 + 7.5 s.
            HandCalculation calculation = HandCalculation.of(line().withoutAccumulator()
                    .restart(Double.NaN, Distribution.constant(60))
                    .build());
            Standstill standstill = calculation.standstill().orElseThrow();
            assertThat(standstill.standing()).isEqualTo(150);
            assertThat(standstill.stopped()).isCloseTo(160.5, within(1e-12));
            assertThat(standstill.lostMetres()).isCloseTo(232.875, within(1e-12));
            assertThat(standstill.cycle()).isCloseTo((600 + 232.875) / 1.5, within(1e-9));
            assertThat(calculation.coilRun()).isEqualTo(standstill.cycle());
            assertThat(standstill.utilisation()).isCloseTo(600 / 832.875, within(1e-12));
            assertThat(standstill.output()).isCloseTo(1.5 * 600 / 832.875, within(1e-12));
            assertThat(calculation.storage()).isEmpty();
            assertThat(calculation.limitingFactor()).isEmpty();
            assertThat(calculation.emptying()).isEmpty();
        }

        @Test
        void rethreading_standsForTheRethreadOnly() {
            // Rule FORM-10.
            HandCalculation calculation = HandCalculation.of(line().rethread(Distribution.constant(600))
                    .restart(Double.NaN, Distribution.constant(60))
                    .build());
            assertThat(calculation.standstill().orElseThrow().standing()).isEqualTo(600);
        }

        @Test
        void waitingStretchesTheCycle_untilPreparingFitsIn() {
            HandCalculation calculation = HandCalculation.of(
                    line().withoutAccumulator().prepare(timed("load", 900)).build());
            // Ideal cycle (600 + 142.875)/1.5 = 495.25 s; preparing takes 900 s in each.
            assertThat(calculation.preparation().waiting()).isCloseTo(900 - 495.25, within(1e-9));
            assertThat(calculation.preparation().grows()).isFalse();
            assertThat(calculation.coilRun()).isCloseTo(900, within(1e-9));
            assertThat(calculation.standstill().orElseThrow().output()).isCloseTo(600.0 / 900, within(1e-12));
        }
    }

    @Test
    void bendingIsCheckedForEachThickness_thickestFirst() {
        // Rule ACC-10.
        // 210 GPa / (2 * 300 MPa) = 350 thicknesses: 0.7 m for 2 mm, 0.35 m for 1 mm, over a roll of 0.5 m.
        Coil thin =
                new Coil("thin", new Coil.Strip(0.001, 1.25, 7850), new CoilSize.ByLength(Distribution.constant(600)));
        HandCalculation calculation = HandCalculation.of(line().coils(thin, coil(600), thin)
                .bending(new Bending(210e9, 300e6, 0.5))
                .build());
        assertThat(calculation.bending()).extracting(BendingCheck::thickness).containsExactly(0.002, 0.001);
        assertThat(calculation.bending().get(0).radius().needed()).isCloseTo(0.7, within(1e-12));
        assertThat(calculation.bending())
                .extracting(check -> check.radius().isEnough())
                .containsExactly(false, true);
    }

    @Test
    void carriageMustGiveStripAsFastAsTheFastestCoilRuns() {
        // Rule ACC-7.
        HandCalculation calculation =
                HandCalculation.of(line().accumulator(Accumulator.of(new StorageForm.Strands(8, 25, 0.3, 0.2, false)))
                        .coils(coil(600), atSpeed(coil(600), 1.7))
                        .build());
        Margin emptying = calculation.emptying().orElseThrow();
        assertThat(emptying.given()).isCloseTo(1.6, within(1e-12));
        assertThat(emptying.needed()).isEqualTo(1.7);
        assertThat(emptying.isEnough()).isFalse();
    }
}
