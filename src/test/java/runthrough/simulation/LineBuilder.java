package runthrough.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Entry.Creep;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.ProcessSection.Downtime;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/**
 * Builds lines for tests, SI units. Starts from a plain one: coils of 600 m, entry 2.5 m/s, process 1.5 m/s, instant speed
 * changes, 200 m of accumulator, a joint of 60 s, nothing to prepare.
 */
public final class LineBuilder {
    public static final double AT_ONCE = Double.POSITIVE_INFINITY;

    private CoilSource coilSource = new CoilSource.Repeated(coil(600));
    private int uncoilers = 2;
    private double topSpeed = 2.5;
    private double entryUp = AT_ONCE;
    private double entryDown = AT_ONCE;
    private Optional<Creep> creep = Optional.empty();
    private double path;
    private double capacity = 200;
    private double fillRate = Double.POSITIVE_INFINITY;
    private double reserve;
    private double allowance = Double.POSITIVE_INFINITY;
    private double speed = 1.5;
    private double processUp = AT_ONCE;
    private double processDown = AT_ONCE;
    private double restartLevel = Double.NaN;
    private Distribution restartDelay = Distribution.constant(0);
    private Optional<Slowing> slowing = Optional.empty();
    private Optional<Downtime> downtime = Optional.empty();
    private double processPath;
    private double scrapPerStop;
    private int crew = 2;
    private final List<WorkElement> prepare = new ArrayList<>();
    private final List<WorkElement> tail = new ArrayList<>();
    private final List<WorkElement> join = new ArrayList<>();
    private Reject reject = new Reject.Never();
    private Distribution rethread = Distribution.constant(600);
    private Practice practice = Practice.JOIN_WITH_ACCUMULATOR;

    /** A coil of {@code length} (m) without crops. */
    public static Coil coil(double length) {
        return coil(Distribution.constant(length));
    }

    public static Coil coil(Distribution length) {
        return new Coil("coil", 0.002, 1, 7850, new CoilSize.ByLength(length), 0, 0, OptionalDouble.empty());
    }

    public static Coil cropped(double length, double head, double tail) {
        return new Coil(
                "coil",
                0.002,
                1,
                7850,
                new CoilSize.ByLength(Distribution.constant(length)),
                head,
                tail,
                OptionalDouble.empty());
    }

    /** A coil of {@code length} (m) that asks for {@code processSpeed} (m/s). */
    public static Coil coilAt(double length, double processSpeed) {
        return new Coil(
                "coil at " + processSpeed,
                0.002,
                1,
                7850,
                new CoilSize.ByLength(Distribution.constant(length)),
                0,
                0,
                OptionalDouble.of(processSpeed));
    }

    /** A coil of {@code length} (m) and {@code width} (m) without crops. */
    public static Coil wide(double length, double width) {
        return new Coil(
                "coil " + width + " m wide",
                0.002,
                width,
                7850,
                new CoilSize.ByLength(Distribution.constant(length)),
                0,
                0,
                OptionalDouble.empty());
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

    public LineBuilder coils(Coil... coils) {
        coilSource = coils.length == 1 ? new CoilSource.Repeated(coils[0]) : new CoilSource.Schedule(List.of(coils));
        return this;
    }

    public LineBuilder coilSource(CoilSource given) {
        coilSource = given;
        return this;
    }

    public LineBuilder uncoilers(int count, double uncoilerPath) {
        uncoilers = count;
        path = uncoilerPath;
        return this;
    }

    public LineBuilder entry(double top, double up, double down) {
        topSpeed = top;
        entryUp = up;
        entryDown = down;
        return this;
    }

    public LineBuilder creep(double creepSpeed, double length) {
        creep = Optional.of(new Creep(creepSpeed, length));
        return this;
    }

    public LineBuilder capacity(double metres) {
        capacity = metres;
        return this;
    }

    public LineBuilder fillRate(double limit) {
        fillRate = limit;
        return this;
    }

    public LineBuilder reserve(double metres) {
        reserve = metres;
        return this;
    }

    public LineBuilder allowance(double metres) {
        allowance = metres;
        return this;
    }

    public LineBuilder process(double rated, double up, double down) {
        speed = rated;
        processUp = up;
        processDown = down;
        return this;
    }

    public LineBuilder restart(double level, Distribution delay) {
        restartLevel = level;
        restartDelay = delay;
        return this;
    }

    public LineBuilder slowing(double slowed, double level, double resume) {
        slowing = Optional.of(new Slowing(slowed, level, resume));
        return this;
    }

    public LineBuilder downtime(Distribution running, Distribution standing) {
        downtime = Optional.of(new Downtime(running, standing));
        return this;
    }

    public LineBuilder processPath(double metres) {
        processPath = metres;
        return this;
    }

    public LineBuilder scrapPerStop(double metres) {
        scrapPerStop = metres;
        return this;
    }

    public LineBuilder crew(int people) {
        crew = people;
        return this;
    }

    public LineBuilder prepare(double... seconds) {
        return add(prepare, seconds);
    }

    public LineBuilder tail(double... seconds) {
        return add(tail, seconds);
    }

    public LineBuilder join(double... seconds) {
        return add(join, seconds);
    }

    public LineBuilder prepare(WorkElement element) {
        prepare.add(element);
        return this;
    }

    public LineBuilder tail(WorkElement element) {
        tail.add(element);
        return this;
    }

    public LineBuilder join(WorkElement element) {
        join.add(element);
        return this;
    }

    public LineBuilder join(Distribution time) {
        join.add(element(time));
        return this;
    }

    private LineBuilder add(List<WorkElement> list, double... seconds) {
        for (double time : seconds) {
            list.add(element(Distribution.constant(time)));
        }
        return this;
    }

    public LineBuilder reject(Reject how) {
        reject = how;
        return this;
    }

    public LineBuilder rethread(Distribution time) {
        rethread = time;
        practice = Practice.RETHREAD;
        return this;
    }

    public LineBuilder practice(Practice how) {
        practice = how;
        return this;
    }

    public Line build() {
        Accumulator accumulator = practice.isOneStrip()
                ? Accumulator.none()
                : new Accumulator(new StorageForm.Direct(capacity), fillRate, reserve, allowance);
        return new Line(
                coilSource,
                new Entry(uncoilers, topSpeed, entryUp, entryDown, creep, path),
                accumulator,
                new ProcessSection(
                        speed,
                        processUp,
                        processDown,
                        restartLevel,
                        restartDelay,
                        slowing,
                        downtime,
                        processPath,
                        scrapPerStop),
                new CoilChange(crew, prepare, tail, join, reject, rethread),
                practice,
                Optional.empty());
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
        return new LineSimulator(build(), new RunPlan(extent, 0, 1, 7, 0.995)).run(0, detail);
    }

    /** The totals of {@code replications} replications of {@code changes} coil changes, the first {@code leaveOut} left out. */
    public List<Totals> totals(int changes, int leaveOut, int replications, long seed) {
        LineSimulator simulator = new LineSimulator(
                build(), new RunPlan(new Extent.Changes(changes), leaveOut, replications, seed, 0.995));
        return IntStream.range(0, replications)
                .mapToObj(index -> simulator.run(index, Detail.CHANGES).totals())
                .toList();
    }
}
