package runthrough.plant.check;

import java.util.function.DoublePredicate;

/** Where a distribution passes a value, found from its quantiles alone. */
final class Bisection {
    /** Enough halvings of [0, 1] to reach the spacing of doubles near 1; below, what is left is finer still. */
    private static final int HALVINGS = 60;

    private Bisection() {}

    /** The share of draws for which {@code holds}, when it holds for all below some share and for none above. */
    static double share(DoublePredicate holds) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
