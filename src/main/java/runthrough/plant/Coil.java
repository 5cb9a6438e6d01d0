package runthrough.plant;

import java.util.OptionalDouble;

/**
 * A kind of coil: its strip, its size and what is cropped from it.
 *
 * <p>Rules COIL-7, COIL-8.
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
        String product) {

    public Coil {
        Ranges.finitePositive("thickness", thickness);
        Ranges.finitePositive("width", width);
        Ranges.finitePositive("density", density);
        Ranges.notNegative("head crop", headCrop);
        Ranges.notNegative("tail crop", tailCrop);
        processSpeed.ifPresent(speed -> Ranges.finitePositive("process speed", speed));
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
        return new Coil(
                name, thickness, width, density, size.scaled(factor), headCrop, tailCrop, processSpeed, product);
    }

    /** The same with {@code factor} times the speed that it asks for, if it asks for one; {@code factor > 0}. */
    public Coil withSpeedTimes(double factor) {
        OptionalDouble speed =
                processSpeed.isPresent() ? OptionalDouble.of(processSpeed.getAsDouble() * factor) : processSpeed;
        return new Coil(name, thickness, width, density, size, headCrop, tailCrop, speed, product);
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
