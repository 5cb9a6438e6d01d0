package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.Near.assertNear;
import static runthrough.simulation.PlainLine.chance;
import static runthrough.simulation.PlainLine.cropped;
import static runthrough.simulation.PlainLine.element;
import static runthrough.simulation.PlainLine.every;
import static runthrough.simulation.PlainLine.once;
import static runthrough.simulation.PlainLine.weld;
import static runthrough.simulation.PlainLine.wide;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilDifference;
import runthrough.plant.CoilSize;
import runthrough.plant.Distribution;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.SimulationException;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * What makes up the joint cycle time: elements that come every time, on every n-th change or by chance, welds across the strip, and
 * joints that are rejected and made again. All speeds jump; coils of 600 m at 1.5 m/s; every coil is prepared in time.
 */
class JointWorkTest {

    private static PlainLine line() {
        return new PlainLine().capacity(10_000);
    }

    private static List<Double> jointCycleTimes(Replication run) {
        return run.changes().stream().map(ChangeRecord::jointCycleTime).collect(Collectors.toList());
    }

    /** Each piece of work of change 1 as "LIST element pass: start-end", seconds from T1. */
    private static List<String> sequence(Replication run) {
        double stopped = run.changes().get(0).tailStopped();
        return run.work().stream()
                .filter(piece -> piece.change() == 1 && piece.start() >= stopped)
                .map(piece -> piece.list() + " " + piece.element() + " pass " + piece.pass() + ": "
                        + Math.round(piece.start() - stopped) + "-" + Math.round(piece.end() - stopped))
                .collect(Collectors.toList());
    }

    @Test
    void s01_tailThenJoin_oneElementAfterAnother() {
        // Rules CHANGE-1, CHANGE-2.
        Replication run = line().tail(5, 8).join(20, 30, 10).run(1);

        assertThat(sequence(run))
                .containsExactly(
                        "TAIL 0 pass 1: 0-5",
                        "TAIL 1 pass 1: 5-13",
                        "JOIN 0 pass 1: 13-33",
                        "JOIN 1 pass 1: 33-63",
                        "JOIN 2 pass 1: 63-73");
        assertNear(run.changes().get(0).jointCycleTime(), 73);
    }

    @Test
    void elementWhenTheWidthDiffers_comesWhereItDoes() {
        // Rule CHANGE-12.
        // Widths 1, 1, 1.2 m in turn: the second change of three meets 1 and 1.2, the third 1.2 and 1.
        WorkElement setUp = new WorkElement(
                "set up",
                new WorkElement.WorkTime.Timed(Distribution.constant(25)),
                new WorkElement.Occurrence.When(Set.of(CoilDifference.WIDTH)),
                true);
        Coil narrow = wide(1500, 1);
        assertThat(jointCycleTimes(line().coils(narrow, narrow, wide(1500, 1.2))
                        .join(60)
                        .join(setUp)
                        .run(6)))
                .containsExactly(60.0, 85.0, 85.0, 60.0, 85.0, 85.0);
    }

    @Test
    void weldTravelsAtTheSpeedForTheThickerStrip() {
        // Rule CHANGE-13.
        // 1 mm and 3 mm in turn, 1 m wide: always 0.02 m/s, 50 s and 5 s more. 1 mm alone: 0.05 m/s, 20 s and 5 s.
        TravelSpeed table = new TravelSpeed.ByThickness(
                List.of(new TravelSpeed.Row(0.001, 0.05), new TravelSpeed.Row(0.003, 0.02)));
        WorkElement weld = new WorkElement(
                "weld",
                new WorkElement.WorkTime.Travel(table, Distribution.constant(5)),
                new WorkElement.Occurrence.Always(),
                true);
        assertThat(jointCycleTimes(
                        line().coils(thick(0.001), thick(0.003)).join(weld).run(3)))
                .containsExactly(55.0, 55.0, 55.0);
        assertThat(jointCycleTimes(line().coils(thick(0.001)).join(weld).run(2)))
                .containsExactly(25.0, 25.0);
    }

    private static Coil thick(double thickness) {
        return new Coil("coil", new Coil.Strip(thickness, 1, 7850), new CoilSize.ByLength(Distribution.constant(1500)));
    }

    @Test
    void s02_elementEveryN_comesOnChangesNAnd2N() {
        // Rule CHANGE-4.
        assertThat(jointCycleTimes(line().join(60).join(every(3, 25)).run(7)))
                .containsExactly(60.0, 60.0, 85.0, 60.0, 60.0, 85.0, 60.0);
    }

    @Test
    void s03_elementByChance_comesInThatShareOfChanges() {
        // Rule CHANGE-4.
        List<Double> times =
                jointCycleTimes(line().join(60).join(chance(0.3, 25)).run(4000));

        assertThat(times).allMatch(time -> Math.abs(time - 60) < 1e-6 || Math.abs(time - 85) < 1e-6);
        double share = times.stream().filter(time -> time > 70).count() / 4000.0;
        // Standard deviation sqrt(0.3 0.7/4000) = 0.0072; four of them.
        assertThat(share).isCloseTo(0.3, within(0.029));
    }

