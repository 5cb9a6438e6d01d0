package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Near.assertNear;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.PutDown;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * Who does what when. Coils of 2000 m run at 2 m/s, so coil change n has its T0 and T1 at 1000 n s; speeds change at once; the
 * entry runs at 3 m/s and the accumulator holds 1000 m, more than any joint here draws.
 */
class PeopleTest {
    private static final double HOURS = 100_000;

    private static WorkElement element(String name, double seconds) {
        return new WorkElement(
                name, new WorkTime.Timed(Distribution.constant(seconds)), new Occurrence.Always(), false);
    }

    private static Line line(CoilChange change, int uncoilers, double path) {
        return new PlainLine()
                .coils(PlainLine.coil(2000))
                .capacity(1000)
                .entry(3, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .process(2, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .uncoilers(uncoilers, path)
                .join(1)
                .build()
                .with(change);
    }

    private static CoilChange work(int crew, List<WorkElement> prepare, WorkElement... join) {
        return new CoilChange(crew, prepare, List.of(), List.of(join), new Reject.Never());
    }

    private static Replication run(CoilChange change, int uncoilers, double path) {
        return run(change, uncoilers, path, 3);
    }

    private static Replication run(CoilChange change, int uncoilers, double path, int changes) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(changes), 0, 1, 1, 0.9);
        return LineSimulator.unchecked(line(change, uncoilers, path), plan).run(0, Detail.ELEMENTS);
    }

    private static WorkRecord prepared(Replication run, int change) {
        return run.work().stream()
                .filter(work -> work.list() == WorkList.PREPARE && work.change() == change)
                .findFirst()
                .orElseThrow();
    }

    private static ChangeRecord change(Replication run, int number) {
        return run.changes().get(number - 1);
    }

    private static Shift shift(double hours, int crew, Break... breaks) {
        return new Shift("shift", hours, crew, List.of(breaks));
    }

    private static CoilChange inShifts(CoilChange change, Shift... shifts) {
        return change.withShifts(new Shifts(List.of(shifts)));
    }

    // ---- one crew, always there

    @Test
    void preparationIsPutDownForTheJoint_andTakenUpWithWhatWasLeft() {
        // Rules CREW-4, CREW-5.
        // Coil 1 has left its uncoiler 10 m before the joiner, at 995 s: 5 s of 400 s done at T1, 395 s from T2 = 1100
        // on.
        Replication run = run(work(1, List.of(element("load", 400)), element("weld", 100)), 2, 10);

        assertNear(prepared(run, 2).start(), 995);
        assertThat(prepared(run, 2).putDown()).containsExactly(new PutDown(1000, 1100));
        assertNear(prepared(run, 2).end(), 1495);
        assertThat(change(run, 2).waiting()).isZero();
    }

