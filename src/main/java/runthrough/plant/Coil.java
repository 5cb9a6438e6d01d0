package runthrough.plant;

import java.util.OptionalDouble;

/**
 * A kind of coil: its strip, its size and what is cropped from it.
 *
 * <p>Rules COIL-7, COIL-8, COIL-9.
 *
 * @param name how the user calls it, for reports
 * @param thickness strip thickness (m), {@code > 0}
 * @param width strip width (m), {@code > 0}
 * @param density (kg/m3), {@code > 0}
 * @param size what fixes its length: a length, a mass, or two diameters
 * @param headCrop scrap cut from the head at a joint (m), {@code >= 0}
 * @param tailCrop scrap cut from the tail at a joint (m), {@code >= 0}
 * @param processSpeed the rated process speed this coil asks for (m/s), {@code > 0}; empty for the line's own
 * @param product what is made of it, as the user calls it, for reports; empty where that is not said
 * @param innerDiameter (m), {@code > 0}, where the size is a length or a mass and it is given beside; it says how large the
 *     coil is, and nothing of how long
 */
public record Coil(
        String name,
        double thickness,
        double width,
        double density,
        CoilSize size,
        double headCrop,
        double tailCrop,
        OptionalDouble processSpeed,
        String product,
        OptionalDouble innerDiameter) {

    public Coil {
        Ranges.finitePositive("thickness", thickness);
        Ranges.finitePositive("width", width);
        Ranges.finitePositive("density", density);
        Ranges.notNegative("head crop", headCrop);
        Ranges.notNegative("tail crop", tailCrop);
        processSpeed.ifPresent(speed -> Ranges.finitePositive("process speed", speed));
        innerDiameter.ifPresent(diameter -> Ranges.finitePositive("inner diameter", diameter));
        if (innerDiameter.isPresent() && size instanceof CoilSize.ByDiameters) {
            throw new IllegalArgumentException("inner diameter given twice, by the size and beside it; give it once");
        }
    }

    /** A coil of which nothing is known beside its size. */
    public Coil(
            String name,
            double thickness,
            double width,
            double density,
            CoilSize size,
            double headCrop,
            double tailCrop,
            OptionalDouble processSpeed,
            String product) {
        this(name, thickness, width, density, size, headCrop, tailCrop, processSpeed, product, OptionalDouble.empty());
    }

    /** A coil of which it is not said what is made of it. */
    public Coil(
            String name,
            double thickness,
            double width,
            double density,
            CoilSize size,
            double headCrop,
            double tailCrop,
            OptionalDouble processSpeed) {
        this(name, thickness, width, density, size, headCrop, tailCrop, processSpeed, "");
    }

    /** The same with a coil {@code factor} times as long, {@code factor > 0}; the crops stay. */
    public Coil withLengthTimes(double factor) {
        return with(size.scaled(factor), processSpeed);
    }

    /** The same with {@code factor} times the speed that it asks for, if it asks for one; {@code factor > 0}. */
    public Coil withSpeedTimes(double factor) {
        return with(
                size, processSpeed.isPresent() ? OptionalDouble.of(processSpeed.getAsDouble() * factor) : processSpeed);
    }

    /** The same with an inner diameter (m) beside its length or mass. */
    public Coil withInnerDiameter(double diameter) {
        return new Coil(
                name,
                thickness,
                width,
                density,
                size,
                headCrop,
                tailCrop,
                processSpeed,
                product,
                OptionalDouble.of(diameter));
    }

    private Coil with(CoilSize otherSize, OptionalDouble speed) {
        return new Coil(name, thickness, width, density, otherSize, headCrop, tailCrop, speed, product, innerDiameter);
    }

    /** Diameter of the core (m), whichever way it is given; empty where it is not. */
    public OptionalDouble coreDiameter() {
        return size instanceof CoilSize.ByDiameters round ? OptionalDouble.of(round.inner()) : innerDiameter;
    }

    /** Share of the wound section that is strip, in (0, 1]. */
    public double windingFactor() {
        return size instanceof CoilSize.ByDiameters round ? round.windingFactor() : 1;
    }

    /** Outer diameter (m) of a coil of mean length; empty where no inner diameter is given. */
    public OptionalDouble outerDiameter() {
        if (size instanceof CoilSize.ByDiameters round) {
            return OptionalDouble.of(round.outer());
        }
        return innerDiameter.isEmpty()
                ? innerDiameter
                : OptionalDouble.of(CoilSize.outerDiameter(innerDiameter.getAsDouble(), thickness, meanLength(), 1));
    }

    /** Mass of a metre of strip (kg/m). */
    public double massPerMetre() {
        return density * width * thickness;
    }

    /** Length of the whole coil (m) when its size is drawn at {@code p} in (0, 1). */
    public double length(double p) {
        return size.length(this, p);
    }

    /**
     * Length left after both crops (m) when its size is drawn at {@code p}; not positive means the coil is too short.
     *
     * <p>Rule COIL-2.
     */
    public double usableLength(double p) {
        return length(p) - headCrop - tailCrop;
    }

    /** Mean length of the whole coil (m). */
    public double meanLength() {
        return size.meanLength(this);
    }

    /** Mean length left after both crops (m). */
    public double meanUsableLength() {
        return meanLength() - headCrop - tailCrop;
    }
}
