package runthrough.scenario.coil;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilTable;
import runthrough.plant.Distribution;
import runthrough.quantity.Unit;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.PlainNumber;
import runthrough.scenario.source.CsvRows;
import runthrough.scenario.source.TextFile;

/**
 * The short way to read a row of a schedule: like one that was read before, in which the same cells were filled, but for what
 * the cells say. What is unusual is not judged here.
 *
 * @param columns of the schedule
 * @param filled which cells are filled
 * @param like the coil that was read before
 */
record ScheduleRow(List<ScheduleColumn> columns, Filled filled, Coil like) {

    /** Plain digits with a decimal point; a sign or an exponent is left to the long way. */
    private static final int MOST_DIGITS = 15;

    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** Which cells of a row are filled. */
    record Filled(BitSet cells) {
        static Filled of(CsvRows rows) {
            BitSet cells = new BitSet(rows.cells());
            for (int i = 0; i < rows.cells(); i++) {
                cells.set(i, !rows.cell(i).isBlank());
            }
            return new Filled(cells);
        }
    }

    /** The coil of the present row, which is coil {@code index} from 0; empty when the long way must be gone. */
    Optional<Coil> coil(CsvRows rows, int index) {
        Draft draft = new Draft(like, CoilTable.nameByPlace(index));
        for (int i = filled.cells().nextSetBit(0); i >= 0; i = filled.cells().nextSetBit(i + 1)) {
            ScheduleColumn column = columns.get(i);
            boolean taken = column.isText()
                    ? draft.text(column.key(), rows.cell(i).strip())
                    : draft.number(column.key(), value(column, rows.number(i)));
            if (!taken) {
                return Optional.empty();
            }
        }
        return draft.coil();
    }

    /** In SI; NaN for what is not taken in the short way. */
    private static double value(ScheduleColumn column, String text) {
        double number = plain(text);
        double si = column.unit().isEmpty()
                ? number
                : Unit.bySymbol(column.unit()).orElseThrow().toSi(number);
        return isTaken(column.key(), si) ? si : Double.NaN;
    }

    private static boolean isTaken(Key<?> key, double si) {
        if (key.shape() instanceof Amount amount) {
            return amount.takes(si);
        } else if (key.shape() instanceof DistributionShape distribution) {
            return new Amount(distribution.dimension(), distribution.range()).takes(si);
        }
        return key.shape() instanceof PlainNumber plain && plain.takes(si);
    }

    /** Of at most 15 digits: a whole number below 2^53 over a power of ten, which one division rounds correctly. */
    private static double plain(String text) {
        long digits = 0;
        int point = -1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '.' && point < 0 && i > 0) {
                point = i;
            } else if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
            } else {
                return Double.NaN;
            }
        }
        int count = text.length() - (point < 0 ? 0 : 1);
        boolean isShort = count >= 1 && count <= MOST_DIGITS;
        return isShort ? digits / POWERS[point < 0 ? 0 : text.length() - 1 - point] : Double.NaN;
    }

    /** A coil in the making. */
    private static final class Draft {
        private final Coil like;
        private String name;
        private String product;
        private double thickness;
        private double width;
        private double density;
        private double extent = Double.NaN;
        private double inner = Double.NaN;
        private double winding = Double.NaN;
        private double headCrop;
        private double tailCrop;
        private OptionalDouble speed;
        private final boolean isRound;

        Draft(Coil like, String name) {
            this.like = like;
            this.name = name;
            product = like.product();
            thickness = like.thickness();
            width = like.width();
            density = like.density();
            headCrop = like.headCrop();
            tailCrop = like.tailCrop();
            speed = like.processSpeed();
            isRound = like.size() instanceof CoilSize.ByDiameters;
        }

        @SuppressWarnings("ReferenceEquality") // keys are constants, each there once
        boolean text(Key<?> key, String text) {
            if (key == CoilKeys.NAME) {
                name = text;
            } else {
                product = text;
            }
            // Of several lines one is made where the row is read in full.
            return text.length() <= runthrough.scenario.grammar.Text.LONGEST && TextFile.isOneLine(text);
        }

        @SuppressWarnings("ReferenceEquality") // keys are constants, each there once
        boolean number(Key<?> key, double value) {
            if (key == CoilKeys.THICKNESS) {
                thickness = value;
            } else if (key == CoilKeys.WIDTH) {
                width = value;
            } else if (key == CoilKeys.DENSITY) {
                density = value;
            } else if (key == CoilKeys.LENGTH || key == CoilKeys.MASS || key == CoilKeys.OUTER) {
                extent = value;
            } else if (key == CoilKeys.INNER) {
                inner = value;
            } else if (key == CoilKeys.WINDING_FACTOR) {
                winding = value;
            } else if (key == CoilKeys.HEAD_CROP) {
                headCrop = value;
            } else if (key == CoilKeys.TAIL_CROP) {
                tailCrop = value;
            } else if (key == CoilKeys.PROCESS_SPEED) {
                speed = OptionalDouble.of(value);
            } else {
                return false;
            }
            return !Double.isNaN(value);
        }

        Optional<Coil> coil() {
            return size().map(size -> new Coil(
                    name,
                    new Coil.Strip(thickness, width, density),
                    size,
                    new Coil.Crops(headCrop, tailCrop),
                    speed,
                    product,
                    core()));
        }

        /** Beside a length or a mass. */
        private Optional<Coil.Core> core() {
            double diameter = Double.isNaN(inner) ? like.innerDiameter().orElse(Double.NaN) : inner;
            if (isRound || Double.isNaN(diameter)) {
                return Optional.empty();
            }
            return Optional.of(new Coil.Core(diameter, Double.isNaN(winding) ? like.windingFactor() : winding));
        }

        private Optional<CoilSize> size() {
            if (like.size() instanceof CoilSize.ByDiameters round) {
                double outside = Double.isNaN(extent) ? round.outer() : extent;
                double inside = Double.isNaN(inner) ? round.inner() : inner;
                double factor = Double.isNaN(winding) ? round.windingFactor() : winding;
                return outside > inside
                        ? Optional.of(new CoilSize.ByDiameters(outside, inside, factor))
                        : Optional.empty();
            } else if (Double.isNaN(extent)) {
                return Optional.of(like.size());
            }
            return Optional.of(
                    like.size() instanceof CoilSize.ByMass
                            ? new CoilSize.ByMass(Distribution.constant(extent))
                            : new CoilSize.ByLength(Distribution.constant(extent)));
        }
    }
}
