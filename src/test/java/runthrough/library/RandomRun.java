package runthrough.library;

import runthrough.plant.Distribution;
import runthrough.plant.RunPlan;
import runthrough.plant.builder.LineBuilder;
import runthrough.plant.check.CheckedLine;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.records.Detail;

/** A line in which much is random, run for {@link EngineJarTest} with the whole program and with the engine alone. */
final class RandomRun {
    private RandomRun() {}

    /** Prints what {@link #totals} gives. */
    public static void main(String[] arguments) {
        System.out.println(totals());
    }

    /** The totals of three replications, with every digit. */
    static String totals() {
        CheckedLine line = new LineBuilder()
                .coil("strip", 0.002, 1.25, 7850, Distribution.uniform(500, 700))
                .entry(2.5, 0.4, 0.5)
                .capacity(200)
                .process(1.5, 0.2, 0.5)
                .downtime(Distribution.exponential(3600), Distribution.gamma(120, 60))
                .prepare("load", Distribution.normal(200, 60))
                .tail("shear", Distribution.weibull(2, 10))
                .join("weld", Distribution.lognormal(90, 30))
                .rejectChance(0.05)
                .build();
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(200), 1, 3, 42, 0.99);
        StringBuilder all = new StringBuilder();
        new LineSimulator(line, plan)
                .run(Detail.CHANGES)
                .forEach(run -> all.append(run.totals()).append(' '));
        return all.toString().strip();
    }
}
