package runthrough.plant;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What may differ between the two coils of a coil change. */
public enum CoilDifference {
    WIDTH,
    THICKNESS,
    /** The name of the product; coils without one are alike in it. */
    PRODUCT;

    /** How it is called. */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All that differs between two coils. */
    static Set<CoilDifference> between(Coil one, Coil other) {
        Set<CoilDifference> differences = EnumSet.noneOf(CoilDifference.class);
        if (one.width() != other.width()) {
            differences.add(WIDTH);
        }
        if (one.thickness() != other.thickness()) {
            differences.add(THICKNESS);
        }
        if (!one.product().equals(other.product())) {
            differences.add(PRODUCT);
        }
        return Collections.unmodifiableSet(differences);
    }
}