    @Test
    void s04_weldTakesTheWiderOfTheTwoStrips() {
        // Rule CHANGE-3.
        // 0.01 m/s and 6 s: 1.2 m in 126 s, 1.0 m in 106 s, 0.8 m in 86 s.
        Replication run = line().coils(wide(600, 1.0), wide(600, 0.8), wide(600, 1.2))
                .join(weld(0.01, 6))
                .run(4);

        assertThat(jointCycleTimes(run)).containsExactly(106.0, 126.0, 126.0, 106.0);
    }

    @Test
    void s05_rejectedJoint_tailAndJoinAreDoneAgain_prepareIsNot() {
        // Rule CHANGE-9.
        Replication run = line().prepare(once(50))
                .tail(5)
                .join(20)
                .reject(new Reject.Every(1))
                .run(1);

        assertThat(sequence(run))
                .containsExactly(
                        "TAIL 0 pass 1: 0-5", "JOIN 0 pass 1: 5-25", "TAIL 0 pass 2: 25-30", "JOIN 0 pass 2: 30-50");
        assertThat(run.changes().get(0).passes()).isEqualTo(2);
        assertNear(run.changes().get(0).jointCycleTime(), 50);
        assertThat(run.changes().get(0).waiting()).isEqualTo(0);
    }

    @Test
    void s06_onlyWhatIsMarkedForRedoingIsDoneAgain_prepareFirstWithTheStripStanding() {
        // Rules CHANGE-9, CHANGE-11.
        // Redo: prepare element 1 (7 s), tail element 0 (5 s), join elements 0 and 2 (20 and 10 s).
        Replication run = line().prepare(once(50))
                .prepare(7)
                .tail(5)
                .tail(once(3))
                .join(20)
                .join(once(30))
                .join(10)
                .reject(new Reject.Every(1))
                .run(1);

        assertThat(sequence(run))
                .containsExactly(
                        "TAIL 0 pass 1: 0-5",
                        "TAIL 1 pass 1: 5-8",
                        "JOIN 0 pass 1: 8-28",
                        "JOIN 1 pass 1: 28-58",
                        "JOIN 2 pass 1: 58-68",
                        "PREPARE 1 pass 2: 68-75",
                        "TAIL 0 pass 2: 75-80",
                        "JOIN 0 pass 2: 80-100",
                        "JOIN 2 pass 2: 100-110");
        // While the preparation is done again the joint waits for it.
        assertNear(run.changes().get(0).waitingForPreparation(), 7);
        assertThat(run.changes().get(0).waitingForPeople()).isZero();
    }

    @Test
    void s07_everyNElement_isDoneAgainOnItsOwnChangesOnly() {
        // Rule CHANGE-9.
        // Rejected once on every change; the 25 s come on changes 2 and 4, in both passes.
        assertThat(jointCycleTimes(line().join(60)
                        .join(every(2, 25))
                        .reject(new Reject.Every(1))
                        .run(4)))
                .containsExactly(120.0, 170.0, 120.0, 170.0);
    }

    @Test
    void s08_chanceElementIsDrawnAnewInEachPass() {
        // Rule CHANGE-9.
        List<Double> times = jointCycleTimes(line().join(60)
                .join(chance(0.5, 25))
                .reject(new Reject.Every(1))
                .run(400));

        // None, one, or both passes have it.
        assertThat(times).anyMatch(time -> Math.abs(time - 120) < 1e-6);
        assertThat(times).anyMatch(time -> Math.abs(time - 145) < 1e-6);
        assertThat(times).anyMatch(time -> Math.abs(time - 170) < 1e-6);
    }

    @Test
    void s09_durationsAreDrawnAnewInEachPass() {
        // Rule CHANGE-9.
        Replication run = line().join(Distribution.uniform(20, 40))
                .reject(new Reject.Every(1))
                .run(1);
        WorkRecord first = run.work().get(0);
        WorkRecord again = run.work().get(1);

        assertThat(again.end() - again.start()).isNotEqualTo(first.end() - first.start());
    }

    @Test
    void s10_rejectEveryN_onceOnChangesNAnd2N() {
        // Rule CHANGE-8.
        Replication run = line().join(60).reject(new Reject.Every(3)).run(7);

        assertThat(run.changes()).extracting(ChangeRecord::passes).containsExactly(1, 1, 2, 1, 1, 2, 1);
    }

    @Test
    void s11_rejectByChance_isDecidedAfterEachPass() {
        // Rule CHANGE-8.
        // Passes are geometric: mean 1/(1 - 0.4), three or more with probability 0.16.
        Replication run = line().join(10).reject(new Reject.Chance(0.4)).run(5000);
        double mean =
                run.changes().stream().mapToInt(ChangeRecord::passes).average().orElseThrow();
        double threeOrMore =
                run.changes().stream().filter(change -> change.passes() >= 3).count() / 5000.0;

        // Standard deviations sqrt(0.4/0.36/5000) = 0.0149 and sqrt(0.16 0.84/5000) = 0.0052; four of each.
        assertThat(mean).isCloseTo(1 / 0.6, within(0.06));
        assertThat(threeOrMore).isCloseTo(0.16, within(0.021));
    }

