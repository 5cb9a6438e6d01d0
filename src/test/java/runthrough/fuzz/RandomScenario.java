package runthrough.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Scenarios of lines that nobody would build and that may be described: one strand or thirty, an entry that is hardly faster than
 * the process, coils that last a minute, joints of half a second, two coil changes in a run. Some of them are refused.
 */
public final class RandomScenario {
    private final Random random;
    private final boolean isConstant;
    private final boolean hasAccumulator;
    private final boolean isRethread;
    /** Process speed (m/min), length of a coil and capacity (m). */
    private final double speed;

    private final double length;
    private final double capacity;

    private RandomScenario(long seed) {
        this.random = new Random(seed);
        this.isConstant = chance(0.3);
        this.hasAccumulator = chance(0.8);
        this.isRethread = !hasAccumulator && chance(0.5);
        this.speed = of(1, 5, 20, 60, 120, 300) * between(0.5, 1.5);
        this.length = of(1.02, 1.5, 3, 10, 30, 100) * speed * between(0.5, 2);
        this.capacity = speed / 60 * of(5, 30, 60, 90, 150, 600) * between(0.7, 1.5);
    }

    /** The text of the scenario with the number {@code seed}. */
    public static String of(long seed) {
        return new RandomScenario(seed).text();
    }

    private String text() {
        List<String> lines = new ArrayList<>();
        lines.add("title: Random line (invented)");
        lines.add("practice: "
                + (hasAccumulator ? "join with accumulator" : isRethread ? "rethread" : "join without accumulator"));
        lines.add(chance(0.3) ? "results-in: us" : "results-in: metric");
        lines.add(chance(0.25) ? mix() : "coil: {" + coil(drawnLength()) + "}");
        lines.add(entry());
        if (hasAccumulator) {
            lines.add("accumulator: {" + accumulator() + perhaps(0.3, () -> ", reserve: " + m(0.05 * capacity)) + "}");
        }
        String process = process();
        lines.add(process);
        lines.add(coilChange());
        lines.add(number(
                "run: {coil-changes: %s, leave-out: %s, replications: %s, seed: %s, target: %s %%}",
                of(2, 5, 12, 21, 40), of(0, 1), of(1, 2, 3, 6), random.nextInt(1000), of(1, 50, 90, 99, 99.9)));
        // What is said of joints has no part in rethreading.
        if (hasAccumulator && !process.contains("joint-") && chance(0.5)) {
            lines.add(number(
                    "alternatives: {a: {entry.uncoilers: 4}, b: {practice: rethread, coil-change.rethread: 300 s},"
                            + " c: {process.speed: %s m/min}}",
                    0.9 * speed));
            lines.add("today: b");
            lines.add(number(
                    "money: {currency: EUR, line-hour: %s, scrap-per-tonne: 300, labour-hour: %s, rate: %s %%,"
                            + " alternatives: {a: {price: %s, life: %s}}, levers: {usable-capacity: {per: 1 m, price: 2600,"
                            + " life: 15}}}",
                    of(0, 1, 160, 100_000), of(0, 45), of(0, 8, 50), of(0, 10_000, 10_000_000), of(1, 7, 40)));
        }
        return String.join("\n", lines) + "\n";
    }

    private String mix() {
        return IntStream.range(0, 2 + random.nextInt(3))
                .mapToObj(kind -> number("{name: k%s, weight: %s, ", kind, 1 + random.nextInt(9))
                        + coil(m(length * between(0.3, 2)))
                        + perhaps(0.2, () -> number(", process-speed: %s m/min", speed * between(0.5, 1)))
                        + "}")
                .collect(Collectors.joining(", ", "coils: {mix: [", "]}"));
    }

    private String coil(String itsLength) {
        return number(
                        "thickness: %s mm, width: %s mm, density: 7850 kg/m3, length: ",
                        between(0.2, 6), between(20, 1800))
                + itsLength
                + ", head-crop: " + m(of(0, 0, 0.01) * length) + ", tail-crop: " + m(of(0, 0.005) * length);
    }

    private String drawnLength() {
        return isConstant || chance(0.7) ? m(length) : "{uniform: [" + m(0.6 * length) + ", " + m(1.4 * length) + "]}";
    }

    private String entry() {
        return number(
                        "entry: {uncoilers: %s, top-speed: %s m/min",
                        of(1, 1, 2, 2, 3, 5), speed * of(1.0005, 1.02, 1.2, 2, 5))
                + perhaps(0.7, this::ramps)
                + perhaps(0.2, () -> ", uncoiler-path: " + m(0.1 * length * random.nextDouble()))
                + "}";
    }

