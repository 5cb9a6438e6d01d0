package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Trace;

/**
 * Where joints are on their way, and what holds the process meanwhile. Coils of 600 m, entry 2.5 m/s, process 1.5 m/s, 200 m of
 * accumulator: the first coil change begins at 400 s, where speeds change at once.
 */
class JointViewTest {
    /** Of metres and seconds: a level counts as below a threshold 1e-10 of the capacity late, by rule NUM-3. */
    private static final double TOLERANCE = 1e-7;

    private static Replication run(Line line) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(2), 0, 1, 1, 0.9);
        return LineSimulator.of(line, plan).run(0, Detail.TRACE);
    }

    private static PassedStrip strip(Replication run) {
        return new PassedStrip(run.trace().orElseThrow());
    }

    private static List<JointView> joints(Line line, Replication run) {
        return JointView.of(line, run.changes(), run.trace().orElseThrow(), strip(run));
    }

    /** Strip (m) in the accumulator behind a joint, and before it, at {@code time} (s). */
    private static double[] stored(JointView joint, PassedStrip strip, double time) {
        return new double[] {strip.enteredAt(time) - joint.entered(), joint.leaves() - strip.processedAt(time)};
    }

    private static double arrival(JointView joint) {
        return Objects.requireNonNull(joint.arrivesAt());
    }

    private static void assertNear(double got, double expected) {
        assertThat(got).isCloseTo(expected, within(TOLERANCE));
    }

    @Test
    void jointLiesAtTheJoinersExitWhenMade_andReachesTheProcessWhenWhatIsHeldAndThePathAreProcessed() {
        // Rule SPEED-1. Joint of 60 s: T2 = 460 s with 600 m entered, 690 m processed, 200 - 90 = 110 m held. It leaves
        // the accumulator at metre 800 and reaches the process 30 m later, at 830/1.5 s.
        Line line = new PlainLine().join(60).processPath(30).build();
        Replication run = run(line);
        PassedStrip strip = strip(run);
        JointView joint = joints(line, run).get(0);

        assertThat(joint.number()).isEqualTo(1);
        assertNear(joint.made(), 460);
        assertNear(joint.leaves(), 800);
        assertNear(joint.arrives(), 830);
        assertNear(arrival(joint), 830 / 1.5);
        assertNear(stored(joint, strip, 460)[0], 0);
        assertNear(stored(joint, strip, 460)[1], 110);
        // 40 s on, the entry has brought 100 m and the process taken 60 m: two thirds of the 150 m held lie behind it.
        assertNear(stored(joint, strip, 500)[0], 100);
        assertNear(stored(joint, strip, 500)[1], 50);
        assertNear(strip.levelAt(500), 150);
        // Neither passage nor length of the process: it is past where it arrives.
        assertNear(joint.past(), joint.arrives());
    }

    @Test
    void jointStandsWithTheProcess_andMovesOnItsRamp() {
        // Rule PROC-4. Stop level 6 + 1.5^2/0.5 = 10.5 m, reached 189.5/1.5 s after 400 s with 789.5 m processed; 4.5 m
        // and 6 s later the process stands, with 6 m held. T2 = 540 s: leaves at metre 800, arrives at 810. The restart
        // level, 10.5 + 20 m, takes 24.5/2.5 s. Then 16 m: 2.25 m in 3 s at 0.5 m/s2, 13.75 m at 1.5 m/s.
        Line line = starving().build();
        Replication run = run(line);
        PassedStrip strip = strip(run);
        JointView joint = joints(line, run).get(0);

        assertNear(joint.leaves(), 800);
        assertNear(joint.arrives(), 810);
        assertNear(stored(joint, strip, 549.8)[0], 24.5);
        assertNear(stored(joint, strip, 549.8)[1], 6);
        assertNear(strip.processedAt(551.8), 794 + 0.25 * 2 * 2);
        assertNear(arrival(joint), 552.8 + 13.75 / 1.5);
    }

    private static PlainLine starving() {
        return new PlainLine().join(140).reserve(6).process(1.5, 0.5, 0.25).processPath(10);
    }

    @Test
    void starvedProcessWaitsForStripUntilTheRestartLevel_thenForItsDelayAlone() {
        // Rule PROC-4. As above: starved at 526 1/3 s, restart level at 549.8 s, delay of 40 s.
        Line line = starving().restart(Double.NaN, Distribution.constant(40)).build();
        Replication run = run(line);
        Trace trace = run.trace().orElseThrow();
        String[] words = ProcessWords.of(line, run.changes(), trace);

        double starved = 400 + 189.5 / 1.5;
        assertThat(word(words, trace, starved - 1)).isEqualTo("running");
        assertThat(word(words, trace, starved + 1)).isEqualTo("starved");
        assertThat(word(words, trace, 549.7)).isEqualTo("starved");
        assertThat(word(words, trace, 549.9)).isEqualTo("restart-delay");
        assertThat(word(words, trace, 589.7)).isEqualTo("restart-delay");
        assertThat(word(words, trace, 589.9)).isEqualTo("running");
    }

    @Test
    void oneStripStandsForTheDelayAfterItsJoint() {
        // Rule PRACTICE-2. T1 = 400 s, joint 60 s, delay 40 s.
        Line line = new PlainLine()
                .join(60)
                .withoutAccumulator()
                .restart(Double.NaN, Distribution.constant(40))
                .build();
        Replication run = run(line);
        Trace trace = run.trace().orElseThrow();
        String[] words = ProcessWords.of(line, run.changes(), trace);

        assertThat(word(words, trace, 459)).isEqualTo("starved");
        assertThat(word(words, trace, 461)).isEqualTo("restart-delay");
        assertThat(word(words, trace, 501)).isEqualTo("running");
    }

    private static String word(String[] words, Trace trace, double time) {
        List<Trace.Point> points = trace.points();
        int last = IntStream.range(0, points.size())
                .filter(i -> points.get(i).time() <= time)
                .max()
                .orElseThrow();
        return words[last];
    }

    @Test
    void passageAndSectionEndWhereTheJointIsPast() {
        // Rules PASS-1, BREAK-1. Mark 800: the passage ends at 810, a section of 420 m at 1220.
        PlainLine builder = new PlainLine().join(60).jointPassage(0.5, 20, 10);
        Line passing = builder.build();
        Line breaking =
                builder.jointBreak(1e-9, 420, Distribution.constant(100), 0).build();

        assertNear(joints(passing, run(passing)).get(0).past(), 810);
        assertNear(joints(breaking, run(breaking)).get(0).past(), 1220);
        // 0.5 m/s from metre 780 on: the joint arrives 40 s after 520 s.
        assertNear(arrival(joints(passing, run(passing)).get(0)), 560);
    }

    @Test
    void jointThatBreaksStandsInTheProcessForItsRepair() {
        // Rules BREAK-1, BREAK-2. Somewhere in the 420 m behind metre 800; 100 s of repair.
        Line line = new PlainLine().join(60).jointBreak(420, 100, 0).build();
        Replication run = run(line);
        PassedStrip strip = strip(run);
        JointView joint = joints(line, run).get(0);

        double broke = Objects.requireNonNull(joint.brokeAt());
        double place = strip.processedAt(broke);
        assertThat(place).isBetween(800.0, 1220.0);
        assertNear(strip.processedAt(broke + 99.9), place);
        assertThat(strip.processedAt(broke + 101)).isGreaterThan(place + 1);
    }

    @Test
    void severalJointsMayBeOnTheirWay_firstInFirstOut() {
        // Rule SPEED-1. With 700 m of path the joint of 460 s is at metre 1500 in 1000 s, that of change 2 is made
        // before.
        Line line = new PlainLine().join(60).processPath(700).build();
        Replication run = run(line);
        List<JointView> joints = joints(line, run);

        assertThat(joints).hasSize(2);
        assertThat(joints.get(1).made()).isLessThan(arrival(joints.get(0)));
        assertThat(joints.get(1).arrives()).isGreaterThan(joints.get(0).arrives());
        // The second coil brings 600 m: as far apart as that.
        assertNear(joints.get(1).arrives() - joints.get(0).arrives(), 600);
    }

    @Test
    void threadedLineHasNoJoints() {
        // Rule PRACTICE-7.
        Line line = new PlainLine().rethread(Distribution.constant(300)).build();
        Replication run = run(line);

        assertThat(joints(line, run)).isEmpty();
        assertThat(Arrays.stream(strip(run).entered()).max().orElseThrow()).isPositive();
    }
}
