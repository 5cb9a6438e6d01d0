package runthrough.plant.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.plant.SoundLine.line;
import static runthrough.plant.SoundLine.timed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilDifference;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.ProcessSection.JointBreak;
import runthrough.plant.ProcessSection.JointPassage;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.SoundLine;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;

/** What is found of people, shifts and joints on their way. The process of the line runs at 1.5 m/s, 90 m/min. */
class CrewAndJointCheckTest {
    private static final double HOUR = 3600;

    private static List<String> found(SoundLine line) {
        return LineCheck.check(line.build()).stream()
                .map(message -> (message.isError() ? "error " : "warning ") + message.text())
                .toList();
    }

    private static SoundLine shifts(Shift... list) {
        return line().change(change -> change.withShifts(new Shifts(List.of(list))));
    }

    private static SoundLine joints(Optional<JointPassage> passage, Optional<JointBreak> breaking) {
        return line().process(ProcessSection.running(1.5, 0.2, 0.5)
                .withJoints(new ProcessSection.JointsInProcess(passage, breaking)));
    }

    private static SoundLine passage(double speed, double before, double after) {
        return joints(Optional.of(new JointPassage(speed, before, after)), Optional.empty());
    }

    @Test
    void elementForMorePeopleThanTheCrew_isRefused() {
        // Rule CHECK-26.
        assertThat(found(line().join(timed("fit up", 20), timed("clamp", 60).withPeople(3))))
                .containsExactly(
                        "error coil-change.join[2].clamp.people = 3 people; must be at most the crew, 2 people."
                                + " Give a larger crew, or fewer people for the element.");
        assertThat(found(line().crew(1).prepare(timed("load", 120).withPeople(2))))
                .containsExactly(
                        "error coil-change.prepare[1].load.people = 2 people; must be at most the crew, 1 person."
                                + " Give a larger crew, or fewer people for the element.");
        assertThat(found(line().join(timed("clamp", 60).withPeople(2)))).isEmpty();
    }

    @Test
    void largestCrewOfAnyShiftCounts_andASmallerShiftIsWarnedOf() {
        SoundLine twoShifts = shifts(
                        new Shift("early", 8 * HOUR, 3, List.of()), new Shift("late", 8 * HOUR, 1, List.of()))
                .change(change -> change.withWork(
                        change.prepare(),
                        change.tail(),
                        List.of(timed("clamp", 60).withPeople(2))));
        assertThat(found(twoShifts))
                .containsExactly("warning coil-change.shifts[2].crew = 1 person in late; should be at least those that"
                        + " clamp takes, 2 people. A joint waits for a larger crew to come: give a larger crew here, or"
                        + " fewer people for the element.");
        SoundLine four = twoShifts.change(change -> change.withWork(
                change.prepare(), change.tail(), List.of(timed("clamp", 60).withPeople(4))));
        assertThat(found(four))
                .containsExactly(
                        "error coil-change.join[1].clamp.people = 4 people; must be at most the largest crew of any"
                                + " shift, 3 people. Give a larger crew, or fewer people for the element.");
    }

    @Test
    void shiftWhoseBreaksTakeAllOfIt_isWarnedOf() {
        // By the clock nobody is there from 8 h to 16 h: two breaks of 4 h. Where somebody stays, or is there for a
        // minute, all is well.
        Shift early = new Shift("early", 8 * HOUR, 2, List.of());
        assertThat(found(shifts(
                        early,
                        new Shift(
                                "late",
                                8 * HOUR,
                                1,
                                List.of(new Break(0, 4 * HOUR, 0), new Break(4 * HOUR, 4 * HOUR, 0))))))
                .containsExactly("warning coil-change.shifts[2].breaks = nobody there in all of its 28800 s;"
                        + " should leave some time with people. Joints and coils wait for the next"
                        + " shift, but for a break that is put off because a coil change is going on: give shorter"
                        + " breaks, or people who stay.");
        assertThat(found(shifts(
                        early,
                        new Shift(
                                "late",
                                8 * HOUR,
                                2,
                                List.of(new Break(0, 4 * HOUR, 0), new Break(4 * HOUR, 4 * HOUR, 1))))))
                .isEmpty();
        assertThat(found(shifts(early, new Shift("late", 8 * HOUR, 1, List.of(new Break(60, 8 * HOUR - 60, 0))))))
                .isEmpty();
    }

