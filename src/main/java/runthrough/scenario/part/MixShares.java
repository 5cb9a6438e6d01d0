package runthrough.scenario.part;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;

/** The shares of a mix, in percent, one of which is changed: the others keep their proportions and make room for it. */
public final class MixShares {
    private static final Pattern WEIGHT = Pattern.compile("(.*\\[)\\d{1,9}]\\.weight");
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    /** After the point of a percentage that was worked out. */
    private static final int PLACES = 4;

    private MixShares() {}

    /** Whether {@code path} is of a weight in a mix. */
    public static boolean isWeight(String path) {
        return WEIGHT.matcher(path).matches();
    }

    /**
     * What has to be written beside {@code value} at {@code path}, by path: nothing, unless that is a share of a mix.
     *
     * @param shares all shares of the scenario (0 to 1) by their paths
     */
    public static Map<String, String> beside(String path, String value, Map<String, Double> shares) {
        Matcher weight = WEIGHT.matcher(path);
        if (!weight.matches()
                || !(QuantityParser.read(value, Dimension.SHARE) instanceof Quantity share)
                || share.si() <= 0) {
            return Map.of();
        }
        Map<String, Double> others = new LinkedHashMap<>(shares);
        others.keySet().removeIf(other -> {
            Matcher own = WEIGHT.matcher(other);
            return other.equals(path) || !own.matches() || !own.group(1).equals(weight.group(1));
        });
        return filled(ALL.subtract(BigDecimal.valueOf(share.value())), others);
    }

    /** {@code others} made as large as {@code rest} (%) together: to the last digit, so the last of them takes what rounding left. */
    private static Map<String, String> filled(BigDecimal rest, Map<String, Double> others) {
        double sum = others.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, String> written = new LinkedHashMap<>();
        if (rest.signum() <= 0) {
            return written;
        }
        BigDecimal left = rest;
        for (Map.Entry<String, Double> other : others.entrySet()) {
            boolean isLast = written.size() == others.size() - 1;
            BigDecimal own = isLast
                    ? left
                    : rest.multiply(BigDecimal.valueOf(other.getValue() / sum), MathContext.DECIMAL64)
                            .setScale(PLACES, RoundingMode.HALF_EVEN);
            left = left.subtract(own);
            written.put(other.getKey(), own.stripTrailingZeros().toPlainString() + " %");
        }
        return written;
    }
}
