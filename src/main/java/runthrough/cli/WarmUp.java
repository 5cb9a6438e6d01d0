package runthrough.cli;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.builder.LineBuilder;
import runthrough.quantity.UnitSystem;
import runthrough.report.Provenance;
import runthrough.report.verdict.RunThroughResult;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.report.write.TerminalWriter;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.lever.WorthStudy;

/**
 * While one processor looks at options and reads a scenario, another runs a small line, words its verdict and forgets it: the engine and
 * what words an answer are loaded by the time that the scenario is. It decides nothing.
 */
final class WarmUp {
    private static final double CAPACITY = 60;

    private WarmUp() {}

    /** Begins where {@code command} is the one that gains by it, and a processor has nothing to do. */
    static void begin(String command) {
        if (command.equals("run") && Runtime.getRuntime().availableProcessors() > 1) {
            Thread thread = new Thread(WarmUp::runSmallLine, "warm-up");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private static void runSmallLine() {
        try {
            RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(50), 0, 4, 1, 0.99);
            SimulationRequest request = new SimulationRequest("warm-up", List.of(), line(), plan, UnitSystem.METRIC);
            RunThroughResult result = RunThroughResult.of(
                    new RunThroughStudy(request).run(StudyOptions.plain().withThreads(1), StudyListener.NONE),
                    List.of(),
                    new Provenance("", Optional.empty(), Optional.empty()));
            TerminalWriter.render(
                    VerdictAnswer.inWords(result.with(new WorthStudy(result.study()).run(1, StudyListener.NONE))),
                    false);
        } catch (RuntimeException e) {
            // What it was for is done.
        }
    }

    private static Line line() {
        return new LineBuilder()
                .coil("strip", 0.0015, 0.3, 7850, Distribution.normal(1000, 50))
                .entry(1.5, 0.3, 0.4)
                .capacity(CAPACITY)
                .process(0.75, 0.2, 0.25)
                .join("fit up", Distribution.lognormal(20, 8))
                .join("weld", Distribution.triangular(30, 40, 60))
                .build()
                .line();
    }
}
