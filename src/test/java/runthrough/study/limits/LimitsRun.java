package runthrough.study.limits;

import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.PlainLine;
import runthrough.study.StudyListener;
import runthrough.study.lever.Lever.What;

/** Runs of the study, and what is read of its answer. */
final class LimitsRun {

    /** Ramps throughout, 3 m of reserve, 120 m, a joint of 60 s of work. */
    static final Line RAMPED = new PlainLine()
            .coils(PlainLine.coil(2000))
            .entry(2.5, 0.3, 0.4)
            .process(1.5, 0.2, 0.25)
            .reserve(3)
            .capacity(120)
            .tail(10)
            .join(50)
            .build();

    private LimitsRun() {}

    static SimulationRequest request(Line line, int changes, int replications) {
        return new SimulationRequest(
                "Line (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, 11, 0.9),
                UnitSystem.METRIC);
    }

    static Limits limits(SimulationRequest request, double target) {
        return new LimitsStudy(request, target).run(2, StudyListener.NONE);
    }

    static LineLimit limit(Limits limits, What what) {
        return limits.limit(what).orElseThrow();
    }

    static double value(LineLimit limit) {
        return limit.crossing().answer().orElseThrow();
    }

    static Offset<Double> parts(double value, double part) {
        return within(value * part);
    }

    static double low(LineLimit limit) {
        return limit.crossing().low().orElseThrow();
    }

    static double high(LineLimit limit) {
        return limit.crossing().high().orElseThrow();
    }
}