    @Test
    void breaksMustLieWithinTheirShift() {
        // Rule CHECK-27.
        // 7.75 h + 0.5 h = 8.25 h in a shift of 8 h.
        assertThat(found(shifts(new Shift("early", 8 * HOUR, 2, List.of(new Break(7.75 * HOUR, 0.5 * HOUR, 1))))))
                .containsExactly(
                        "error coil-change.shifts[1].breaks[1] = 27900 s to 29700 s after the start of early; must"
                                + " end within the shift, which lasts 28800 s. Let the break begin earlier, or give a shorter one.");
        assertThat(found(shifts(new Shift("early", 8 * HOUR, 2, List.of(new Break(7.5 * HOUR, 0.5 * HOUR, 0))))))
                .isEmpty();
    }

    @Test
    void breaksMustNotOverlap_inWhateverOrderTheyStand() {
        // From 3 h to 3.5 h, and from 2.75 h to 3.25 h: the one that begins later is named.
        assertThat(found(shifts(new Shift(
                        "early",
                        8 * HOUR,
                        2,
                        List.of(new Break(3 * HOUR, 0.5 * HOUR, 1), new Break(2.75 * HOUR, 0.5 * HOUR, 1))))))
                .containsExactly(
                        "error coil-change.shifts[1].breaks[1] = 10800 s to 12600 s after the start of early; must"
                                + " begin when the break before it has ended, at 11700 s or later. Give breaks that do not"
                                + " overlap.");
        assertThat(found(shifts(new Shift(
                        "early",
                        8 * HOUR,
                        2,
                        List.of(new Break(3 * HOUR, 0.5 * HOUR, 1), new Break(2.5 * HOUR, 0.5 * HOUR, 1))))))
                .isEmpty();
    }

    @Test
    void shiftsAreChecked_whereTheyAreMade() {
        assertThatThrownBy(() -> new Shift("early", 0, 1, List.of()))
                .hasMessage("shift hours = 0 s; must be more than 0 and finite");
        assertThatThrownBy(() -> new Shift("early", 1, 0, List.of())).hasMessage("shift crew = 0; must be 1 or more");
        assertThatThrownBy(() -> new Break(-1, 60, 0)).hasMessage("break begin = -1 s; must be 0 or more and finite");
        assertThatThrownBy(() -> new Break(0, 0, 0)).hasMessage("break length = 0 s; must be more than 0 and finite");
        assertThatThrownBy(() -> new Shifts(List.of())).hasMessage("no shifts; give at least one");
        assertThat(new Shifts(List.of(
                                new Shift("a", 60, 1, List.of(new Break(0, 10, 3))), new Shift("b", 30, 2, List.of())))
                        .largestCrew())
                .isEqualTo(2);
    }

    @Test
    void withCrew_hasAsManyMoreOrFewerInEveryShift() {
        Break one = new Break(1000, 600, 2);
        Break all = new Break(2000, 600, 0);
        CoilChange change = shifts(
                        new Shift("early", HOUR, 3, List.of(one, all)), new Shift("night", 2 * HOUR, 1, List.of()))
                .build()
                .change();
        assertThat(change.crew()).isEqualTo(3);
        assertThat(change.withPreparationTimes(2).shifts()).isPresent();
        assertThat(change.withCrew(3)).isEqualTo(change);
        // One more: 4 and 2; one is away in the first break, all in the second.
        assertThat(change.withCrew(4).crew()).isEqualTo(4);
        assertThat(change.withCrew(4).shifts().orElseThrow().list())
                .containsExactly(
                        new Shift("early", HOUR, 4, List.of(new Break(1000, 600, 3), all)),
                        new Shift("night", 2 * HOUR, 2, List.of()));
        // Two fewer: 1 and, as a shift has somebody, 1.
        assertThat(change.withCrew(1).shifts().orElseThrow().list())
                .containsExactly(
                        new Shift("early", HOUR, 1, List.of(new Break(1000, 600, 0), all)),
                        new Shift("night", 2 * HOUR, 1, List.of()));
    }

