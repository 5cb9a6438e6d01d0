package runthrough.handcalc;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runthrough.plant.Bending;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.quantity.Kind;

/**
 * Whether strip of one thickness stays elastic where it is bent most: over a radius of {@code E t/(2 yield)} or more.
 *
 * <p>Rule ACC-10.
 *
 * @param coil a kind of coil of this thickness, the first of the line
 * @param thickness t (m)
 * @param radius the smallest radius against the smallest that is elastic (m)
 */
public record BendingCheck(Coil coil, double thickness, Margin radius) {

    /** One check for each thickness that may come, thickest first; none where it is not to be reported. */
    static List<BendingCheck> of(Line line) {
        return line.bending().map(bending -> of(bending, line.coils())).orElse(List.of());
    }

    private static List<BendingCheck> of(Bending bending, List<Coil> coils) {
        Map<Double, Coil> firstOfThickness = new LinkedHashMap<>();
        coils.forEach(coil -> firstOfThickness.putIfAbsent(coil.thickness(), coil));
        return firstOfThickness.values().stream()
                .map(coil -> new BendingCheck(
                        coil,
                        coil.thickness(),
                        new Margin(Kind.DIAMETER, bending.radius(), bending.elasticRadius(coil.thickness()))))
                .sorted((a, b) -> Double.compare(b.thickness(), a.thickness()))
                .toList();
    }
}
