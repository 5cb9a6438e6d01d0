package runthrough.plant;

/**
 * What fixes a coil's length: exactly one of length, mass, or outer diameter with inner diameter.
 *
 * <p>Rules COIL-1, COIL-6.
 */
public sealed interface CoilSize {

    /** Length (m) of a coil of this size when it is drawn at {@code p} in (0, 1). */
    double length(Coil coil, double p);

    /** Mean length (m). */
    double meanLength(Coil coil);

    /** A size that gives coils {@code factor} times as long, {@code factor > 0}. */
    CoilSize scaled(double factor);

    /** Whether coils of this size are all alike. */
    boolean isConstant();

    /**
     * Outer diameter (m) of {@code length} (m) of strip on a core: {@code L = k pi (Do^2 - Di^2) / (4 t)}, solved for Do.
     *
     * @param inner diameter of the core (m), {@code > 0}
     * @param thickness of the strip (m), {@code > 0}
     * @param windingFactor k, in (0, 1]
     */
    static double outerDiameter(double inner, double thickness, double length, double windingFactor) {
        return Math.sqrt(inner * inner + 4 * thickness * length / (Math.PI * windingFactor));
    }

    /** Length given directly (m). */
    record ByLength(Distribution length) implements CoilSize {
        @Override
        public ByLength scaled(double factor) {
            return new ByLength(length.scaled(factor));
        }

        @Override
        public double length(Coil coil, double p) {
            return length.quantile(p);
        }

        @Override
        public double meanLength(Coil coil) {
            return length.mean();
        }

        @Override
        public boolean isConstant() {
            return length.isConstant();
        }
    }

    /** Mass given (kg): {@code m = rho w t L}. */
    record ByMass(Distribution mass) implements CoilSize {
        @Override
        public ByMass scaled(double factor) {
            return new ByMass(mass.scaled(factor));
        }

        @Override
        public double length(Coil coil, double p) {
            return mass.quantile(p) / coil.massPerMetre();
        }

        @Override
        public double meanLength(Coil coil) {
            return mass.mean() / coil.massPerMetre();
        }

        @Override
        public boolean isConstant() {
            return mass.isConstant();
        }
    }

    /**
     * Diameters given: {@code L = k pi (Do^2 - Di^2) / (4 t)}.
     *
     * @param outer outer diameter (m)
     * @param inner inner diameter (m), {@code 0 < inner < outer}
     * @param windingFactor share of the wound section that is strip, in (0, 1]
     */
    record ByDiameters(double outer, double inner, double windingFactor) implements CoilSize {
        public ByDiameters {
            Ranges.of("coil")
                    .finitePositive("inner diameter", inner, Ranges.Of.LENGTH)
                    .above(inner, "inner diameter", "outer diameter", outer, Ranges.Of.LENGTH)
                    .positiveShare("winding factor", windingFactor)
                    .refuse();
        }

        /** The inner diameter is that of the mandrel and stays. */
        @Override
        public ByDiameters scaled(double factor) {
            double section = (outer - inner) * (outer + inner) * factor;
            return new ByDiameters(Math.sqrt(inner * inner + section), inner, windingFactor);
        }

        @Override
        public double length(Coil coil, double p) {
            return meanLength(coil);
        }

        @Override
        public double meanLength(Coil coil) {
            return windingFactor * Math.PI * (outer - inner) * (outer + inner) / (4 * coil.thickness());
        }

        @Override
        public boolean isConstant() {
            return true;
        }
    }
}