    @Test
    void moreThanTheShiftInABreak_isWarnedOf() {
        // Rule CHECK-27.
        assertThat(found(shifts(new Shift("early", 8 * HOUR, 2, List.of(new Break(2 * HOUR, HOUR, 3))))))
                .containsExactly(
                        "warning coil-change.shifts[1].breaks[1].crew = 3 people; should be at most the crew of"
                                + " the shift, 2 people. Nobody comes for a break: give how many of the shift stay.");
    }

    @Test
    void elementThatIsNeverDone_andPutDownOnTheStandingStrip_areWarnedOf() {
        // Rule CHECK-33.
        WorkElement setUp = new WorkElement(
                "set up",
                new WorkElement.WorkTime.Timed(Distribution.constant(60)),
                new WorkElement.Occurrence.When(Set.of(CoilDifference.WIDTH)),
                true);
        assertThat(found(line().join(timed("weld", 60).notToBePutDown(), setUp)))
                .containsExactly(
                        "warning coil-change.join[1].weld.put-down = no; has no effect on work on the standing strip."
                                + " Only an element of prepare is ever put down: leave it out.",
                        "warning coil-change.join[2].set up.when = width; should differ between two coils that follow"
                                + " each other. The element is never done: give coils that differ, or leave the element"
                                + " out.");
    }

    @Test
    void jointPassageAtTheProcessSpeedOrFaster_isRefused() {
        // Rule CHECK-29.
        assertThat(found(passage(1.5, 5, 10)))
                .containsExactly("error process.joint-passage.speed = 1.5 m/s; must be less than the process speed, 1.5"
                        + " m/s. Give a lower speed, or leave the joint passage out.");
        assertThat(found(passage(1.4, 5, 10))).isEmpty();
    }

    @Test
    void jointPassageLongerThanACoil_isWarnedOf() {
        // Rule CHECK-29.
        // 300 m + 301 m, and a coil of 600 m.
        assertThat(found(passage(0.5, 300, 301)))
                .containsExactly(
                        "warning process.joint-passage = 601 m of strip before and after the joint; should be at"
                                + " most the usable strip of the shortest coil, 600 m. The process is slowed for the next joint"
                                + " before this one has passed: give fewer metres.");
        assertThat(found(passage(0.5, 300, 300))).isEmpty();
    }

    @Test
    void jointPassageAndBreakWithRethreading_areRefused() {
        // Rule CHECK-28.
        SoundLine line = joints(
                        Optional.of(new JointPassage(0.5, 5, 10)),
                        Optional.of(new JointBreak(0.01, 40, Distribution.constant(600), 30)))
                .rethread(Distribution.constant(600));
        assertThat(found(line))
                .containsExactly(
                        "error process.joint-passage = 0.5 m/s; must not be given with the practice of rethreading, which"
                                + " makes no joint. Leave it out, or choose another practice.",
                        "error process.joint-break = 0.01 of joints; must not be given with the practice of rethreading,"
                                + " which makes no joint. Leave it out, or choose another practice.");
    }

    @Test
    void jointPassageAndBreakWithoutAnAccumulator_areAllowed() {
        assertThat(found(joints(
                                Optional.of(new JointPassage(0.5, 5, 10)),
                                Optional.of(new JointBreak(0.01, 40, Distribution.constant(600), 30)))
                        .withoutAccumulator()))
                .isEmpty();
    }

    @Test
    void jointBreaksMakeALineRandom_unlessTheyNeverHappen() {
        // Rule CHECK-30.
        assertThat(breaking(0.01).build().isDeterministic()).isFalse();
        assertThat(breaking(0).build().isDeterministic()).isTrue();
        assertThatThrownBy(() -> breaking(1)).hasMessage("joint break chance = 1; must be 0 or more and below 1");
    }

    private static SoundLine breaking(double chance) {
        return joints(Optional.empty(), Optional.of(new JointBreak(chance, 40, Distribution.constant(600), 30)));
    }

