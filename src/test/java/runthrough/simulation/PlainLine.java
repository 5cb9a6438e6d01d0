package runthrough.simulation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.JointBreak;
import runthrough.plant.ProcessSection.JointPassage;
import runthrough.plant.ProcessSection.JointsInProcess;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.builder.LineBuilder;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Totals;

/**
 * A line for tests, made by the builder of the program, SI units; the checks are left aside. Begins with a plain one: coils of 600 m,
 * entry 2.5 m/s, process 1.5 m/s, instant speed changes, 200 m of accumulator, a joint of 60 s, nothing to prepare.
 */
public final class PlainLine {
    public static final double AT_ONCE = Double.POSITIVE_INFINITY;

    private final LineBuilder line = new LineBuilder()
            .coil(coil(600))
            .uncoilers(2)
            .entry(2.5, AT_ONCE, AT_ONCE)
            .capacity(200)
            .process(1.5, AT_ONCE, AT_ONCE)
            .crew(2);
    private Optional<JointPassage> passage = Optional.empty();
    private Optional<JointBreak> breaking = Optional.empty();
    private Optional<Shifts> byShift = Optional.empty();

    /** A coil of {@code length} (m) without crops. */
    public static Coil coil(double length) {
        return coil(Distribution.constant(length));
    }

    public static Coil coil(Distribution length) {
        return new Coil("coil", new Coil.Strip(0.002, 1, 7850), new CoilSize.ByLength(length));
    }

    public static Coil cropped(double length, double head, double tail) {
        return new Coil("coil", new Coil.Strip(0.002, 1, 7850), new CoilSize.ByLength(Distribution.constant(length)))
                .withCrops(head, tail);
    }

    /** A coil of {@code length} (m) that asks for {@code processSpeed} (m/s). */
    public static Coil coilAt(double length, double processSpeed) {
        return new Coil(
                        "coil at " + processSpeed,
                        new Coil.Strip(0.002, 1, 7850),
                        new CoilSize.ByLength(Distribution.constant(length)))
                .withProcessSpeed(processSpeed);
    }

    /** A coil of {@code length} (m) and {@code width} (m) without crops. */
    public static Coil wide(double length, double width) {
        return new Coil(
                "coil " + width + " m wide",
                new Coil.Strip(0.002, width, 7850),
                new CoilSize.ByLength(Distribution.constant(length)));
    }

    public static WorkElement element(Distribution time) {
        return new WorkElement("work", new WorkTime.Timed(time), new Occurrence.Always(), true);
    }

    /** Work of {@code seconds} that is not done again after a reject. */
    public static WorkElement once(double seconds) {
        return new WorkElement(
                "work done once", new WorkTime.Timed(Distribution.constant(seconds)), new Occurrence.Always(), false);
    }

    /** Work of {@code seconds} on coil changes n, 2n, ... */
    public static WorkElement every(int n, double seconds) {
        return new WorkElement(
                "work every " + n, new WorkTime.Timed(Distribution.constant(seconds)), new Occurrence.Every(n), true);
    }

    /** Work of {@code seconds} that is done with the chance {@code p}. */
    public static WorkElement chance(double p, double seconds) {
        return new WorkElement(
                "work by chance", new WorkTime.Timed(Distribution.constant(seconds)), new Occurrence.Chance(p), true);
    }

    /** A weld at {@code speed} (m/s) with {@code plus} seconds more. */
    public static WorkElement weld(double speed, double plus) {
        return new WorkElement(
                "weld", new WorkTime.Travel(speed, Distribution.constant(plus)), new Occurrence.Always(), true);
    }

    public PlainLine coils(Coil... coils) {
        return coilSource(
                coils.length == 1 ? new CoilSource.Repeated(coils[0]) : new CoilSource.Schedule(List.of(coils)));
    }

    public PlainLine coilSource(CoilSource given) {
        line.coils(given);
        return this;
    }

    public PlainLine uncoilers(int count, double uncoilerPath) {
        line.uncoilers(count).uncoilerPath(uncoilerPath);
        return this;
    }

    public PlainLine entry(double top, double up, double down) {
        line.entry(top, up, down);
        return this;
    }

    public PlainLine creep(double creepSpeed, double length) {
        line.creep(creepSpeed, length);
        return this;
    }

    public PlainLine capacity(double metres) {
        line.capacity(metres);
        return this;
    }

    public PlainLine fillRate(double limit) {
        line.fillRateLimit(limit);
        return this;
    }

