package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.TWO_WAYS;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SoundLine;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Outcome;
import runthrough.study.margin.StripMargin;

/**
 * Simulation and closed forms are two ways to the same numbers: over random lines without chance, each named by its seed, they
 * must agree to 1e-9.
 */
@RecordsChecks
class SimulationAgreementTest {

    private static final double TOLERANCE = 1e-9;
    private static final int CHANGES = 40;
    /** At first people prepare all coils that have room, which may make the first joints wait. */
    private static final int SETTLED = 35;

    private static List<ChangeRecord> simulate(Line line) {
        return simulate(line, CHANGES);
    }

    private static List<ChangeRecord> simulate(Line line, int changes) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(changes), 0, 1, 1, 0.9);
        return LineSimulator.of(line, plan).run(0, Detail.CHANGES).changes();
    }

    /** A line of which the process may or may not run through. */
    private static Line lineWithAccumulator(RandomForms random) {
        ClosedForms forms = random.forms();
        double longest =
                Math.min(forms.longestJoint(), forms.longestRefilledJoint().orElseThrow());
        double work = random.between(0, 1.2) * Math.max(1, longest);
        Line line = new Line(
                new CoilSource.Repeated(coil(random, forms.usable())),
                entry(random, forms),
                ProcessSection.running(forms.entry().speed(), random.acceleration(), forms.processDeceleration()),
                change(random, work, Math.max(10, forms.coilRun() - work)),
                new Practice.JoinWithAccumulator(new Accumulator(
                        new StorageForm.Direct(forms.capacity()),
                        forms.fillRateLimit(),
                        forms.reserve(),
                        Double.POSITIVE_INFINITY)),
                Optional.empty());
        return isSound(line) ? line : lineWithAccumulator(random);
    }

    /** A line of which every coil change stops the process. */
    private static Line lineOfOneStrip(RandomForms random) {
        ClosedForms forms = random.forms();
        double deceleration = random.acceleration();
        double work = random.between(1, 900);
        boolean rethreads = random.chance(0.5);
        Line line = new Line(
                new CoilSource.Repeated(coil(random, forms.usable())),
                entry(random, forms),
                new ProcessSection(
                        new ProcessSection.Drive(forms.entry().speed(), random.acceleration(), deceleration),
                        new ProcessSection.Restart(
                                Double.NaN, Distribution.constant(random.chance(0.5) ? 0 : random.between(1, 90))),
                        Optional.empty(),
                        Optional.empty(),
                        0,
                        new ProcessSection.Scrap(0, 0),
                        new ProcessSection.JointsInProcess(Optional.empty(), Optional.empty())),
                change(random, work, forms.coilRun() + work),
                rethreads ? new Practice.Rethread(Distribution.constant(work)) : new Practice.JoinWithoutAccumulator(),
                Optional.empty());
        return isSound(line) ? line : lineOfOneStrip(random);
    }

    private static boolean isSound(Line line) {
        return LineCheck.check(line).stream().noneMatch(Message::isError);
    }

    private static Coil coil(RandomForms random, double usable) {
        double headCrop = random.chance(0.5) ? 0 : random.between(0, 2);
        double tailCrop = random.chance(0.5) ? 0 : random.between(0, 2);
        return new Coil(
                        "coil",
                        new Coil.Strip(random.between(0.0003, 0.006), random.between(0.1, 2), 7850),
                        new CoilSize.ByLength(Distribution.constant(usable + headCrop + tailCrop)))
                .withCrops(headCrop, tailCrop);
    }

    private static Entry entry(RandomForms random, ClosedForms forms) {
        StopAndGo strip = forms.entry();
        double path = random.chance(0.5) ? 0 : random.between(0, 3) * strip.runOutLength();
        return new Entry(
                random.upTo(3), forms.topSpeed(), strip.acceleration(), strip.deceleration(), strip.creep(), path);
    }

    /** Work that takes about {@code work} seconds a joint; with rejects it is half of it, done twice. */
    private static CoilChange change(RandomForms random, double work, double timeToPrepare) {
        boolean rejected = random.chance(0.2);
        double once = rejected ? work / 2 : work;
        double prepare = random.chance(0.5)
                ? random.between(0, 0.2) * once
                : random.between(0, random.chance(0.9) ? 0.8 : 1.4) * timeToPrepare;
        WorkElement weld = new WorkElement(
                "weld",
                new WorkTime.Travel(random.between(5, 20) / (once + 1), Distribution.constant(0)),
                new Occurrence.Always(),
                random.chance(0.8));
        return new CoilChange(
                random.upTo(2),
                List.of(SoundLine.timed("load", prepare / 2), again("open", prepare / 2, random.chance(0.1))),
                List.of(again("shear", random.between(0, 0.3) * once, random.chance(0.8))),
                List.of(again("fit up", random.between(0, 0.5) * once, random.chance(0.8)), weld),
                rejected ? new Reject.Every(1) : new Reject.Never());
    }

    private static WorkElement again(String name, double seconds, boolean redo) {
        return new WorkElement(name, new WorkTime.Timed(Distribution.constant(seconds)), new Occurrence.Always(), redo);
    }

    /** Asserts that both ways agree, and returns the difference over the value and 1. */
    private static double assertClose(String what, double simulated, double handCalculated) {
        assertThat(simulated).as(what).isCloseTo(handCalculated, within(TOLERANCE * (1 + Math.abs(handCalculated))));
        return Math.abs(simulated - handCalculated) / (1 + Math.abs(handCalculated));
    }

    private static double greatest(double... errors) {
        return DoubleStream.of(errors).max().orElseThrow();
    }

    private static void record(CheckBook book, String id, String what, List<Double> errors) {
        book.check(TWO_WAYS, id, what)
                .source(Sources.CLOSED_FORMS)
                .within(TOLERANCE, "1e-9 of the value and 1 m or 1 s")
                .errors("random line", errors);
    }

    /** Both ways: what runs through in the hand calculation does so in the simulation with the same numbers, what does not does not. */
    @Test
    void withAnAccumulator(CheckBook book) {
        // Rules FORM-11, MARGIN-6.
        List<Double> errors = new ArrayList<>();
        Map<String, Integer> cases = new TreeMap<>();
        LongStream.range(0, 1500).forEach(seed -> {
            Line line = lineWithAccumulator(new RandomForms(seed));
            HandCalculation hand = HandCalculation.of(line);
            Storage storage = hand.storage().orElseThrow();
            List<ChangeRecord> changes = simulate(line);
            String what = "seed " + seed;
            if (!storage.atRatedSpeed().capacity().isEnough()) {
                // Not at each change: strip left above the capacity by one stop may see the process through the next.
                cases.merge("runs out", 1, Integer::sum);
                assertThat(changes)
                        .as(what)
                        .anySatisfy(change -> assertThat(change.outcome()).isEqualTo(Outcome.STOPPED));
            } else if (!storage.coilStrip().orElseThrow().isEnough()) {
                cases.merge("not refilled", 1, Integer::sum);
                assertThat(changes)
                        .as(what)
                        .anySatisfy(change -> assertThat(change.refillTime()).isNaN());
            } else if (hand.preparation().grows()) {
                cases.merge("waiting grows", 1, Integer::sum);
                assertThat(isStoppedOrWaitsLonger(changes)).as(what).isTrue();
            } else if (leavesUncoilerAboveProcessSpeed(line, storage)) {
                cases.merge("leaves its uncoiler faster than assumed", 1, Integer::sum);
            } else {
                cases.merge("runs through", 1, Integer::sum);
                errors.add(IntStream.range(SETTLED, CHANGES)
                        .mapToDouble(i -> assertAgreement(what, line, hand, changes.get(i), changes.get(i - 1)))
                        .max()
                        .orElseThrow());
            }
        });
        // That every case was met, and the main one often.
        assertThat(cases)
                .containsOnlyKeys(
                        "leaves its uncoiler faster than assumed",
                        "not refilled",
                        "runs out",
                        "runs through",
                        "waiting grows");
        assertThat(cases.get("runs through")).isGreaterThan(1000);
        record(
                book,
                "A1",
                "joint cycle time, waiting, level, strip drawn, margin, refill, cycle; line that runs through",
                errors);
    }

    /** In the hand calculation the metres from uncoiler to joiner run at the process's speed; where the accumulator still fills, they do not. */
    private static boolean leavesUncoilerAboveProcessSpeed(Line line, Storage storage) {
        double runOut = line.runOutLength(line.fastestRatedSpeed());
        return line.entry().uncoilerPath()
                > runOut + storage.coilStrip().orElseThrow().spare();
    }

    /** Waiting grows until it stops the process, which gives the people the time that they lack. */
    private static boolean isStoppedOrWaitsLonger(List<ChangeRecord> changes) {
        return changes.stream().anyMatch(change -> change.outcome() == Outcome.STOPPED)
                || changes.get(CHANGES - 1).waiting() > changes.get(2).waiting() + 1e-3;
    }

    private static double assertAgreement(
            String what, Line line, HandCalculation hand, ChangeRecord change, ChangeRecord before) {
        Storage storage = hand.storage().orElseThrow();
        assertThat(change.outcome()).as(what).isEqualTo(Outcome.RAN_THROUGH);
        return greatest(
                assertClose(what, change.jointCycleTime(), hand.joint().total()),
                assertClose(what, change.waiting(), hand.joint().waiting()),
                assertClose(
                        what,
                        change.levelAtStart(),
                        storage.atRatedSpeed().capacity().given()),
                assertClose(what, change.stripDrawn(), storage.stripDrawn()),
                assertClose(
                        what,
                        new StripMargin(line).toStop(change),
                        storage.atRatedSpeed().capacity().spare()),
                assertClose(
                        what,
                        change.refillTime(),
                        storage.refill().orElseThrow().timeFromRelease()),
                assertClose(what, change.start() - before.start(), hand.coilRun()));
    }

    @Test
    void onOneStrip(CheckBook book) {
        // Rules FORM-10, FORM-11.
        List<Double> errors = new ArrayList<>();
        LongStream.range(0, 1000).forEach(seed -> {
            Line line = lineOfOneStrip(new RandomForms(seed));
            HandCalculation hand = HandCalculation.of(line);
            Standstill standstill = hand.standstill().orElseThrow();
            String what = "seed " + seed;
            List<ChangeRecord> changes = simulate(line);
            errors.add(IntStream.range(SETTLED, CHANGES)
                    .mapToDouble(i -> assertAgreement(what, hand, standstill, changes.get(i), changes.get(i - 1)))
                    .max()
                    .orElseThrow());
        });
        record(
                book,
                "A2",
                "joint cycle time, waiting, metres lost, cycle; line of one strip, which stops each time",
                errors);
    }

    private static double assertAgreement(
            String what, HandCalculation hand, Standstill standstill, ChangeRecord change, ChangeRecord before) {
        assertThat(change.outcome()).as(what).isEqualTo(Outcome.STOPPED);
        assertThat(change.starvedStops()).as(what).isOne();
        return greatest(
                assertClose(what, change.jointCycleTime(), hand.joint().total()),
                assertClose(what, change.waiting(), hand.joint().waiting()),
                assertClose(what, change.lostMetres(), standstill.lostMetres()),
                assertClose(what, change.start() - before.start(), standstill.cycle()));
    }

    @Test
    void whatIsPreparedAgainAfterARejectIsWaitedFor_byBothWays() {
        // Rules CHANGE-9, CHANGE-11, CHANGE-14, FORM-9. Every joint is made twice: 10 + 80 s of work, 30 s in which
        // the head is squared again, 10 + 80 s once more. The first preparation, 120 + 30 s, is done long before.
        Line line = SoundLine.line()
                .capacity(500)
                .coils(SoundLine.coil(1000))
                .prepare(again("load", 120, false), again("square the head", 30, true))
                .reject(new Reject.Every(1))
                .build();
        JointCycleTime hand = HandCalculation.of(line).joint();
        ChangeRecord change = simulate(line).get(SETTLED);

        assertThat(hand.work()).isCloseTo(180, within(TOLERANCE));
        assertThat(hand.waiting()).isCloseTo(30, within(TOLERANCE));
        assertThat(change.waitingForPreparation()).isCloseTo(hand.waiting(), within(TOLERANCE));
        assertThat(change.jointCycleTime() - change.waiting()).isCloseTo(hand.work(), within(TOLERANCE));
        assertThat(change.jointCycleTime()).isCloseTo(210, within(TOLERANCE));
    }

    /** Just below the limit the process runs through, just above it stops. */
    @Test
    void longestJointAndFastestSpeed_areWhereTheProcessBeginsToStop() {
        // Rules FORM-3, FORM-4, FORM-11.
        LongStream.range(0, 300).forEach(seed -> {
            Line line = lineWithAccumulator(new RandomForms(seed));
            HandCalculation hand = HandCalculation.of(line);
            Storage storage = hand.storage().orElseThrow();
            double longest = storage.atRatedSpeed().jointCycleTime().given();
            double fastest = storage.atRatedSpeed().speed().given();
            String what = "seed " + seed;
            if (longest > 1 && hand.preparation().rule() == Preparation.Rule.WHOLE_CYCLE) {
                assertThat(firstOutcome(withJoint(line, longest * (1 - 1e-7))))
                        .as(what)
                        .isEqualTo(Outcome.RAN_THROUGH);
                assertThat(firstOutcome(withJoint(line, longest * (1 + 1e-7))))
                        .as(what)
                        .isEqualTo(Outcome.STOPPED);
            }
            Line slower = atSpeed(withJoint(line, hand.joint().total()), fastest * (1 - 1e-7));
            Line faster = atSpeed(slower, fastest * (1 + 1e-7));
            if (isSound(slower) && isSound(faster)) {
                assertThat(firstOutcome(slower)).as(what).isEqualTo(Outcome.RAN_THROUGH);
                assertThat(firstOutcome(faster)).as(what).isEqualTo(Outcome.STOPPED);
            }
        });
    }

    @Test
    void longestRefilledJoint_isWhereTheAccumulatorIsJustFullAgain() {
        // Rules FORM-6, FORM-11.
        LongStream.range(0, 300).forEach(seed -> {
            Line line = withJoint(withCapacity(lineWithAccumulator(new RandomForms(seed)), 1e5), 1);
            double longest = ClosedForms.of(line, line.coils().get(0))
                    .longestRefilledJoint()
                    .orElseThrow();
            String what = "seed " + seed;
            if (longest > 1) {
                assertThat(firstRefill(withJoint(line, longest * (1 - 1e-7))))
                        .as(what)
                        .isNotNaN();
                assertThat(firstRefill(withJoint(line, longest * (1 + 1e-7))))
                        .as(what)
                        .isNaN();
            }
        });
    }

    private static Outcome firstOutcome(Line line) {
        return simulate(line, 1).get(0).outcome();
    }

    private static double firstRefill(Line line) {
        return simulate(line, 1).get(0).refillTime();
    }

    /** The same line with a joint of {@code seconds} and nothing to prepare. */
    private static Line withJoint(Line line, double seconds) {
        CoilChange change =
                new CoilChange(2, List.of(), List.of(), List.of(SoundLine.timed("join", seconds)), new Reject.Never());
        return new Line(line.coilSource(), line.entry(), line.process(), change, line.practice(), line.bending());
    }

    private static Line atSpeed(Line line, double speed) {
        ProcessSection process = line.process();
        return new Line(
                line.coilSource(),
                line.entry(),
                ProcessSection.running(speed, process.acceleration(), process.deceleration()),
                line.change(),
                line.practice(),
                line.bending());
    }

    private static Line withCapacity(Line line, double capacity) {
        Accumulator accumulator = new Accumulator(
                new StorageForm.Direct(capacity),
                line.accumulator().ownFillRateLimit(),
                line.accumulator().reserve(),
                Double.POSITIVE_INFINITY);
        return new Line(
                line.coilSource(),
                line.entry(),
                line.process(),
                line.change(),
                new Practice.JoinWithAccumulator(accumulator),
                line.bending());
    }
}
