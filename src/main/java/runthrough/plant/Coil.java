package runthrough.plant;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A kind of coil: its strip, its size and what is cropped from it.
 *
 * <p>Rules COIL-7, COIL-8, COIL-9.
 *
 * @param name how the user calls it, for reports
 * @param strip that is wound up
 * @param size what fixes its length: a length, a mass, or two diameters
 * @param crops what is cut off at its joints
 * @param processSpeed the rated process speed this coil asks for (m/s), {@code > 0}; empty for the line's own
 * @param product what is made of it, as the user calls it, for reports; empty where that is not said
 * @param core where the size is a length or a mass, what it is wound on and how densely, if that is given beside; it says how
 *     large the coil is, and nothing of how long
 */
public record Coil(
        String name,
        Strip strip,
        CoilSize size,
        Crops crops,
        OptionalDouble processSpeed,
        String product,
        Optional<Core> core) {

    public Coil {
        processSpeed.ifPresent(speed -> Ranges.of("coil")
                .finitePositive("process speed", speed, Ranges.Of.SPEED)
                .refuse());
        if (core.isPresent() && size instanceof CoilSize.ByDiameters) {
            throw new IllegalArgumentException("inner diameter given twice, by the size and beside it; give it once");
        }
    }

    /**
     * Flat metal of one thickness and width.
     *
     * @param thickness (m), {@code > 0}
     * @param width (m), {@code > 0}
     * @param density (kg/m3), {@code > 0}
     */
    public record Strip(double thickness, double width, double density) {
        public Strip {
            Ranges.of("coil")
                    .finitePositive("thickness", thickness, Ranges.Of.LENGTH)
                    .finitePositive("width", width, Ranges.Of.LENGTH)
                    .finitePositive("density", density, Ranges.Of.DENSITY)
                    .refuse();
        }
    }

    /**
     * Scrap cut off the ends of a coil at its joints.
     *
     * @param head cut off the head (m), {@code >= 0}
     * @param tail cut off the tail (m), {@code >= 0}
     */
    public record Crops(double head, double tail) {
        /** Nothing is cut off. */
        public static final Crops NONE = new Crops(0, 0);

        public Crops {
            Ranges.of("coil")
                    .notNegative("head crop", head, Ranges.Of.LENGTH)
                    .notNegative("tail crop", tail, Ranges.Of.LENGTH)
                    .refuse();
        }
    }

    /**
     * What a coil given by its length or mass is wound on, and how densely.
     *
     * @param diameter inner diameter of the coil (m), {@code > 0}
     * @param windingFactor share of the wound section that is strip, in (0, 1]
     */
    public record Core(double diameter, double windingFactor) {
        public Core {
            Ranges.of("coil")
                    .finitePositive("inner diameter", diameter, Ranges.Of.LENGTH)
                    .positiveShare("winding factor", windingFactor)
                    .refuse();
        }
    }

    /** A coil without crops, at the line's own speed, of which nothing more is known. */
    public Coil(String name, Strip strip, CoilSize size) {
        this(name, strip, size, Crops.NONE, OptionalDouble.empty(), "", Optional.empty());
    }

    /** The same with other crops. */
    public Coil withCrops(double head, double tail) {
        return new Coil(name, strip, size, new Crops(head, tail), processSpeed, product, core);
    }

    /** The same with a rated process speed of its own (m/s), {@code > 0}. */
    public Coil withProcessSpeed(double speed) {
        return with(size, OptionalDouble.of(speed));
    }

    /** The same as material of {@code made}. */
    public Coil withProduct(String made) {
        return new Coil(name, strip, size, crops, processSpeed, made, core);
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

    /** The same with an inner diameter (m), {@code > 0}, beside its length or mass; how densely it is wound stays. */
    public Coil withInnerDiameter(double diameter) {
        return withCore(new Core(diameter, windingFactor()));
    }

    /** The same with an inner diameter and a winding factor beside its length or mass. */
    public Coil withCore(Core other) {
        return new Coil(name, strip, size, crops, processSpeed, product, Optional.of(other));
    }

    private Coil with(CoilSize otherSize, OptionalDouble speed) {
        return new Coil(name, strip, otherSize, crops, speed, product, core);
    }

    /** Strip thickness (m). */
    public double thickness() {
        return strip.thickness();
    }

    /** Strip width (m). */
    public double width() {
        return strip.width();
    }

    /** Density (kg/m3). */
    public double density() {
        return strip.density();
    }

    /** Scrap cut off the head at a joint (m). */
    public double headCrop() {
        return crops.head();
    }

    /** Scrap cut off the tail at a joint (m). */
    public double tailCrop() {
        return crops.tail();
    }

    /** Inner diameter (m) where it is given beside a length or a mass; empty otherwise. */
    public OptionalDouble innerDiameter() {
        return core.map(given -> OptionalDouble.of(given.diameter())).orElse(OptionalDouble.empty());
    }

    /** Diameter of the core (m), whichever way it is given; empty where it is not. */
    public OptionalDouble coreDiameter() {
        return size instanceof CoilSize.ByDiameters round ? OptionalDouble.of(round.inner()) : innerDiameter();
    }

    /** Share of the wound section that is strip, in (0, 1]; 1 where it is not given. */
    public double windingFactor() {
        return size instanceof CoilSize.ByDiameters round
                ? round.windingFactor()
                : core.map(Core::windingFactor).orElse(1.0);
    }

    /** Outer diameter (m) of a coil of mean length; empty where no inner diameter is given. */
    public OptionalDouble outerDiameter() {
        if (size instanceof CoilSize.ByDiameters round) {
            return OptionalDouble.of(round.outer());
        }
        return core.map(given -> OptionalDouble.of(
                        CoilSize.outerDiameter(given.diameter(), thickness(), meanLength(), given.windingFactor())))
                .orElse(OptionalDouble.empty());
    }

    /** Mass of a metre of strip (kg/m). */
    public double massPerMetre() {
        return density() * width() * thickness();
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
        return length(p) - crops.head() - crops.tail();
    }

    /** Mean length of the whole coil (m). */
    public double meanLength() {
        return size.meanLength(this);
    }

    /** Mean length left after both crops (m). */
    public double meanUsableLength() {
        return meanLength() - crops.head() - crops.tail();
    }
}