    public PlainLine reserve(double metres) {
        line.reserve(metres);
        return this;
    }

    public PlainLine allowance(double metres) {
        line.overtravelAllowance(metres);
        return this;
    }

    public PlainLine process(double rated, double up, double down) {
        line.process(rated, up, down);
        return this;
    }

    public PlainLine restart(double level, Distribution delay) {
        line.restart(level, delay);
        return this;
    }

    public PlainLine slowing(double slowed, double level, double resume) {
        line.slowing(slowed, level, resume);
        return this;
    }

    public PlainLine downtime(Distribution running, Distribution standing) {
        line.downtime(running, standing);
        return this;
    }

    public PlainLine processPath(double metres) {
        line.processPath(metres);
        return this;
    }

    public PlainLine scrapPerStop(double metres) {
        line.scrapPerStop(metres);
        return this;
    }

    public PlainLine crew(int people) {
        line.crew(people);
        return this;
    }

    public PlainLine prepare(double... seconds) {
        Arrays.stream(seconds).forEach(time -> prepare(element(Distribution.constant(time))));
        return this;
    }

    public PlainLine tail(double... seconds) {
        Arrays.stream(seconds).forEach(time -> tail(element(Distribution.constant(time))));
        return this;
    }

    public PlainLine join(double... seconds) {
        Arrays.stream(seconds).forEach(time -> join(Distribution.constant(time)));
        return this;
    }

    public PlainLine prepare(WorkElement element) {
        line.prepare(element);
        return this;
    }

    public PlainLine tail(WorkElement element) {
        line.tail(element);
        return this;
    }

    public PlainLine join(WorkElement element) {
        line.join(element);
        return this;
    }

    public PlainLine join(Distribution time) {
        return join(element(time));
    }

    public PlainLine reject(Reject how) {
        line.reject(how);
        return this;
    }

    public PlainLine rethread(Distribution time) {
        line.rethread(time);
        return this;
    }

    /** Joins without an accumulator; what was said of one is left aside. */
    public PlainLine withoutAccumulator() {
        line.withoutAccumulator();
        return this;
    }

    /** Strip (m) cut out with each joint after the process. */
    public PlainLine scrapPerJoint(double metres) {
        line.scrapPerJoint(metres);
        return this;
    }

    /** Joints pass at no more than {@code speed} (m/s), from {@code before} to {@code after} (m). */
    public PlainLine jointPassage(double speed, double before, double after) {
        passage = Optional.of(new JointPassage(speed, before, after));
        return this;
    }

    /** All but one in 10^12 joints break, in a process section of {@code length} (m). */
    public PlainLine jointBreak(double length, double repair, double scrap) {
        return jointBreak(1 - 1e-12, length, Distribution.constant(repair), scrap);
    }

    public PlainLine jointBreak(double chance, double length, Distribution repair, double scrap) {
        breaking = Optional.of(new JointBreak(chance, length, repair, scrap));
        return this;
    }

    public PlainLine shifts(Shift... shifts) {
        byShift = Optional.of(new Shifts(List.of(shifts)));
        return this;
    }

    public Line build() {
        Line built = line.describe();
        CoilChange work = byShift.map(built.change()::withShifts).orElse(built.change());
        return new Line(
                built.coilSource(),
                built.entry(),
                built.process().withJoints(new JointsInProcess(passage, breaking)),
                work,
                built.practice(),
                built.bending());
    }

    /** Runs {@code changes} coil changes once and keeps everything. */
    public Replication run(int changes) {
        return run(new Extent.Changes(changes), Detail.TRACE);
    }

    /** Runs {@code seconds} once and keeps everything. */
    public Replication runFor(double seconds) {
        return run(new Extent.Time(seconds), Detail.TRACE);
    }

    public Replication run(Extent extent, Detail detail) {
        return LineSimulator.unchecked(build(), new RunPlan(extent, 0, 1, 7, 0.995))
                .run(0, detail);
    }

    /** The totals of {@code replications} replications of {@code changes} coil changes, the first {@code leaveOut} left out. */
    public List<Totals> totals(int changes, int leaveOut, int replications, long seed) {
        LineSimulator simulator = LineSimulator.of(
                build(), new RunPlan(new Extent.Changes(changes), leaveOut, replications, seed, 0.995));
        return IntStream.range(0, replications)
                .mapToObj(index -> simulator.run(index, Detail.CHANGES).totals())
                .toList();
    }
}
