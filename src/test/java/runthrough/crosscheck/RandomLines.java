package runthrough.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
import runthrough.plant.LineCheck;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Message;
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
 * Lines drawn at random over everything that can be described: sizes are real numbers, so that no two events meet by
 * chance; accumulators are about as large as what a coil change draws, so that every state of a line is met.
 */
final class RandomLines {
    private final SplittableRandom random;
    private final Practice practice;
    /** The largest rated speed (m/s), the scale of everything that moves. */
    private final double fastest;

    private final double processUp;
    private final double processDown;
    private final double entryUp;
    private final double entryDown;
    private final double reserve;
    private final double stopLevel;
    private final StorageForm form;
    private final double capacity;
    /** Times about a minute, one in six blank. */
    private final MeasuredRows measured;

    private RandomLines(SplittableRandom random) {
        this.random = random;
        measured = measured();
        double share = random.nextDouble();
        practice = share < 0.8
                ? Practice.JOIN_WITH_ACCUMULATOR
                : share < 0.92 ? Practice.JOIN_WITHOUT_ACCUMULATOR : Practice.RETHREAD;
        fastest = between(0.3, 3);
        processUp = acceleration();
        processDown = acceleration();
        entryUp = chance(0.15) ? processUp : acceleration();
        entryDown = chance(0.15) ? processDown : acceleration();
        reserve = chance(0.5) ? 0 : between(0, 20);
        stopLevel = reserve + fastest * fastest / (2 * processDown);
        form = form(stopLevel * between(1, 1.3) + fastest * between(1, 150));
        capacity = form.capacity();
    }

