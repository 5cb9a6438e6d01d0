package runthrough.scenario.part;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;

/** The shares of a mix, in percent, one of which is changed: the others keep their proportions and make room for it. */
public final class MixShares {
    /** Of a coil by its name, or by its number in the mix. */
    private static final Pattern WEIGHT = Pattern.compile("coils(?:\\.mix)?(?:\\[(\\d{1,9})]|\\..+)\\.weight");

    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    /** After the point of a percentage that was worked out: as few as leave each of them more than nothing. */
    private static final List<Integer> PLACES = List.of(4, 8, 12);

    private MixShares() {}

    /**
     * What has to be written beside {@code changes}, by path: nothing, unless one alone of them is of a share of a mix.
     *
     * @param changes values by their paths
     * @param shares all shares of the scenario (0 to 1) by their paths
     */
    public static Map<String, String> beside(
            List<Map.Entry<String, String>> changes, Supplier<Map<String, Double>> shares) {
        List<Map.Entry<String, String>> weights =
                changes.stream().filter(change -> isWeight(change.getKey())).toList();
        return weights.size() == 1
                ? beside(weights.get(0).getKey(), weights.get(0).getValue(), shares.get())
                : Map.of();
    }

    private static boolean isWeight(String path) {
        return WEIGHT.matcher(path).matches();
    }

    private static Map<String, String> beside(String path, String value, Map<String, Double> shares) {
        if (!(QuantityParser.read(value, Dimension.SHARE) instanceof Quantity share) || share.si() <= 0) {
            return Map.of();
        }
        Map<String, Double> others = new LinkedHashMap<>(shares);
        others.keySet().removeIf(other -> !isWeight(other));
        boolean isOfMix =
                others.remove(path) != null || others.remove(byNumber(path, List.copyOf(others.keySet()))) != null;
        return isOfMix ? filled(ALL.subtract(BigDecimal.valueOf(share.value())), others) : Map.of();
    }

    private static String byNumber(String path, List<String> weights) {
        Matcher weight = WEIGHT.matcher(path);
        int number = weight.matches() && weight.group(1) != null ? Integer.parseInt(weight.group(1)) : 0;
        return number >= 1 && number <= weights.size() ? weights.get(number - 1) : "";
    }

    /** {@code others} made as large as {@code rest} (%) together; nothing where that is too little. */
    private static Map<String, String> filled(BigDecimal rest, Map<String, Double> others) {
        return PLACES.stream()
                .map(places -> filled(rest, others, places))
                .filter(filled -> filled.values().stream().allMatch(own -> own.signum() > 0))
                .findFirst()
                .map(MixShares::written)
                .orElse(Map.of());
    }

    /** To the last digit: the last of them takes what rounding left. */
    private static Map<String, BigDecimal> filled(BigDecimal rest, Map<String, Double> others, int places) {
        double sum = others.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, BigDecimal> filled = new LinkedHashMap<>();
        BigDecimal left = rest;
        for (Map.Entry<String, Double> other : others.entrySet()) {
            BigDecimal own = filled.size() == others.size() - 1
                    ? left
                    : rest.multiply(BigDecimal.valueOf(other.getValue() / sum), MathContext.DECIMAL64)
                            .setScale(places, RoundingMode.HALF_EVEN);
            left = left.subtract(own);
            filled.put(other.getKey(), own);
        }
        return filled;
    }

    private static Map<String, String> written(Map<String, BigDecimal> shares) {
        Map<String, String> written = new LinkedHashMap<>();
        shares.forEach(
                (path, share) -> written.put(path, share.stripTrailingZeros().toPlainString() + " %"));
        return written;
    }
}
