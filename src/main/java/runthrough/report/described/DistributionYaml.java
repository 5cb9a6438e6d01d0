package runthrough.report.described;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import runthrough.plant.BoundedDistributions;
import runthrough.plant.DerivedDistributions;
import runthrough.plant.Distribution;
import runthrough.plant.LifetimeDistributions;
import runthrough.plant.NormalDistributions;
import runthrough.plant.ObservedDistribution;
import runthrough.quantity.Numbers;

/** Distributions of times as a scenario has them, to six digits. */
public final class DistributionYaml {
    private static final int DIGITS = 6;
    private static final int FEW_DIGITS = 3;

    private final int digits;

    private DistributionYaml(int digits) {
        this.digits = digits;
    }

    /** What stands behind the name of an element: {@code {lognormal: [20 s, 6 s], shift: 3 s}}, or a time alone. */
    public static String of(Distribution distribution) {
        return new DistributionYaml(DIGITS).text(distribution);
    }

    /** The same to fewer digits, to be read rather than used. */
    public static String request(Distribution distribution) {
        return new DistributionYaml(FEW_DIGITS).text(distribution);
    }

    /** The keys of the distribution with their values as text, in order: that of its kind, and {@code shift} where it is shifted. */
    public static Map<String, String> keys(Distribution distribution) {
        return new DistributionYaml(DIGITS).all(distribution);
    }

    private String text(Distribution distribution) {
        return distribution instanceof BoundedDistributions.Constant constant
                ? seconds(constant.value())
                : all(distribution).entrySet().stream()
                        .map(entry -> entry.getKey() + ": " + entry.getValue())
                        .collect(Collectors.joining(", ", "{", "}"));
    }

    private Map<String, String> all(Distribution distribution) {
        Map<String, String> keys = new LinkedHashMap<>();
        if (distribution instanceof DerivedDistributions.Shifted shifted) {
            put(keys, shifted.parent());
            keys.put("shift", seconds(shifted.shift()));
        } else {
            put(keys, distribution);
        }
        return keys;
    }

    private void put(Map<String, String> keys, Distribution distribution) {
        if (distribution instanceof BoundedDistributions.Constant constant) {
            keys.put("constant", seconds(constant.value()));
        } else if (distribution instanceof BoundedDistributions.Triangular triangular) {
            keys.put("triangular", list(triangular.min(), triangular.mode(), triangular.max()));
        } else if (distribution instanceof NormalDistributions.Normal normal) {
            keys.put("normal", list(normal.parentMean(), normal.parentSd()));
        } else if (distribution instanceof NormalDistributions.Lognormal lognormal) {
            keys.put("lognormal", list(lognormal.mean(), lognormal.sd()));
        } else if (distribution instanceof LifetimeDistributions.Gamma gamma) {
            keys.put("gamma", list(gamma.mean(), gamma.sd()));
        } else if (distribution instanceof LifetimeDistributions.Weibull weibull) {
            keys.put("weibull", "[" + Numbers.text(weibull.shape(), digits) + ", " + seconds(weibull.scale()) + "]");
        } else if (distribution instanceof LifetimeDistributions.Exponential exponential) {
            keys.put("exponential", seconds(exponential.mean()));
        } else if (distribution instanceof ObservedDistribution observed) {
            keys.put(
                    "observed",
                    list(observed.values().stream()
                            .mapToDouble(Double::doubleValue)
                            .toArray()));
        } else {
            throw new IllegalArgumentException("no distribution that is fitted to times: " + distribution);
        }
    }

    private String list(double... times) {
        return Arrays.stream(times).mapToObj(this::seconds).collect(Collectors.joining(", ", "[", "]"));
    }

    private String seconds(double time) {
        return Numbers.text(time, digits) + " s";
    }
}
