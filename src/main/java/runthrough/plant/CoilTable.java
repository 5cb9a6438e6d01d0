package runthrough.plant;

import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.RandomAccess;

/**
 * A long list of coils held by columns, so that a schedule of a million coils takes some tens of bytes for each: a column in
 * which all values are alike takes none. A coil is made when it is asked for. Does not change once it is built.
 */
public final class CoilTable extends AbstractList<Coil> implements RandomAccess {
    /** Of so many coils and fewer, objects are held as they are. */
    private static final int FEW = 10_000;

    private final Builder columns;
    private final int size;

    private CoilTable(Builder columns) {
        this.columns = columns;
        this.size = columns.size;
    }

    @Override
    public Coil get(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException(index + " of " + size + " coils");
        }
        return columns.coil(index);
    }

    @Override
    public int size() {
        return size;
    }

    /** Whether the coils of each kind are all alike. */
    boolean isConstant() {
        return columns.shared.stream().allMatch(CoilSize::isConstant);
    }

    /** How a coil is called that has no name of its own: by its place, from 0. */
    public static String nameByPlace(int index) {
        return "coil " + (index + 1);
    }

    /** Takes up coils, one after another. */
    public static final class Builder {
        private static final int BY_LENGTH = -1;
        private static final int BY_MASS = -2;
        private static final int BY_DIAMETERS = -3;

        private final Column thickness = new Column();
        private final Column width = new Column();
        private final Column density = new Column();
        /** What gives the size: one of the above, or the place of a distribution among those that several coils share. */
        private final Column form = new Column();
        /** Length (m), mass (kg) or outer diameter (m). */
        private final Column extent = new Column();

        private final Column inner = new Column();
        private final Column winding = new Column();
        private final Column headCrop = new Column();
        private final Column tailCrop = new Column();
        /** NaN for the line's own. */
        private final Column speed = new Column();
        /** Place among the names of products. */
        private final Column product = new Column();

        private final List<CoilSize> shared = new ArrayList<>();
        private final List<String> products = new ArrayList<>();
        private final Map<String, Integer> placeOfProduct = new HashMap<>();
        private byte[] names = new byte[64];
        private int[] nameEnds = new int[0];
        private int size;

        /** How many coils so far. */
        public int size() {
            return size;
        }

        /** Takes up the next coil. */
        public void add(Coil coil) {
            thickness.add(size, coil.thickness());
            width.add(size, coil.width());
            density.add(size, coil.density());
            addSize(coil.size(), coil.innerDiameter().orElse(0), coil.windingFactor());
            headCrop.add(size, coil.headCrop());
            tailCrop.add(size, coil.tailCrop());
            speed.add(size, coil.processSpeed().orElse(Double.NaN));
            product.add(size, placeOfProduct.computeIfAbsent(coil.product(), name -> {
                products.add(name);
                return products.size() - 1;
            }));
            addName(coil.name());
            size++;
        }

        /**
         * @param beside inner diameter beside a length or mass (m); 0 for none
         * @param factor winding factor, 1 where it is not given
         */
        private void addSize(CoilSize given, double beside, double factor) {
            if (given instanceof CoilSize.ByLength byLength && byLength.isConstant()) {
                addSize(BY_LENGTH, byLength.length().lowest(), beside, factor);
            } else if (given instanceof CoilSize.ByMass byMass && byMass.isConstant()) {
                addSize(BY_MASS, byMass.mass().lowest(), beside, factor);
            } else if (given instanceof CoilSize.ByDiameters round) {
                addSize(BY_DIAMETERS, round.outer(), round.inner(), round.windingFactor());
            } else {
                if (!shared.contains(given)) {
                    shared.add(given);
                }
                addSize(shared.indexOf(given), 0, beside, factor);
            }
        }

        private void addSize(int what, double value, double innerDiameter, double windingFactor) {
            form.add(size, what);
            extent.add(size, value);
            inner.add(size, innerDiameter);
            winding.add(size, windingFactor);
        }

        /** A name that only says the place is not kept. */
        private void addName(String name) {
            boolean isPlace = name.equals(nameByPlace(size));
            if (isPlace && nameEnds.length == 0) {
                return;
            }
            int end = size == 0 || nameEnds.length == 0 ? 0 : nameEnds[size - 1];
            if (size >= nameEnds.length) {
                nameEnds = Arrays.copyOf(nameEnds, Column.grown(size));
            }
            if (!isPlace) {
                byte[] text = name.getBytes(StandardCharsets.UTF_8);
                if (end + text.length > names.length) {
                    names = Arrays.copyOf(names, Column.grown(end + text.length));
                }
                System.arraycopy(text, 0, names, end, text.length);
                end += text.length;
            }
            nameEnds[size] = end;
        }

        /** The coils taken up; nothing may be added after. */
        public List<Coil> build() {
            CoilTable table = new CoilTable(this);
            return size <= FEW ? List.copyOf(table) : table;
        }

        private Coil coil(int index) {
            double own = speed.get(index);
            return new Coil(
                    name(index),
                    new Coil.Strip(thickness.get(index), width.get(index), density.get(index)),
                    size(index),
                    new Coil.Crops(headCrop.get(index), tailCrop.get(index)),
                    Double.isNaN(own) ? OptionalDouble.empty() : OptionalDouble.of(own),
                    products.get((int) product.get(index)),
                    beside(index));
        }

        private Optional<Coil.Core> beside(int index) {
            double diameter = inner.get(index);
            return form.get(index) == BY_DIAMETERS || diameter == 0
                    ? Optional.empty()
                    : Optional.of(new Coil.Core(diameter, winding.get(index)));
        }

        private String name(int index) {
            if (nameEnds.length == 0) {
                return nameByPlace(index);
            }
            int start = index == 0 ? 0 : nameEnds[index - 1];
            int length = nameEnds[index] - start;
            return length == 0 ? nameByPlace(index) : new String(names, start, length, StandardCharsets.UTF_8);
        }

        private CoilSize size(int index) {
            int what = (int) form.get(index);
            double value = extent.get(index);
            return switch (what) {
                case BY_LENGTH -> new CoilSize.ByLength(Distribution.constant(value));
                case BY_MASS -> new CoilSize.ByMass(Distribution.constant(value));
                case BY_DIAMETERS -> new CoilSize.ByDiameters(value, inner.get(index), winding.get(index));
                default -> shared.get(what);
            };
        }
    }

    /** Numbers one below the other; while all are alike only one is held. */
    private static final class Column {
        private double first;
        private double[] values = new double[0];

        void add(int size, double value) {
            if (size == 0) {
                first = value;
            } else if (values.length == 0) {
                if (Double.compare(value, first) != 0) {
                    values = new double[grown(size)];
                    Arrays.fill(values, 0, size, first);
                    values[size] = value;
                }
            } else {
                if (size == values.length) {
                    values = Arrays.copyOf(values, grown(size));
                }
                values[size] = value;
            }
        }

        double get(int index) {
            return values.length == 0 ? first : values[index];
        }

        /** Room for {@code needed} and half as many more. */
        static int grown(int needed) {
            return Math.max(64, needed + needed / 2 + 1);
        }
    }
}