    @Test
    void theExampleThatAnOperatorWouldLaughAt_runsThroughWithEitherPath() {
        // Rules CREW-3, CREW-4. 2000 m at 100 m/min, 5 min to prepare, 100 s to weld draw 167 m of 300 m.
        for (double path : new double[] {0, 10}) {
            Line line = new PlainLine()
                    .coils(PlainLine.coil(2000))
                    .capacity(300)
                    .entry(130 / 60.0, 0.3, 0.3)
                    .process(100 / 60.0, 0.3, 0.3)
                    .uncoilers(2, path)
                    .join(1)
                    .build()
                    .with(work(1, List.of(element("prepare", 300)), element("weld", 100)));
            RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(200), 0, 1, 1, 0.9);

            assertThat(LineSimulator.of(line, plan).run(0, Detail.CHANGES).changes())
                    .hasSize(200)
                    .allMatch(change -> change.outcome() == Outcome.RAN_THROUGH);
        }
    }

    @Test
    void anElementThatIsAsGoodAsDone_isFinished() {
        // Rule CREW-5. 5e-10 s are left at T1 = 1000 s, less than 1e-9 s.
        Replication run = run(work(1, List.of(element("load", 5 + 5e-10)), element("weld", 100)), 2, 10);

        assertThat(prepared(run, 2).putDown()).isEmpty();
        assertNear(prepared(run, 2).end(), 1000);
    }

    @Test
    void aCoilOnTheHookIsFinishedFirst_theJointWaitsForPeople() {
        // Rules CREW-6, CHANGE-14. At 995 s the coil lasts 5 s and loading takes 4 s on average, so it begins; it is
        // drawn as 2 s or 6 s, and 6 s end at 1001 s: the joint waits 1 s for the person.
        WorkElement load = new WorkElement(
                        "load",
                        new WorkTime.Timed(Distribution.observed(List.of(2.0, 6.0))),
                        new Occurrence.Always(),
                        false)
                .notToBePutDown();
        Replication run = run(work(1, List.of(load), element("weld", 100)), 2, 10, 20);

        assertThat(run.changes())
                .extracting(change -> change.waitingForPeople() > 0)
                .contains(true, false);
        for (ChangeRecord change : run.changes()) {
            double took = prepared(run, change.number() + 1).end()
                    - prepared(run, change.number() + 1).start();
            assertNear(change.waitingForPeople(), Math.max(0, took - 5));
            assertThat(change.waitingForPreparation()).isZero();
        }
    }

    @Test
    void anElementNotToBePutDownBeginsOnlyIfItEndsBeforeTheCoilDoes() {
        // Rules CREW-7, CREW-9. At 995 s the coil lasts 5 s, less than 400 s; at T2 (2000 - (1000 - 800))/2 = 900 s.
        Replication run = run(work(1, List.of(element("load", 400).notToBePutDown()), element("weld", 100)), 2, 10);

        assertNear(prepared(run, 2).start(), 1100);
        assertThat(prepared(run, 2).putDown()).isEmpty();
    }

    @Test
    void anElementNotToBePutDownIsLookedAtAgainWhenTheEntryBecomesMatched() {
        // Rule CREW-9. Joint of 300 s: T2 = 1300 s with 400 m held, so coil 2, at 1 m/s, reaches the process 200 s
        // later. At T2 coil 2 lasts (2000 - 600)/2 = 700 s, less than 750 s. The entry fills at 3 m/s: 200 m more until
        // 1500 s, the other 400 m at 2 m/s over the slower process, until 1700 s. Then coil 2 has 2000 - 1200 = 800 m,
        // which last 800 s at 1 m/s. Nothing else happens until its tail stops.
        Line line = new PlainLine()
                .coils(PlainLine.coilAt(2000, 2), PlainLine.coilAt(2000, 1))
                .capacity(1000)
                .entry(3, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .process(2, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .uncoilers(2, 0)
                .join(1)
                .build()
                .with(work(1, List.of(element("load", 750).notToBePutDown()), element("weld", 300)));
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(2), 0, 1, 1, 0.9);
        Replication run = LineSimulator.unchecked(line, plan).run(0, Detail.ELEMENTS);

        assertNear(change(run, 1).released(), 1300);
        assertNear(prepared(run, 2).start(), 1700);
        // Coil 2 lasts until 2500 s, 50 s longer than the loading: the joint waits for nobody.
        assertNear(prepared(run, 2).end(), 2450);
        assertThat(change(run, 2).waiting()).isZero();
    }

    @Test
    void anElementNotToBePutDownBeginsWhenTheJointWaitsForIt() {
        // Rules CREW-7, CREW-8. 950 s are more than the coil lasts at any time when it is looked at: it begins when the
        // joint of
        // change 2 waits for it, at T1 = 2000 s.
        Replication run = run(work(1, List.of(element("load", 950).notToBePutDown()), element("weld", 100)), 2, 10);

        assertNear(prepared(run, 2).start(), 2000);
        assertNear(change(run, 2).waitingForPreparation(), 950);
    }

    @Test
    void anElementNotToBePutDownBeginsAtOnceWherePeopleSufficeBesideIt() {
        // Rules CREW-2, CREW-7. Two people: one remains for the weld.
        Replication run = run(work(2, List.of(element("load", 950).notToBePutDown()), element("weld", 100)), 2, 10);

        assertNear(prepared(run, 2).start(), 995);
        assertThat(change(run, 1).waiting()).isZero();
    }

    @Test
    void peopleLeftOverAreHeldAgainstTheLargestElementListed() {
        // Rules CREW-1, CREW-7. Two people: the alignment takes both, although it comes with every 1000th coil change
        // only.
        WorkElement align = new WorkElement(
                        "align", new WorkTime.Timed(Distribution.constant(10)), new Occurrence.Every(1000), false)
                .withPeople(2);
        Replication run =
                run(work(2, List.of(element("load", 400).notToBePutDown()), align, element("weld", 100)), 2, 10);

        assertNear(prepared(run, 2).start(), 1100);
    }

    @Test
    void elementsForTwoTakeBoth() {
        // Rules CREW-1, CREW-2. Shear (1) leaves one for the preparation; at the weld (2) that is put down, 1010-1110.
        CoilChange change = new CoilChange(
                2,
                List.of(element("load", 400)),
                List.of(element("shear", 10)),
                List.of(element("weld", 100).withPeople(2)),
                new Reject.Never());
        Replication run = run(change, 2, 10);

        assertThat(prepared(run, 2).putDown()).containsExactly(new PutDown(1010, 1110));
        assertThat(change(run, 1).waiting()).isZero();
    }

    // ---- shifts

    @Test
    void nobodyWorksInABreak_butWhatIsUnderWayIsFinished() {
        // Rules CREW-10, CREW-12, CREW-13. Nobody from 900 to 1150 s: the weld of change 1 (T1 = 1000) begins at 1150.
        CoilChange change = inShifts(work(1, List.of(), element("weld", 100)), shift(HOURS, 1, new Break(900, 250, 0)));
        Replication run = run(change, 2, 0);

        assertNear(change(run, 1).waitingForPeople(), 150);
        assertNear(change(run, 1).released(), 1250);
        // The preparation begun at 0 goes on through a break from 100 s on.
        CoilChange prepares = inShifts(
                work(1, List.of(element("load", 400)), element("weld", 100)), shift(HOURS, 1, new Break(100, 600, 0)));
        assertNear(prepared(run(prepares, 2, 0), 1).end(), 400);
    }

    @Test
    void aBreakThatFallsDueInACoilChangeBeginsAtT2WithItsFullLength() {
        // Rules CREW-14, CREW-15. Due at 1050 s, begins at T2 = 1100 and ends at 1400: coil 3 is begun then.
        CoilChange change = inShifts(
                work(1, List.of(element("load", 50)), element("weld", 100)), shift(HOURS, 1, new Break(1050, 300, 0)));

        assertNear(prepared(run(change, 2, 0), 2).start(), 1400);
    }

    @Test
    void aSmallerShiftBeginsAtT2_aLargerOneAtOnce() {
        // Rules CREW-10, CREW-14. Two people until 1050 s: both welds of two people are done at 1120 s.
        WorkElement first = element("first", 60).withPeople(2);
        WorkElement second = element("second", 60).withPeople(2);
        CoilChange smaller = inShifts(work(2, List.of(), first, second), shift(1050, 2), shift(HOURS, 1));
        assertNear(change(run(smaller, 2, 0), 1).released(), 1120);
        // One person until 1030 s: the joint waits 30 s for the second one.
        CoilChange larger = inShifts(work(2, List.of(), first, second), shift(1030, 1), shift(HOURS, 2));
        assertNear(change(run(larger, 2, 0), 1).waitingForPeople(), 30);
        assertNear(change(run(larger, 2, 0), 1).released(), 1150);
    }

    @Test
    void aSmallerShiftThatWasPutOffHoldsFromT2On() {
        // Rule CREW-14. Two people until 1050 s, one until 1550 s and then two again. The smaller shift begins at T2 =
        // 1100
        // s: coil 3, loaded by two, is begun at 1550 s.
        CoilChange change = inShifts(
                work(2, List.of(element("load", 50).withPeople(2)), element("weld", 100)),
                shift(1050, 2),
                shift(500, 1));

        assertNear(prepared(run(change, 2, 0), 2).start(), 1550);
    }

    @Test
    void aBreakThatFallsDueWhileTheEntrySlowsDownIsPutOffToo() {
        // Rule CREW-14. From 2 m/s at 0.5 m/s2: 4 s and 4 m, T0 = 998 s and T1 = 1002 s. The break due at 1000 s begins
        // at T2
        // =
        // 1102 s: nobody waits for it, and coil 3 is begun when it ends.
        CoilChange change = inShifts(
                work(1, List.of(element("load", 50)), element("weld", 100)), shift(HOURS, 1, new Break(1000, 300, 0)));
        Line line = new PlainLine()
                .coils(PlainLine.coil(2000))
                .capacity(1000)
                .entry(3, PlainLine.AT_ONCE, 0.5)
                .process(2, PlainLine.AT_ONCE, PlainLine.AT_ONCE)
                .uncoilers(2, 0)
                .join(1)
                .build()
                .with(change);
        Replication run = LineSimulator.unchecked(line, new RunPlan(new RunPlan.Extent.Changes(3), 0, 1, 1, 0.9))
                .run(0, Detail.ELEMENTS);

        assertNear(change(run, 1).waitingForPeople(), 0);
        assertNear(change(run, 1).released(), 1102);
        assertNear(prepared(run, 2).start(), 1402);
    }

    @Test
    void wherePutOffBreaksOverlap_theSmallerCrewHolds_alsoPastTheEndOfTheShift() {
        // Rules CREW-11, CREW-15. Three breaks fall due in the coil change, with one, nobody and one: all begin at T2 =
        // 1100 and
        // last 10, 20 and 160 s, the last past the end of the shift at 1200. Loading takes two people: from 1260 s on.
        CoilChange change = inShifts(
                work(2, List.of(element("load", 50).withPeople(2)), element("weld", 100)),
                shift(1200, 2, new Break(1010, 10, 1), new Break(1020, 20, 0), new Break(1040, 160, 1)),
                shift(HOURS, 2));
        assertNear(prepared(run(change, 2, 0), 2).start(), 1260);
    }

    @Test
    void wherePutOffBreaksOverlap_aLargerCrewOfAShorterOneDoesNotCount() {
        // Rule CREW-11. Both breaks begin at T2 = 1100 s: nobody until 1260 s, whatever the one person of the other
        // until 1120 s.
        CoilChange change = inShifts(
                work(1, List.of(element("load", 50)), element("weld", 100)),
                shift(HOURS, 1, new Break(1010, 160, 0), new Break(1020, 20, 1)));
        assertNear(prepared(run(change, 2, 0), 2).start(), 1260);
    }

    @Test
    void aBreakFollowsABreak_nobodyComesBetween() {
        // Rule CREW-11. From 0 to 300 s nobody is there, in two breaks.
        CoilChange change = inShifts(
                work(1, List.of(element("load", 50)), element("weld", 100)),
                shift(HOURS, 1, new Break(0, 200, 0), new Break(200, 100, 0)));

        assertNear(prepared(run(change, 2, 0), 1).start(), 300);
    }

    @Test
    void paidHoursAreCrewTimesHoursByTheClock_andEachChangeHasItsShift() {
        // Rules CREW-16, CREW-17. Shifts of 1500 s with 2 and 500 s with 1, breaks paid. Three changes: until T0 of the
        // fourth, at
        // 4000 s, both have come twice.
        CoilChange change = inShifts(
                work(2, List.of(), element("weld", 100)), shift(1500, 2, new Break(100, 300, 0)), shift(500, 1));
        Replication run = run(change, 2, 0);

        assertThat(run.totals().paidSecondsByShift()).containsExactly(2 * 1500.0 * 2, 500.0 * 2);
        assertNear(run.totals().paidSeconds(), 7000);
        // T0 at 1000, 2000 and 3000 s: the first shift, which begins again at 2000 s.
        assertThat(run.changes()).extracting(ChangeRecord::shift).containsExactly(0, 0, 0);
        CoilChange shorter = inShifts(work(2, List.of(), element("weld", 100)), shift(900, 2), shift(1100, 1));
        assertThat(run(shorter, 2, 0).changes()).extracting(ChangeRecord::shift).containsExactly(1, 0, 1);
    }

    @Test
    void withoutShiftsTheCrewIsPaidAllTheTime() {
        // Rule CREW-16.
        Replication run = run(work(2, List.of(), element("weld", 100)), 2, 0);

        assertNear(run.totals().paidSeconds(), 2 * 4000);
        assertThat(run.changes()).extracting(ChangeRecord::shift).containsOnly(0);
    }
}
