package runthrough.report.verdict;

import java.util.List;
import java.util.Optional;
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
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;
import runthrough.report.Provenance;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;

/** An invented tube line and what a study of it gives, to be reported. */
public final class Invented {
    public static final String FINGERPRINT = "0123456789abcdef".repeat(4);
    public static final Provenance PROVENANCE =
            new Provenance("runthrough 0.1.0", Optional.of(FINGERPRINT), Optional.empty());

    private Invented() {}

    /** A tube line whose joint takes {@code fitUp} and 48 s; when that is constant, nothing is random. */
    public static Line line(Distribution fitUp) {
        return line("2.0 x 240", "fit up", fitUp, new Reject.Never());
    }

    public static Line line(String coil, String element, Distribution fitUp, Reject reject) {
        CoilChange change = new CoilChange(
                2,
                List.of(timed(
                        "load and open",
                        fitUp.isConstant() ? Distribution.constant(120) : Distribution.lognormal(120, 30))),
                List.of(timed("shear tail", Distribution.constant(8))),
                List.of(timed(element, fitUp), timed("weld and inspect", Distribution.constant(40))),
                reject);
        return new Line(
                new CoilSource.Repeated(coil(coil)),
                new Entry(2, 1.5, 0.3, 0.4, Optional.empty(), 0),
                ProcessSection.running(0.75, 0.2, 0.25),
                change,
                new Practice.JoinWithAccumulator(new Accumulator(
                        new StorageForm.Strands(8, 9, 0.2, Double.POSITIVE_INFINITY, false),
                        Double.POSITIVE_INFINITY,
                        2,
                        Double.POSITIVE_INFINITY)),
                Optional.empty());
    }

    public static Coil coil(String name) {
        return new Coil(name, new Coil.Strip(0.002, 0.24, 7850), new CoilSize.ByDiameters(1.45, 0.508, 1))
                .withCrops(0.4, 0.3);
    }

    /** The same without joiner and accumulator. */
    public static Line rethread() {
        Line line = line(Distribution.constant(25));
        CoilChange change = new CoilChange(2, line.change().prepare(), List.of(), List.of(), new Reject.Never());
        return new Line(
                line.coilSource(),
                line.entry(),
                line.process(),
                change,
                new Practice.Rethread(Distribution.triangular(300, 400, 900)),
                Optional.empty());
    }

    /** The same with a joiner but no accumulator. */
    public static Line withoutAccumulator() {
        Line line = line(Distribution.constant(25));
        return new Line(
                line.coilSource(),
                line.entry(),
                line.process(),
                line.change(),
                new Practice.JoinWithoutAccumulator(),
                Optional.empty());
    }

    /**
     * The same as its own: 1 m/s, entry 2 m/s, all ramps 0.5 m/s2, 600 m of strip, coils of 1000 m, slowing at 100 m, joints that
     * pass at half speed and may break. In the shift called night one of two is away for 450 s, and the weld takes two.
     */
    public static Line inShifts() {
        return new runthrough.plant.builder.LineBuilder()
                .coil("strip", 0.002, 0.25, 8000, Distribution.constant(1000))
                .entry(2, 0.5, 0.5)
                .uncoilers(2)
                .capacity(600)
                .process(1, 0.5, 0.5)
                .slowing(0.5, 100, 200)
                .jointPassage(0.5, 0, 10)
                .jointBreak(0.1, 10, Distribution.constant(100), 5)
                .prepare("load", Distribution.constant(300))
                .join(timed("weld", Distribution.constant(20)).withPeople(2))
                .shift("day", 1500, 2)
                .shift("night", 1000, 2, new Shifts.Break(450, 450, 1))
                .describe();
    }

    public static WorkElement timed(String name, Distribution time) {
        return new WorkElement(name, new WorkElement.WorkTime.Timed(time), new WorkElement.Occurrence.Always(), true);
    }

    public static SimulationRequest request(Line line) {
        return request("Kestrel Road tube line (invented)", line, UnitSystem.METRIC, 0.99);
    }

    public static SimulationRequest request(String title, Line line, UnitSystem system, double target) {
        return new SimulationRequest(
                title, List.of(), line, new RunPlan(new RunPlan.Extent.Changes(40), 0, 5, 7, target), system);
    }

    public static RunThroughResult result(Line line) {
        return result(request(line));
    }

    public static RunThroughResult result(SimulationRequest request) {
        return result(request, List.of());
    }

    public static RunThroughResult result(SimulationRequest request, List<String> warnings) {
        return RunThroughResult.of(study(request), warnings, PROVENANCE);
    }

    public static StudyResult study(SimulationRequest request) {
        return new RunThroughStudy(request).run(StudyOptions.forReport(), StudyListener.NONE);
    }
}