    @Test
    void s12_eachPassScrapsBothCropsAndTakesThemFromTheNextCoil() {
        // Rules CHANGE-10, COIL-3.
        // 602 m with crops of 0.5 m at the head and 1.5 m at the tail: 600 m usable. Rejected once: 598 m of coil 2 are
        // left.
        Replication run = line().coils(cropped(602, 0.5, 1.5))
                .join(60)
                .reject(new Reject.Every(1))
                .run(1);

        // T2 = 520 s with 180 m missing; filled at 2.5 m/s in 180 s, 450 m; the other 148 m at 1.5 m/s.
        assertNear(run.totals().duration(), 520 + 180 + 148 / 1.5);
        // Two passes of 2 m, of strip of 15.7 kg/m.
        assertNear(run.totals().scrapMetres(), 4);
        assertNear(run.totals().scrapKilograms(), 4 * 15.7);
        assertNear(run.totals().enteredMetres(), 600 + 598);
    }

    @Test
    void s13_cropsDifferFromCoilToCoil_tailOfTheOldAndHeadOfTheNew() {
        // Rules CHANGE-10, COIL-3.
        Replication run = line().coils(cropped(600, 0.25, 1), cropped(700, 0.5, 3))
                .join(60)
                .reject(new Reject.Every(2))
                .run(2);

        // Change 1: 1 + 0.5. Change 2, twice: 3 + 0.25.
        assertNear(run.totals().scrapMetres(), 1.5 + 2 * 3.25);
        // Usable: 598.75, 696.5, then 598.75 less one pass of 3.25.
        assertNear(run.totals().enteredMetres(), 598.75 + 696.5 + 595.5);
    }

    /** 600 m each, usable 594, 595 and 597 m; coils 2 and 3 lose the tail crop before them and their own head crop, 5 m. */
    @Test
    void s18_cropsOfARejectAreThoseOfTheTwoCoilsJoined() {
        // Rule CHANGE-10.
        Replication run = line().coils(cropped(600, 2, 4), cropped(600, 1, 4), cropped(600, 1, 2))
                .join(60)
                .reject(new Reject.Every(1))
                .run(2);

        assertNear(run.totals().enteredMetres(), 594 + 590 + 592);
    }

    @Test
    void s14_rejectsThatUseUpTheNextCoil_areAnErrorThatNamesIt() {
        // Rule CHANGE-10.
        // Coil 2 has 5 - 4 = 1 m usable; one reject costs 2 + 2 m.
        PlainLine line =
                line().coils(cropped(600, 2, 2), cropped(5, 2, 2)).join(60).reject(new Reject.Every(1));

        assertThatThrownBy(() -> line.run(1))
                .isInstanceOf(SimulationException.class)
                .hasMessage("coil 2 ('coil') has 1 m of usable strip, used up by 1 rejected joints of 4 m each. "
                        + "Give longer coils, shorter crops or fewer rejects");
    }

    @Test
    void s15_usableLengthThatFallsToExactlyZero_isThatErrorToo() {
        // Rule CHANGE-10.
        PlainLine line =
                line().coils(cropped(600, 2, 2), cropped(8, 2, 2)).join(60).reject(new Reject.Every(1));

        assertThatThrownBy(() -> line.run(1)).hasMessageContaining("coil 2 ('coil') has 4 m of usable strip, used up");
    }

    @Test
    void s16_drawnCoilShorterThanItsCrops_isAnErrorThatNamesTheDraw() {
        // Rule COIL-2.
        PlainLine line = new PlainLine()
                .coils(new Coil(
                                "thin",
                                new Coil.Strip(0.002, 1, 7850),
                                new CoilSize.ByLength(Distribution.observed(List.of(3.0, 600.0))))
                        .withCrops(2, 2))
                .join(60);

        assertThatThrownBy(() -> line.run(1000))
                .isInstanceOf(SimulationException.class)
                .hasMessageMatching(
                        "coil (\\d+) \\('thin', draw \\1 of 'coil/length'\\) is 3 m long, no longer than its crops"
                                + " of 2 m and 2 m. Give longer coils or shorter crops");
    }

    @Test
    void s17_shiftedTimeBelowZero_isAnErrorThatNamesElementAndDraw() {
        // Rule DIST-10.
        PlainLine line = line().join(element(Distribution.exponential(10).shifted(-5)));

        assertThatThrownBy(() -> line.run(1000))
                .isInstanceOf(SimulationException.class)
                .hasMessageMatching(
                        "draw \\d+ of 'join/work/time' is -\\d[.\\d]{0,6} s, below 0 s; its shift takes it there. Give a smaller shift");
    }

    @Test
    void s18_tailWorkIsDistinguishedFromJoinWork() {
        Replication run = line().tail(30).join(60).run(1);

        assertThat(run.work()).extracting(WorkRecord::list).contains(WorkList.TAIL, WorkList.JOIN);
        assertThat(run.work()).extracting(WorkRecord::change).containsOnly(1);
    }
}
