package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts.Break;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.builder.LineBuilder;
import runthrough.quantity.UnitSystem;

/**
 * What studies give of shifts, of waiting, and of joints that pass or break: 1 m/s, entry 2 m/s, all ramps 0.5 m/s2, 600 m of
 * strip, coils of 1000 m. So T0 is at 999, 1999, 2999 s, T0 to T1 takes 2 s, and the process need not stop.
 */
class ShiftsAndLossesTest {
    private static final double EIGHT_HOURS = 8 * 3600;

    private static LineBuilder line() {
        return new LineBuilder()
                .coil("strip", 0.002, 0.25, 8000, Distribution.constant(1000))
                .entry(2, 0.5, 0.5)
                .capacity(600)
                .process(1, 0.5, 0.5);
    }

    private static Verdict run(LineBuilder line, int changes) {
        return new RunThroughStudy(new SimulationRequest(
                        "shifts",
                        List.of(),
                        line.describe(),
                        new RunPlan(new RunPlan.Extent.Changes(changes), 0, 1, 1, 0.9),
                        UnitSystem.METRIC))
                .run(
                        new StudyOptions(
                                1,
                                runthrough.simulation.records.Detail.CHANGES,
                                runthrough.simulation.records.Detail.CHANGES),
                        StudyListener.NONE)
                .verdict();
    }

    private static WorkElement weldOfTwo() {
        return new WorkElement("weld", new WorkTime.Timed(Distribution.constant(20)), new Occurrence.Always(), true)
                .withPeople(2);
    }

