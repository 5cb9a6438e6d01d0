package runthrough.report.described;

import runthrough.plant.Distribution;
import runthrough.plant.Distributions;
import runthrough.quantity.Kind;

/** The distribution of a random quantity in words. */
public final class DistributionText {
    private DistributionText() {}

    public static String of(Distribution distribution, Kind kind, InputTexts texts) {
        if (distribution instanceof Distributions.Constant constant) {
            return texts.text(kind, constant.value());
        } else if (distribution instanceof Distributions.Uniform uniform) {
            return "uniform, " + texts.text(kind, uniform.min()) + " to " + texts.text(kind, uniform.max());
        } else if (distribution instanceof Distributions.Triangular triangular) {
            return "triangular, " + texts.text(kind, triangular.min()) + ", most often "
                    + texts.text(kind, triangular.mode()) + ", to " + texts.text(kind, triangular.max());
        } else if (distribution instanceof Distributions.Normal normal) {
            return "normal, " + spread(normal.parentMean(), normal.parentSd(), kind, texts);
        } else if (distribution instanceof Distributions.Lognormal lognormal) {
            return "lognormal, " + spread(lognormal.mean(), lognormal.sd(), kind, texts);
        } else if (distribution instanceof Distributions.Gamma gamma) {
            return "gamma, " + spread(gamma.mean(), gamma.sd(), kind, texts);
        } else if (distribution instanceof Distributions.Weibull weibull) {
            return "Weibull, shape " + texts.plain(weibull.shape()).text() + ", scale "
                    + texts.text(kind, weibull.scale());
        } else if (distribution instanceof Distributions.Exponential exponential) {
            return "exponential, mean " + texts.text(kind, exponential.mean());
        } else if (distribution instanceof Distributions.Observed observed) {
            return "measured, " + observed.values().size() + " values, "
                    + spread(observed.mean(), observed.sd(), kind, texts);
        } else if (distribution instanceof Distributions.Shifted shifted) {
            String sign = shifted.shift() < 0 ? ", less " : ", plus ";
            return of(shifted.parent(), kind, texts) + sign + texts.text(kind, Math.abs(shifted.shift()));
        }
        if (distribution instanceof Distributions.Scaled scaled) {
            return scaled.isConstant()
                    ? texts.text(kind, scaled.mean())
                    : of(scaled.parent(), kind, texts) + ", times "
                            + texts.plain(scaled.factor()).text();
        }
        throw new IllegalArgumentException("a distribution without words: " + distribution);
    }

    private static String spread(double mean, double sd, Kind kind, InputTexts texts) {
        return "mean " + texts.text(kind, mean) + ", standard deviation " + texts.text(kind, sd);
    }
}
