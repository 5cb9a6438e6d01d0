package runthrough.plant;

import java.util.List;

/** How fast a torch, wheel or shear travels across the strip. Rules CHANGE-13, CHECK-31. */
public sealed interface TravelSpeed {

    /** The speed (m/s) at a joint whose thicker strip has {@code thickness} (m). */
    double at(double thickness);

    /** The speed at which the travel takes {@code factor} times as long, {@code > 0}. */
    TravelSpeed slower(double factor);

    /** The same for every strip. */
    static TravelSpeed of(double speed) {
        return new Constant(speed);
    }

    /**
     * The same for every strip.
     *
     * @param speed (m/s), {@code > 0}
     */
    record Constant(double speed) implements TravelSpeed {
        public Constant {
            Ranges.of("").finitePositive("travel speed", speed, Ranges.Of.SPEED).refuse();
        }

        @Override
        public double at(double thickness) {
            return speed;
        }

        @Override
        public Constant slower(double factor) {
            return new Constant(speed / factor);
        }
    }

    /**
     * By strip thickness: linear between the rows, and outside of them as in the nearest.
     *
     * @param rows at least one, each thicker than the one before
     */
    record ByThickness(List<Row> rows) implements TravelSpeed {
        public ByThickness {
            rows = List.copyOf(rows);
            if (rows.isEmpty()) {
                throw new IllegalArgumentException("a table of travel speeds without rows; give at least one");
            }
            for (int i = 1; i < rows.size(); i++) {
                double before = rows.get(i - 1).thickness();
                double thickness = rows.get(i).thickness();
                if (!(thickness > before)) {
                    throw new IllegalArgumentException("thickness = " + thickness
                            + " m in a table of travel speeds; must be more than in the row before, " + before + " m");
                }
            }
        }

        @Override
        public double at(double thickness) {
            if (thickness <= thinnest()) {
                return rows.get(0).speed();
            }
            for (int i = 1; i < rows.size(); i++) {
                Row above = rows.get(i);
                if (thickness < above.thickness()) {
                    Row below = rows.get(i - 1);
                    double share = (thickness - below.thickness()) / (above.thickness() - below.thickness());
                    return below.speed() + share * (above.speed() - below.speed());
                }
            }
            return rows.get(rows.size() - 1).speed();
        }

        /** Thickness (m) of the first row. */
        public double thinnest() {
            return rows.get(0).thickness();
        }

        /** Thickness (m) of the last row. */
        public double thickest() {
            return rows.get(rows.size() - 1).thickness();
        }

        @Override
        public ByThickness slower(double factor) {
            return new ByThickness(rows.stream()
                    .map(row -> new Row(row.thickness(), row.speed() / factor))
                    .toList());
        }
    }

    /**
     * A row of a table of travel speeds.
     *
     * @param thickness of the strip (m), {@code > 0}
     * @param speed (m/s), {@code > 0}
     */
    record Row(double thickness, double speed) {
        public Row {
            Ranges.of("")
                    .finitePositive("thickness", thickness, Ranges.Of.LENGTH)
                    .finitePositive("travel speed", speed, Ranges.Of.SPEED)
                    .refuse();
        }
    }
}
