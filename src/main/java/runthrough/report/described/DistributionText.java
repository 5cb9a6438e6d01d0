package runthrough.report.described;

import runthrough.plant.BoundedDistributions;
import runthrough.plant.DerivedDistributions;
import runthrough.plant.Distribution;
import runthrough.plant.LifetimeDistributions;
import runthrough.plant.NormalDistributions;
import runthrough.plant.ObservedDistribution;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;

/** The distribution of a random quantity in words. */
public final class DistributionText {
    private DistributionText() {}

    public static String of(Distribution distribution, Kind kind, InputTexts texts) {
        if (distribution instanceof BoundedDistributions.Constant constant) {
            return texts.text(kind, constant.value());
        } else if (distribution instanceof BoundedDistributions.Uniform uniform) {
            Notation notation = texts.notation(kind, uniform.max());
            return "uniform, " + notation.number(uniform.min()) + " to " + notation.text(uniform.max());
        } else if (distribution instanceof BoundedDistributions.Triangular triangular) {
            Notation notation = texts.notation(kind, triangular.max());
            return "triangular, " + notation.number(triangular.min()) + " to " + notation.text(triangular.max())
                    + ", most often " + notation.text(triangular.mode());
        } else if (distribution instanceof NormalDistributions.Normal normal) {
            return "normal, " + spread(normal.parentMean(), normal.parentSd(), kind, texts);
        } else if (distribution instanceof NormalDistributions.Lognormal lognormal) {
            return "lognormal, " + spread(lognormal.mean(), lognormal.sd(), kind, texts);
        } else if (distribution instanceof LifetimeDistributions.Gamma gamma) {
            return "gamma, " + spread(gamma.mean(), gamma.sd(), kind, texts);
        } else if (distribution instanceof LifetimeDistributions.Weibull weibull) {
            return "Weibull, shape " + texts.plain(weibull.shape()).text() + ", scale "
                    + texts.text(kind, weibull.scale());
        } else if (distribution instanceof LifetimeDistributions.Exponential exponential) {
            return "exponential, mean " + texts.text(kind, exponential.mean());
        } else if (distribution instanceof ObservedDistribution observed) {
            return "measured, " + observed.values().size() + " values, "
                    + spread(observed.mean(), observed.sd(), kind, new InputTexts(texts.system(), Rounding.CERTAIN));
        } else if (distribution instanceof DerivedDistributions.Shifted shifted) {
            String sign = shifted.shift() < 0 ? ", less " : ", plus ";
            return of(shifted.parent(), kind, texts) + sign + texts.text(kind, Math.abs(shifted.shift()));
        }
        if (distribution instanceof DerivedDistributions.Scaled scaled) {
            return scaled.isConstant()
                    ? texts.text(kind, scaled.mean())
                    : of(scaled.parent(), kind, texts) + ", times "
                            + texts.plain(scaled.factor()).text();
        }
        throw new IllegalArgumentException("a distribution without words: " + distribution);
    }

    private static String spread(double mean, double sd, Kind kind, InputTexts texts) {
        Notation notation = texts.notation(kind, mean);
        return "mean " + notation.text(mean) + ", standard deviation " + notation.text(sd);
    }
}