    /** A line that may run, the same for the same seed. */
    static Case of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        while (true) {
            RandomLines lines = new RandomLines(random);
            Line line = lines.line();
            RunPlan plan = lines.plan(seed);
            if (LineCheck.check(line, plan).stream().noneMatch(Message::isError)) {
                return new Case("random line " + seed, line, plan);
            }
        }
    }

    private Line line() {
        CoilSource coilSource = coilSource();
        double slowest = coilSource.kinds().stream()
                .mapToDouble(coil -> coil.processSpeed().orElse(fastest))
                .min()
                .orElseThrow();
        return new Line(
                coilSource, entry(slowest), accumulator(), process(coilSource), change(), practice, Optional.empty());
    }

    private RunPlan plan(long seed) {
        int changes = 4 + random.nextInt(9);
        Extent extent = chance(0.85) ? new Extent.Changes(changes) : new Extent.Time(between(200, 3000));
        int leaveOut = extent instanceof Extent.Changes && chance(0.3) ? random.nextInt(3) : 0;
        return new RunPlan(extent, leaveOut, 1, seed, 0.9);
    }

    private boolean chance(double p) {
        return random.nextDouble() < p;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double acceleration() {
        return chance(0.2) ? Double.POSITIVE_INFINITY : chance(0.3) ? between(0.01, 0.1) : between(0.05, 1.5);
    }

    // ---- coils

    private CoilSource coilSource() {
        boolean ownSpeeds = chance(0.4);
        double share = random.nextDouble();
        if (share < 0.35) {
            return new CoilSource.Repeated(coil(false, ownSpeeds && chance(0.3)));
        }
        int kinds = 1 + random.nextInt(4);
        if (share < 0.65) {
            return new CoilSource.Mix(IntStream.range(0, kinds)
                    .mapToObj(i -> new CoilSource.Share(coil(false, ownSpeeds), between(0.2, 3)))
                    .toList());
        }
        // In a schedule only the first coil must be long enough to stop in.
        return new CoilSource.Schedule(IntStream.range(0, kinds)
                .mapToObj(i -> coil(i > 0 && chance(0.25), ownSpeeds))
                .toList());
    }

    private Coil coil(boolean isShort, boolean ownSpeed) {
        double head = chance(0.4) ? 0 : between(0, 3);
        double tail = chance(0.4) ? 0 : between(0, 3);
        double length = head + tail + (isShort ? between(1, 25) : fastest * between(30, 600));
        double thickness = between(0.0005, 0.006);
        double width = between(0.2, 2);
        double density = between(2500, 8000);
        return new Coil(
                "coil",
                thickness,
                width,
                density,
                size(length, thickness * width * density, thickness),
                head,
                tail,
                ownSpeed ? OptionalDouble.of(fastest * between(0.3, 1)) : OptionalDouble.empty());
    }

    private CoilSize size(double length, double massPerMetre, double thickness) {
        double share = random.nextDouble();
        if (share < 0.1) {
            double factor = between(0.9, 1);
            double inner = 0.5;
            double outer = Math.sqrt(inner * inner + 4 * thickness * length / (factor * Math.PI));
            return new CoilSize.ByDiameters(outer, inner, factor);
        }
        if (share < 0.25) {
            return new CoilSize.ByMass(Distribution.uniform(0.7 * length * massPerMetre, length * massPerMetre));
        }
        return new CoilSize.ByLength(
                share < 0.5
                        ? Distribution.constant(length)
                        : share < 0.8
                                ? Distribution.uniform(0.6 * length, 1.4 * length)
                                : Distribution.lognormal(length, 0.2 * length));
    }

    // ---- entry and accumulator

    private Entry entry(double slowest) {
        double top = fastest * (chance(0.3) ? between(1.001, 1.1) : between(1.1, 2.5));
        return new Entry(
                1 + random.nextInt(3),
                top,
                entryUp,
                entryDown,
                chance(0.35) ? Optional.of(creep(slowest)) : Optional.empty(),
                chance(0.5) ? 0 : between(0, 40));
    }

    private Creep creep(double slowest) {
        double speed = slowest * between(0.1, 0.95);
        double down = practice == Practice.JOIN_WITH_ACCUMULATOR ? entryDown : Math.min(entryDown, processDown);
        return new Creep(speed, speed * speed / (2 * down) + between(0.1, 15));
    }

    private Accumulator accumulator() {
        if (practice.isOneStrip()) {
            return Accumulator.none();
        }
        return new Accumulator(
                form,
                chance(0.6) ? Double.POSITIVE_INFINITY : fastest * between(0.05, 1),
                reserve,
                chance(0.5) ? Double.POSITIVE_INFINITY : between(0, 3));
    }

    /** A form that holds {@code wanted} metres, or about as much. */
    private StorageForm form(double wanted) {
        double share = random.nextDouble();
        if (share < 0.6) {
            return new StorageForm.Direct(wanted);
        } else if (share < 0.8) {
            int strands = 2 + random.nextInt(20);
            double speed = chance(0.5) ? Double.POSITIVE_INFINITY : fastest * between(0.05, 1) / strands;
            return new StorageForm.Strands(strands, wanted / strands, speed, Double.POSITIVE_INFINITY, chance(0.5));
        } else if (share < 0.9) {
            double empty = between(0.5, 2);
            double wraps = between(3, 40);
            return new StorageForm.Spiral(wraps, empty + wanted / (wraps * Math.PI), empty);
        }
        int loops = 1 + random.nextInt(3);
        double span = between(2, 8);
        double least = between(0, 1);
        // A deep loop holds about twice its sag.
        return new StorageForm.FreeLoop(loops, span, least + wanted / (2 * loops) + span / 2, least);
    }

    // ---- process

    private ProcessSection process(CoilSource coilSource) {
        // With neither reserve nor path a starved process stands exactly where the next joint reaches it.
        boolean needsPath = coilSource.kinds().size() > 1 && reserve == 0;
        return new ProcessSection(
                fastest,
                processUp,
                processDown,
                restartLevel(),
                chance(0.4) ? Distribution.constant(0) : time(20),
                practice == Practice.JOIN_WITH_ACCUMULATOR && chance(0.45) ? Optional.of(slowing()) : Optional.empty(),
                chance(0.4)
                        ? Optional.of(new Downtime(time(between(30, 600)), time(between(5, 150))))
                        : Optional.empty(),
                needsPath || chance(0.5) ? between(0.5, 60) : 0,
                chance(0.5) ? 0 : between(0, 4));
    }

    private double restartLevel() {
        if (practice.isOneStrip() || chance(0.5)) {
            return Double.NaN;
        }
        if (chance(0.15) && stopLevel > reserve) {
            // A restart into the next stop, and from there into the next.
            return reserve + (stopLevel - reserve) * between(0.6, 1);
        }
        return chance(0.15) ? full() : stopLevel + (capacity - stopLevel) * random.nextDouble();
    }

    /**
     * The level (m) of a full accumulator; a hair less where the capacity follows from arcs. The two engines work those out each
     * in its own way, and a last digit decides whether the process goes on just before the accumulator is full or just after.
     */
    private double full() {
        boolean isPlain = form instanceof StorageForm.Direct || form instanceof StorageForm.Strands;
        return isPlain ? capacity : 0.999 * capacity;
    }

    private Slowing slowing() {
        double level = stopLevel + (capacity - stopLevel) * between(0.02, 0.9);
        double resume =
                chance(0.5) ? Double.NaN : chance(0.1) ? full() : level + (capacity - level) * between(0.05, 0.99);
        return new Slowing(fastest * between(0.1, 0.95), level, resume);
    }

    // ---- work

    private CoilChange change() {
        return new CoilChange(
                1 + random.nextInt(2),
                elements(random.nextInt(4), between(20, 200)),
                elements(random.nextInt(3), between(2, 15)),
                elements(1 + random.nextInt(3), between(5, 40)),
                reject(),
                time(between(30, 400)));
    }

    private MeasuredRows measured() {
        return MeasuredRows.of(
                "rows drawn at random",
                IntStream.range(0, 6)
                        .mapToObj(row -> IntStream.range(0, 3)
                                .mapToObj(column -> row > 0 && chance(1 / 6.0) ? Double.NaN : between(20, 140))
                                .toList())
                        .toList());
    }

    private Reject reject() {
        return chance(0.5)
                ? new Reject.Never()
                : chance(0.6) ? new Reject.Chance(between(0, 0.5)) : new Reject.Every(1 + random.nextInt(4));
    }

    private List<WorkElement> elements(int count, double mean) {
        List<WorkElement> list = new ArrayList<>();
        Stream.generate(() -> element(mean)).limit(count).forEach(list::add);
        return list;
    }

    private WorkElement element(double mean) {
        WorkTime duration = chance(0.2)
                ? new WorkTime.FromRows(measured, random.nextInt(measured.width()), mean / 60)
                : chance(0.8)
                        ? new WorkTime.Timed(time(mean))
                        : new WorkTime.Travel(
                                between(0.02, 0.3), chance(0.5) ? Distribution.constant(0) : time(mean / 2));
        Occurrence occurrence = chance(0.6)
                ? new Occurrence.Always()
                : chance(0.5)
                        ? new Occurrence.Every(1 + random.nextInt(4))
                        : new Occurrence.Chance(random.nextDouble());
        return new WorkElement("work", duration, occurrence, chance(0.7));
    }

    private Distribution time(double mean) {
        return switch (random.nextInt(9)) {
            case 0, 1 -> Distribution.constant(mean);
            case 2 -> Distribution.uniform(0.5 * mean, 1.5 * mean);
            case 3 -> Distribution.triangular(0.4 * mean, mean, 2.2 * mean);
            case 4 -> Distribution.normal(mean, 0.3 * mean);
            case 5 -> Distribution.lognormal(mean, 0.6 * mean);
            case 6 -> Distribution.weibull(between(0.8, 3), mean);
            case 7 -> Distribution.exponential(mean).shifted(0.1 * mean);
            default -> Distribution.gamma(mean, 0.4 * mean);
        };
    }
}
