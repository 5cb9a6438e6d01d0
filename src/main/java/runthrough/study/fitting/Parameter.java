package runthrough.study.fitting;

import java.util.ArrayList;
import java.util.List;
import runthrough.plant.Distribution;

/**
 * A number that describes a fitted distribution.
 *
 * @param name what it is
 * @param isTime whether it is a time (s), not a plain number
 * @param isPositive whether it is more than 0 by its nature, so that its error is a factor rather than a difference
 * @param value as fitted
 */
record Parameter(String name, boolean isTime, boolean isPositive, double value) {

    /** Those of {@code fitted}: always as many in the same order for distributions of the same kind. */
    static List<Parameter> of(FittedDistribution fitted) {
        List<Parameter> all = new ArrayList<>();
        Distribution distribution = fitted.distribution();
        all.add(new Parameter("mean", true, true, distribution.mean()));
        all.add(new Parameter("standard deviation", true, true, distribution.sd()));
        all.addAll(fitted.numbers().parameters());
        if (fitted.isShifted()) {
            all.add(new Parameter("shift", true, false, fitted.shift()));
        }
        return all;
    }

    /** On the scale on which its error is about the same whatever its value. */
    double onScale() {
        return isPositive ? Math.log(value) : value;
    }

    /** Back from that scale. */
    double offScale(double scaled) {
        return isPositive ? Math.exp(scaled) : scaled;
    }
}
