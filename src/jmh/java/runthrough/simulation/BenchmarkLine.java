package runthrough.simulation;

import java.util.List;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.WorkElement;

/**
 * The line that is measured: two uncoilers, a crew of two, finite accelerations; a coil change draws two triangular, three
 * lognormal and one exponential time, and whether the joint is rejected. With {@link #CAPACITY} it runs through most coil
 * changes, not all.
 */
final class BenchmarkLine {
    static final double COIL_LENGTH = 1500;
    static final double TOP_SPEED = 2.5;
    static final double ENTRY_UP = 0.3;
    static final double ENTRY_DOWN = 0.4;
    static final double PROCESS_SPEED = 1.5;
    static final double CAPACITY = 200;
    static final double REJECT_CHANCE = 0.02;
    static final long SEED = 7;

    static final List<Distribution> PREPARE =
            List.of(Distribution.triangular(60, 90, 240), Distribution.lognormal(120, 30));
    static final List<Distribution> TAIL = List.of(Distribution.triangular(5, 8, 20));
    static final List<Distribution> JOIN =
            List.of(Distribution.lognormal(20, 6), Distribution.lognormal(25, 5), Distribution.exponential(10));

    private BenchmarkLine() {}

    /** The line with an accumulator of {@code capacity} (m). */
    static Line withCapacity(double capacity) {
        PlainLine line = new PlainLine()
                .coils(PlainLine.coil(COIL_LENGTH))
                .uncoilers(2, 0)
                .crew(2)
                .entry(TOP_SPEED, ENTRY_UP, ENTRY_DOWN)
                .process(PROCESS_SPEED, 0.2, 0.25)
                .capacity(capacity)
                .reject(new Reject.Chance(REJECT_CHANCE));
        PREPARE.forEach(distribution -> line.prepare(notRedone(distribution)));
        TAIL.forEach(distribution -> line.tail(PlainLine.element(distribution)));
        JOIN.forEach(line::join);
        return line.build();
    }

    private static WorkElement notRedone(Distribution distribution) {
        WorkElement element = PlainLine.element(distribution);
        return new WorkElement(element.name(), element.time(), element.occurrence(), false);
    }

    static LineSimulator simulator(double capacity, int changes) {
        return LineSimulator.of(withCapacity(capacity), new RunPlan(new Extent.Changes(changes), 0, 1, SEED, 0.995));
    }
}