    private String ramps() {
        return number(
                ", acceleration: %s m/s2, deceleration: %s m/s2",
                of(0.05, 0.3, 2, 20) * between(0.5, 1.5), of(0.05, 0.3, 2, 20) * between(0.5, 1.5));
    }

    private String accumulator() {
        if (chance(0.4)) {
            double strands = of(1, 1, 2, 2, 3, 4, 8, 30);
            return number("strands: %s, stroke: ", strands)
                    + m(capacity / strands)
                    + perhaps(0.4, () -> number(", carriage-speed: %s m/min", speed * between(0.02, 2)));
        }
        return chance(0.3)
                ? number("wraps: %s, full-diameter: ", of(1, 2, 10, 40)) + m(between(1.5, 3)) + ", empty-diameter: "
                        + m(between(0.5, 1.4))
                : "capacity: " + m(capacity);
    }

    private String process() {
        String joints = isRethread
                ? ""
                : perhaps(0.15, () -> number(", joint-passage: {speed: %s m/min, before: 2 m, after: 1 m}", speed / 2))
                        + perhaps(
                                0.15,
                                () -> number(", joint-break: {chance: %s %%, length: 5 m, repair: ", of(0.1, 2, 30))
                                        + time(30, 2000) + "}");
        return number("process: {speed: %s m/min", speed) + perhaps(0.6, this::ramps)
                + perhaps(0.3, () -> ", restart: {delay: " + time(1, 200) + "}")
                + perhaps(
                        0.15,
                        () -> number(", downtime: {running: {exponential: %s min}, standing: ", of(5, 60, 500))
                                + time(10, 900) + "}")
                + joints
                + (hasAccumulator
                        ? perhaps(
                                0.2,
                                () -> number(", slowing: {speed: %s m/min, level: ", speed * between(0.2, 0.9))
                                        + m(capacity * between(0.1, 0.8)) + "}")
                        : "")
                + "}";
    }

    private String coilChange() {
        String work = isRethread
                ? ", rethread: " + time(30, 900)
                : perhaps(0.5, () -> ", tail: [{t: " + time(0.5, 20) + "}]") + ", join: [" + elements(0.5, 90) + "]"
                        + perhaps(0.5, () -> number(", reject: {chance: %s %%}", of(0, 0.5, 2, 20, 70)));
        return number("coil-change: {crew: %s", of(1, 1, 2, 2, 5))
                + perhaps(0.6, () -> ", prepare: [" + elements(1, 30 * length / speed + 1) + "]")
                + work
                + "}";
    }

    private String elements(double least, double most) {
        return IntStream.range(0, 1 + random.nextInt(3))
                .mapToObj(i -> "{e" + i + ": " + time(least, most) + "}")
                .collect(Collectors.joining(", "));
    }

    private String time(double least, double most) {
        double a = between(least, most);
        double b = a * between(1, 3);
        double c = b * between(1, 2);
        return switch (isConstant ? 0 : random.nextInt(8)) {
            case 1 -> number("{uniform: [%s s, %s s]}", a, b);
            case 2 -> number("{triangular: [%s s, %s s, %s s]}", a, b, c);
            case 3 -> number("{lognormal: [%s s, %s s]}", a, a * between(0.01, 0.6));
            case 4 -> number("{exponential: %s s}", a);
            case 5 -> number("{gamma: [%s s, %s s]}", a, a * between(0.1, 0.6));
            case 6 -> number("{observed: [%s s, %s s, %s s]}", a, b, c);
            default -> number("%s s", a);
        };
    }

    private static String m(double metres) {
        return number("%s m", metres);
    }

    /** Numbers to four digits behind the point, whole ones without. */
    private static String number(String text, Object... values) {
        Object[] written = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            double value = ((Number) values[i]).doubleValue();
            written[i] = value == Math.rint(value)
                    ? String.valueOf((long) value)
                    : String.format(Locale.ROOT, "%.4f", Math.max(1e-4, value));
        }
        return String.format(Locale.ROOT, text, written);
    }

    private String perhaps(double chance, Supplier<String> text) {
        return chance(chance) ? text.get() : "";
    }

    private boolean chance(double chance) {
        return random.nextDouble() < chance;
    }

    private double of(double... values) {
        return values[random.nextInt(values.length)];
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
