package runthrough.report;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import runthrough.plant.Distribution;
import runthrough.plant.Distributions;
import runthrough.quantity.Numbers;

/** Laws of times as a scenario has them, to six digits. */
public final class LawYaml {
    private static final int DIGITS = 6;
    private static final int FEW_DIGITS = 3;

    private final int digits;

    private LawYaml(int digits) {
        this.digits = digits;
    }

    /** What stands behind the name of an element: {@code {lognormal: [20 s, 6 s], shift: 3 s}}, or a time alone. */
    static String of(Distribution law) {
        return new LawYaml(DIGITS).text(law);
    }

    /** The same to fewer digits, to be read rather than used. */
    static String brief(Distribution law) {
        return new LawYaml(FEW_DIGITS).text(law);
    }

    /** The keys of the law with their values as text, in order: that of its kind, and {@code shift} where it is shifted. */
    public static Map<String, String> keys(Distribution law) {
        return new LawYaml(DIGITS).all(law);
    }

    private String text(Distribution law) {
        return law instanceof Distributions.Constant constant
                ? seconds(constant.value())
                : all(law).entrySet().stream()
                        .map(entry -> entry.getKey() + ": " + entry.getValue())
                        .collect(Collectors.joining(", ", "{", "}"));
    }

    private Map<String, String> all(Distribution law) {
        Map<String, String> keys = new LinkedHashMap<>();
        if (law instanceof Distributions.Shifted shifted) {
            put(keys, shifted.parent());
            keys.put("shift", seconds(shifted.shift()));
        } else {
            put(keys, law);
        }
        return keys;
    }

    private void put(Map<String, String> keys, Distribution law) {
        if (law instanceof Distributions.Constant constant) {
            keys.put("constant", seconds(constant.value()));
        } else if (law instanceof Distributions.Triangular triangular) {
            keys.put("triangular", list(triangular.min(), triangular.mode(), triangular.max()));
        } else if (law instanceof Distributions.Normal normal) {
            keys.put("normal", list(normal.parentMean(), normal.parentSd()));
        } else if (law instanceof Distributions.Lognormal lognormal) {
            keys.put("lognormal", list(lognormal.mean(), lognormal.sd()));
        } else if (law instanceof Distributions.Gamma gamma) {
            keys.put("gamma", list(gamma.mean(), gamma.sd()));
        } else if (law instanceof Distributions.Weibull weibull) {
            keys.put("weibull", "[" + Numbers.text(weibull.shape(), digits) + ", " + seconds(weibull.scale()) + "]");
        } else if (law instanceof Distributions.Exponential exponential) {
            keys.put("exponential", seconds(exponential.mean()));
        } else if (law instanceof Distributions.Observed observed) {
            keys.put(
                    "observed",
                    list(observed.values().stream()
                            .mapToDouble(Double::doubleValue)
                            .toArray()));
        } else {
            throw new IllegalArgumentException("no law that is fitted to times: " + law);
        }
    }

    private String list(double... times) {
        return Arrays.stream(times).mapToObj(this::seconds).collect(Collectors.joining(", ", "[", "]"));
    }

    private String seconds(double time) {
        return Numbers.text(time, digits) + " s";
    }
}
