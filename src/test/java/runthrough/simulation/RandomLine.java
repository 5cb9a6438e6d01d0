package runthrough.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
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
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;

/**
 * A line drawn at random with every feature that a line may have, all of them at once now and then: small accumulators, short
 * coils and frequent stops, so that much comes together that seldom does in practice.
 */
final class RandomLine {
    private static final double AT_ONCE = Double.POSITIVE_INFINITY;

    private final SplittableRandom random;

    private RandomLine(SplittableRandom random) {
        this.random = random;
    }

    /** The line of {@code seed}: the first drawn that is not refused. */
    static Line of(long seed) {
        RandomLine draw = new RandomLine(new SplittableRandom(seed));
        Line line = draw.line();
        while (LineCheck.check(line).stream().anyMatch(Message::isError)) {
            line = draw.line();
        }
        return line;
    }

    private Line line() {
        int kind = random.nextInt(10);
        boolean oneStrip = kind <= 1;
        double capacity = between(5, 150);
        double speed = between(0.5, 2);
        CoilSource coilSource = coilSource(speed);
        Entry entry = new Entry(
                random.nextInt(1, 4),
                between(2, 5),
                rate(),
                rate(),
                maybe(0.4) ? Optional.of(new Creep(between(0.1, 0.6), between(0.3, 8))) : Optional.empty(),
                maybe(0.5) ? 0 : between(0, 30));
        Accumulator accumulator = oneStrip
                ? Accumulator.none()
                : new Accumulator(
                        new StorageForm.Direct(capacity),
                        maybe(0.3) ? between(0.05, 1) : AT_ONCE,
                        maybe(0.5) ? 0 : between(0, capacity / 4),
                        maybe(0.5) ? AT_ONCE : between(0, 2));
        ProcessSection process = process(speed, capacity, oneStrip);
        CoilChange change = change();
        Distribution rethread = time(100);
        Practice practice = kind == 0
                ? new Practice.Rethread(rethread)
                : oneStrip ? new Practice.JoinWithoutAccumulator() : new Practice.JoinWithAccumulator(accumulator);
        return new Line(coilSource, entry, process, change, practice, Optional.empty());
    }

    private CoilSource coilSource(double speed) {
        List<Coil> coils = IntStream.range(0, random.nextInt(1, 5))
                .mapToObj(i -> coil(i, speed))
                .toList();
        return switch (random.nextInt(3)) {
            case 0 -> new CoilSource.Repeated(coils.get(0));
            case 1 -> new CoilSource.Schedule(coils);
            default ->
                new CoilSource.Mix(coils.stream()
                        .map(coil -> new CoilSource.Share(coil, between(0.1, 1)))
                        .toList());
        };
    }

    private Coil coil(int index, double speed) {
        double length = maybe(0.3) ? between(5, 30) : between(50, 400);
        double crops = maybe(0.5) ? 0 : 1;
        Distribution drawn = switch (random.nextInt(3)) {
            case 0 -> Distribution.constant(length);
            case 1 -> Distribution.uniform(length / 2, length);
            default -> Distribution.exponential(length).shifted(4);
        };
        return new Coil(
                "coil " + index,
                new Coil.Strip(between(0.0005, 0.004), between(0.2, 1.5), 7850),
                new CoilSize.ByLength(drawn),
                new Coil.Crops(crops * between(0, 0.1), crops * between(0, 0.1)),
                maybe(0.4) ? OptionalDouble.of(speed * between(0.4, 1.2)) : OptionalDouble.empty(),
                "",
                Optional.empty());
    }

    private ProcessSection process(double speed, double capacity, boolean oneStrip) {
        double slowLevel = between(0.2, 0.9) * capacity;
        return new ProcessSection(
                new ProcessSection.Drive(speed, rate(), rate()),
                new ProcessSection.Restart(
                        maybe(0.5) || oneStrip ? Double.NaN : between(0.2, 1) * capacity,
                        maybe(0.5) ? Distribution.constant(0) : time(20)),
                maybe(0.4)
                        ? Optional.of(new Slowing(
                                between(0.1, 0.9) * speed,
                                slowLevel,
                                maybe(0.5) ? Double.NaN : slowLevel + between(0.1, 1) * (capacity - slowLevel)))
                        : Optional.empty(),
                maybe(0.5) ? Optional.of(new Downtime(time(between(5, 200)), time(30))) : Optional.empty(),
                maybe(0.5) ? 0 : between(0, 60),
                new ProcessSection.Scrap(maybe(0.5) ? 0 : between(0, 3), 0),
                new ProcessSection.JointsInProcess(Optional.empty(), Optional.empty()));
    }

    private CoilChange change() {
        return new CoilChange(
                random.nextInt(1, 3),
                elements(between(0, 120)),
                elements(10),
                elements(between(0, 60)),
                switch (random.nextInt(3)) {
                    case 0 -> new Reject.Never();
                    case 1 -> new Reject.Chance(between(0, 0.4));
                    default -> new Reject.Every(random.nextInt(1, 4));
                });
    }

    private List<WorkElement> elements(double about) {
        List<WorkElement> elements = new ArrayList<>();
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            WorkTime time = maybe(0.2)
                    ? new WorkTime.Travel(between(0.02, 0.2), time(2))
                    : new WorkTime.Timed(time(about / count));
            Occurrence occurrence = switch (random.nextInt(4)) {
                case 0 -> new Occurrence.Every(random.nextInt(1, 4));
                case 1 -> new Occurrence.Chance(between(0, 1));
                default -> new Occurrence.Always();
            };
            elements.add(new WorkElement("element " + i, time, occurrence, maybe(0.6)));
        }
        return elements;
    }

    private Distribution time(double mean) {
        return switch (random.nextInt(7)) {
            case 0 -> Distribution.constant(0);
            case 1 -> Distribution.constant(mean);
            case 2 -> Distribution.uniform(0, 2 * mean);
            case 3 -> Distribution.triangular(mean / 2, mean, 1.5 * mean);
            case 4 -> Distribution.lognormal(mean + 0.1, mean / 2 + 0.1);
            case 5 -> Distribution.observed(List.of(mean / 2, mean, 2 * mean));
            default -> Distribution.exponential(mean + 0.1);
        };
    }

    private double rate() {
        return maybe(0.2) ? AT_ONCE : between(0.05, 1);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private boolean maybe(double chance) {
        return random.nextDouble() < chance;
    }
}