    @Test
    void eachShiftHasItsOwnFigures_byTheShiftInWhichT0Lies() {
        // Rule CREW-17. Day from 0 to 1500 s, night to 2500 s. At night one of two is away from 1950 to 2400 s: the
        // joint
        // of T1 = 2001 s waits 399 s for people, and takes 419 s; that of day takes 20 s. The third change is at day
        // again,
        // from 2500 s on. The accumulator of 600 m bears all of them.
        Verdict verdict =
                run(line().join(weldOfTwo()).shift("day", 1500, 2).shift("night", 1000, 2, new Break(450, 450, 1)), 3);

        ShiftOutcome day = verdict.shifts().get(0);
        ShiftOutcome night = verdict.shifts().get(1);
        assertThat(List.of(day.name(), night.name())).containsExactly("day", "night");
        assertThat(day.changes()).isEqualTo(new Verdict.Changes(2, 2, 0, 0));
        assertThat(night.changes()).isEqualTo(new Verdict.Changes(1, 1, 0, 0));
        assertThat(day.means().orElseThrow().jointCycleTime().mean()).isCloseTo(20, within(1e-9));
        assertThat(night.means().orElseThrow().jointCycleTime().mean()).isCloseTo(419, within(1e-9));
        assertThat(night.means().orElseThrow().waitingForPeople().mean()).isCloseTo(399, within(1e-9));
        assertThat(night.means().orElseThrow().waitingForPreparation().mean()).isZero();
        // Rules MARGIN-1, FORM-5. T0 to T2 takes 22 s, by night 421 s, with 600 m held, 1 m left on the coil and 1 m of
        // ramp up: 578 m
        // stay,
        // 577 m above the stop level of 1 m; by night 399 m fewer. Refilled from 2 s after T2: 2 s up and 2 s down gain
        // 2 m, the
        // rest 1 m/s.
        ShiftOutcome.Storage byDay = day.storage().orElseThrow();
        ShiftOutcome.Storage byNight = night.storage().orElseThrow();
        assertThat(byDay.spare().metres()).isCloseTo(577, within(1e-9));
        assertThat(byNight.spare().metres()).isCloseTo(178, within(1e-9));
        assertThat(byNight.spare().seconds()).isCloseTo(178, within(1e-9));
        assertThat(byNight.spareWithoutStop()).isEmpty();
        assertThat(byDay.stripDrawn().mean()).isCloseTo(22, within(1e-9));
        assertThat(byNight.stripDrawn().mean()).isCloseTo(421, within(1e-9));
        assertThat(byDay.refillTime().orElseThrow().mean()).isCloseTo(26, within(1e-9));
        assertThat(byNight.refillTime().orElseThrow().mean()).isCloseTo(425, within(1e-9));
        assertThat(night.starvedStops()).isZero();
        // Until T0 of the fourth at 3999 s: day 1500 + 1499 s, night 1000 s, two people each; 2 x 8 h paid in 8 h.
        assertThat(day.paidTime()).isCloseTo(2 * 2999, within(1e-9));
        assertThat(night.paidTime()).isCloseTo(2 * 1000, within(1e-9));
        assertThat(verdict.output().paidTimePerShift().mean()).isCloseTo(2 * EIGHT_HOURS, within(1e-9));
        // The two waits apart: one of three joints waits, for people.
        assertThat(verdict.joint().forPeople().share().mean()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(verdict.joint().forPeople().time().greatest()).isCloseTo(399, within(1e-9));
        assertThat(verdict.joint().forPreparation().share().mean()).isZero();
        assertThat(verdict.joint().waiting().time().greatest()).isCloseTo(399, within(1e-9));
    }

    @Test
    void starvedStopsAndMarginsBelongToTheShiftOfTheirCoilChange() {
        // Rule CREW-17. The same with 400 m and a process that slows at 100 m: by night 178 - 200 = -22 m above the
        // stop level, and
        // 99 m less to slowing: it slows and stops. By day 377 m and 278 m.
        Verdict verdict = run(
                line().capacity(400)
                        .process(1, 0.5, 0.5)
                        .slowing(0.9, 100, 200)
                        .join(weldOfTwo())
                        .shift("day", 1500, 2)
                        .shift("night", 1000, 2, new Break(450, 450, 1)),
                2);

        ShiftOutcome day = verdict.shifts().get(0);
        ShiftOutcome night = verdict.shifts().get(1);
        assertThat(day.storage().orElseThrow().spare().metres()).isCloseTo(278, within(1e-9));
        assertThat(night.storage().orElseThrow().spare().metres()).isCloseTo(-121, within(1e-9));
        assertThat(day.starvedStops()).isZero();
        // One of the two changes at 90 % each: without a stop by day is the whole margin.
        assertThat(day.storage().orElseThrow().spareWithoutStop().orElseThrow().metres())
                .isCloseTo(377, within(1e-9));
        assertThat(List.of(night.changes().stopped(), night.starvedStops())).containsExactly(1L, 1L);
        // Of all coil changes: two margins of one name each.
        Verdict.Storage storage = verdict.storage().orElseThrow();
        assertThat(storage.margin().least()).isCloseTo(-22, within(1e-9));
        assertThat(storage.marginToSlowing().orElseThrow().least()).isCloseTo(-121, within(1e-9));
        assertThat(storage.marginToRunThrough())
                .isEqualTo(storage.marginToSlowing().orElseThrow());
    }

    @Test
    void aShiftInWhichNoCoilChangeBegins_hasNoMeans() {
        // Rule CREW-17. T0 at 999 s, in the first shift.
        Verdict verdict = run(line().join(weldOfTwo()).shift("day", 1500, 2).shift("night", 1000, 2), 1);

        assertThat(verdict.shifts().get(1).changes().total()).isZero();
        assertThat(verdict.shifts().get(1).means()).isEmpty();
        assertThat(verdict.shifts().get(1).storage()).isEmpty();
        assertThat(run(line().join(weldOfTwo()).crew(2), 1).shifts()).isEmpty();
    }

    @Test
    void jointPassagesCostWhatTheyCost() {
        // Rule PASS-4. At half speed from the mark to 10 m after: 0.5 m/s lacks for 20 s, and (1 - 0.5)^2/(2 * 0.5) =
        // 0.25 m on
        // either ramp: 10.5 m. Until T0 of the third at 2999 s and a little, the marks of two joints have passed.
        Verdict verdict = run(line().join("weld", Distribution.constant(20)).jointPassage(0.5, 0, 10), 2);

        Verdict.Passages passages = verdict.passages().orElseThrow();
        double duration = verdict.output().duration().mean();
        assertThat(passages.lostMetresPerShift().mean()).isCloseTo(21 / duration * EIGHT_HOURS, within(1e-6));
        assertThat(passages.share().mean()).isCloseTo(21 / duration, within(1e-9));
        assertThat(verdict.breaks()).isEmpty();
    }

    @Test
    void jointBreaksCostWhatTheyCost() {
        // Rules BREAK-2, BREAK-6. Each joint breaks but for one in a million. The process ramps down in 2 s, stands 100
        // s, ramps up
        // in 2 s: 1 + 100 + 1 m; held 102 s. At 1 m/s the lost time is as many seconds as metres.
        Verdict verdict = run(
                line().join("weld", Distribution.constant(20)).jointBreak(0.999999, 10, Distribution.constant(100), 0),
                2);

        Verdict.Breaks breaks = verdict.breaks().orElseThrow();
        double perShift = EIGHT_HOURS / verdict.output().duration().mean();
        assertThat(breaks.perShift().mean()).isCloseTo(2 * perShift, within(1e-9));
        assertThat(breaks.lostMetresPerShift().mean()).isCloseTo(2 * 102 * perShift, within(1e-6));
        assertThat(breaks.lostTimePerShift().mean()).isCloseTo(2 * 102 * perShift, within(1e-6));
        assertThat(breaks.repairPerShift().mean()).isCloseTo(2 * 102 * perShift, within(1e-6));
        assertThat(verdict.passages()).isEmpty();
    }
}
