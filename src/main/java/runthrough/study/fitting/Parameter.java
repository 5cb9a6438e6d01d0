package runthrough.study.fitting;

import java.util.ArrayList;
import java.util.List;
import runthrough.plant.Distribution;
import runthrough.plant.Distributions;

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
        all.add(new Parameter("mean", true, true, fitted.distribution().mean()));
        all.add(new Parameter(
                "standard deviation", true, true, fitted.distribution().sd()));
        Distribution distribution = fitted.unshifted();
        if (distribution instanceof Distributions.Weibull weibull) {
            all.add(new Parameter("shape", false, true, weibull.shape()));
            all.add(new Parameter("scale", true, true, weibull.scale()));
        } else if (distribution instanceof Distributions.Triangular triangular) {
            all.add(new Parameter("least", true, false, triangular.min()));
            all.add(new Parameter("most likely", true, false, triangular.mode()));
            all.add(new Parameter("greatest", true, false, triangular.max()));
        }
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
