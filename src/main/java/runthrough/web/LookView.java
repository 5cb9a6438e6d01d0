package runthrough.web;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import runthrough.plant.Catenary;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;

/**
 * The shape of a line, for its drawing; lengths in metres, speeds in metres per second.
 *
 * @param joins whether there is a joiner; without one the line is threaded anew
 * @param capacity of the accumulator; 0 where entry and process are one strip
 * @param stopLevel at which the process must stop, at the fastest rated speed
 * @param largestDiameter of all coils
 * @param form strands, loops, spiral, direct or none
 * @param sizes what belongs to that form, by name
 * @param loopShapes of free loops: half the span over the catenary parameter, at levels in equal steps from empty to {@value
 *     #LOOP_REACH} times the capacity, so that the page draws a loop without solving for it; empty for other forms
 */
record LookView(
        String title,
        boolean joins,
        int uncoilers,
        double topSpeed,
        double capacity,
        double stopLevel,
        double largestDiameter,
        List<CoilLook> coils,
        String form,
        Map<String, Double> sizes,
        List<Double> loopShapes) {

    private static final int LOOP_STEPS = 64;
    /** Overtravel is drawn, too. */
    private static final double LOOP_REACH = 1.05;

    /** Where a coil's inner diameter is not given; only for the drawing. Common practice, no source. */
    private static final double USUAL_CORE = 0.508;

    LookView {
        coils = List.copyOf(coils);
        sizes = Map.copyOf(sizes);
        loopShapes = List.copyOf(loopShapes);
    }

    /** A kind of coil: thickness, core and how densely it is wound decide how large what is left of it is. */
    record CoilLook(String name, double thickness, double inner, double winding, double length) {

        static CoilLook of(Coil coil) {
            double core = coil.coreDiameter().orElse(USUAL_CORE);
            return new CoilLook(coil.name(), coil.thickness(), core, coil.windingFactor(), coil.meanLength());
        }

        double outer() {
            return CoilSize.outerDiameter(inner, thickness, length, winding);
        }
    }

    static LookView of(SimulationRequest request) {
        Line line = request.line();
        boolean stores = !line.practice().isOneStrip();
        List<CoilLook> coils = line.coils().stream().map(CoilLook::of).toList();
        return new LookView(
                request.title(),
                line.practice().hasJoiner(),
                line.entry().uncoilers(),
                stores ? line.entry().topSpeed() : line.fastestRatedSpeed(),
                stores ? line.accumulator().capacity() : 0,
                stores ? line.stopLevel(line.fastestRatedSpeed()) : 0,
                coils.stream().mapToDouble(CoilLook::outer).max().orElse(1),
                coils,
                stores ? form(line.accumulator().form()) : "none",
                stores ? sizes(line.accumulator().form()) : Map.of(),
                stores && line.accumulator().form() instanceof StorageForm.FreeLoop loops
                        ? loopShapes(loops, line.accumulator().capacity())
                        : List.of());
    }

    private static List<Double> loopShapes(StorageForm.FreeLoop loops, double capacity) {
        double empty = Catenary.arc(loops.span(), loops.leastSag());
        return IntStream.rangeClosed(0, LOOP_STEPS)
                .mapToObj(step ->
                        Catenary.shape(loops.span(), empty + LOOP_REACH * capacity * step / LOOP_STEPS / loops.loops()))
                .toList();
    }

    private static String form(StorageForm form) {
        return form instanceof StorageForm.Strands
                ? "strands"
                : form instanceof StorageForm.FreeLoop
                        ? "loops"
                        : form instanceof StorageForm.Spiral ? "spiral" : "direct";
    }

    private static Map<String, Double> sizes(StorageForm form) {
        if (form instanceof StorageForm.Strands own) {
            return Map.of(
                    "strands", (double) own.strands(), "stroke", own.stroke(), "vertical", own.vertical() ? 1.0 : 0.0);
        } else if (form instanceof StorageForm.FreeLoop own) {
            return Map.of(
                    "loops",
                    (double) own.loops(),
                    "span",
                    own.span(),
                    "sagMax",
                    own.greatestSag(),
                    "shapesUpTo",
                    LOOP_REACH);
        } else if (form instanceof StorageForm.Spiral own) {
            return Map.of(
                    "wraps", own.wraps(),
                    "fullDiameter", own.fullDiameter(),
                    "emptyDiameter", own.emptyDiameter());
        }
        return Map.of();
    }
}
