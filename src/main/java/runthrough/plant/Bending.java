package runthrough.plant;

/**
 * What the strip is bent over and what it can bear: reported, not simulated. Strip of thickness t stays elastic over a
 * radius of at least {@code E t / (2 yield)} (elementary beam bending).
 *
 * <p>Rule ACC-10.
 *
 * @param modulus of elasticity E (Pa), {@code > 0}
 * @param yield stress (Pa), {@code > 0}
 * @param radius smallest roll or loop radius (m), {@code > 0}
 */
public record Bending(double modulus, double yield, double radius) {
    public Bending {
        Ranges.of("bending")
                .finitePositive("modulus", modulus, Ranges.Of.STRESS)
                .finitePositive("yield", yield, Ranges.Of.STRESS)
                .finitePositive("radius", radius, Ranges.Of.LENGTH)
                .refuse();
    }

    /** Smallest radius (m) over which strip of {@code thickness} (m) stays elastic. */
    public double elasticRadius(double thickness) {
        return modulus * thickness / (2 * yield);
    }
}