    @Test
    void repairThatCanFallBelowZero_isRefused() {
        // uniform 60 s to 120 s less 90 s: below 0 for half of all draws.
        Distribution repair = Distribution.uniform(60, 120).shifted(-90);
        assertThat(found(joints(Optional.empty(), Optional.of(new JointBreak(0.01, 40, repair, 0)))))
                .containsExactly(
                        "error process.joint-break.repair = -30 s at least; must never be below 0, but is for 1"
                                + " draw in 2. Give a smaller negative shift.");
    }

    @Test
    void tableOfTravelSpeedsThatTheCoilsLeave_isWarnedOf() {
        // Rule CHECK-31.
        // The strip is 2 mm thick.
        assertThat(found(weld(0.0025, 0.004)))
                .containsExactly(
                        "warning coil-change.join[1].weld.travel = 0.0025 m to 0.004 m of strip; should cover the"
                                + " thicker strip of every joint, 0.002 m. Outside of the table the speed of its nearest row is"
                                + " taken: add rows.");
        assertThat(found(weld(0.002, 0.004))).isEmpty();
    }

    @Test
    void thinStripThatIsAlwaysJoinedToThicker_doesNotLeaveTheTable() {
        // 1 mm and 2 mm in turn: the thicker strip is always 2 mm. Drawn at random, 1 mm may come twice.
        Coil thin =
                new Coil("thin", new Coil.Strip(0.001, 1.25, 7850), new CoilSize.ByLength(Distribution.constant(600)));
        List<Coil> both = List.of(thin, SoundLine.coil(600));
        assertThat(found(weld(0.002, 0.004).coilSource(new CoilSource.Schedule(both))))
                .isEmpty();
        CoilSource mix = new CoilSource.Mix(
                both.stream().map(coil -> new CoilSource.Share(coil, 1)).toList());
        assertThat(found(weld(0.002, 0.004).coilSource(mix)))
                .singleElement()
                .asString()
                .contains(
                        "0.002 m to 0.004 m of strip; should cover the thicker strip of every joint, 0.001 m to 0.002 m.");
    }

    private static SoundLine weld(double thinnest, double thickest) {
        TravelSpeed table = new TravelSpeed.ByThickness(
                List.of(new TravelSpeed.Row(thinnest, 0.05), new TravelSpeed.Row(thickest, 0.02)));
        return line().join(new WorkElement(
                "weld",
                new WorkElement.WorkTime.Travel(table, Distribution.constant(0)),
                new WorkElement.Occurrence.Always(),
                true));
    }

    @Test
    void targetWithoutAStop_isHeldAgainstTheCoilChangesLikeTheOther() {
        // Wilson: 100/(100 + 3.8415) = 96.3 %; 3.8415 * 0.999/0.001 = 3838 coil changes.
        RunPlan run = new RunPlan(new RunPlan.Extent.Changes(100), 0, 1, 1, 0.9)
                .withTargetWithoutStop(OptionalDouble.of(0.999));
        Line random = line().join(timed("weld", Distribution.uniform(60, 90))).build();
        assertThat(LineCheck.check(random, run))
                .extracting(Message::text)
                .containsExactly(
                        "run.target-without-stop = 0.999; 100 coil changes can show 0.963007 at most, if all go"
                                + " without a stop. Run at least 3838 coil changes in all replications together.");
        assertThatThrownBy(() -> run.withTargetWithoutStop(OptionalDouble.of(0)))
                .hasMessage("target without a stop = 0; must be more than 0 and at most 1");
        assertThat(run.withReplications(3).targetWithoutStop()).hasValue(0.999);
    }

    /** Crops of 1 m and 0.5 m; 3 m of usable strip are used up by two rejects, at 0.2^2 = 1 joint in 25. */
    @Test
    void rejectsThatMayUseUpACoilAreWarnedOf() {
        // Rule CHECK-38.
        assertThat(found(line().coils(SoundLine.coil(Distribution.constant(4.5), 1, 0.5))
                        .change(change -> change.withReject(new CoilChange.Reject.Chance(0.2)))))
                .anyMatch(
                        text -> text.equals("warning coil-change.reject = 1.5 m of strip for each rejected joint; 2 of"
                                + " them use up the shortest coil, 3 m, at 1 joint in 25. A run that meets it ends with an error:"
                                + " give longer coils, shorter crops or fewer rejects."));
    }
}
