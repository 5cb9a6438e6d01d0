package runthrough.plant;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/** What may differ between the two coils of a coil change. */
public enum CoilDifference {
    WIDTH,
    THICKNESS,
    /** The name of the product; coils without one are alike in it. */
    PRODUCT;

    /** Every set of differences, by its bits, so that none is made for each coil change. */
    private static final List<Set<CoilDifference>> SETS = IntStream.range(0, 1 << values().length)
            .mapToObj(CoilDifference::ofBits)
            .toList();

    private static Set<CoilDifference> ofBits(int bits) {
        Set<CoilDifference> set = EnumSet.noneOf(CoilDifference.class);
        for (CoilDifference one : values()) {
            if ((bits >> one.ordinal() & 1) == 1) {
                set.add(one);
            }
        }
        return Collections.unmodifiableSet(set);
    }

    /** How it is called. */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All that differs between two coils. */
    static Set<CoilDifference> between(Coil one, Coil other) {
        int bits = (one.width() == other.width() ? 0 : 1 << WIDTH.ordinal())
                | (one.thickness() == other.thickness() ? 0 : 1 << THICKNESS.ordinal())
                | (one.product().equals(other.product()) ? 0 : 1 << PRODUCT.ordinal());
        return SETS.get(bits);
    }
}
