package runthrough.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runthrough.study.statistics.Estimate;

/**
 * An object of JSON, its fields in the order in which they were put. A field's name carries its unit, as in the verdict: {@code
 * _m}, {@code _s}, {@code _m_per_s}. What is not known, not finite or does not apply is null.
 */
public final class JsonFields {
    private final Map<String, @Nullable Object> fields = new LinkedHashMap<>();

    /** How a constant is written: in small letters, its words joined by hyphens. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public JsonFields text(String name, String value) {
        fields.put(name, value);
        return this;
    }

    public JsonFields texts(String name, List<String> values) {
        fields.put(name, List.copyOf(values));
        return this;
    }

    public JsonFields flag(String name, boolean value) {
        fields.put(name, value);
        return this;
    }

    public JsonFields count(String name, long value) {
        fields.put(name, value);
        return this;
    }

    public JsonFields number(String name, double value) {
        fields.put(name, Double.isFinite(value) ? value : null);
        return this;
    }

    public JsonFields number(String name, OptionalDouble value) {
        return number(name, value.orElse(Double.NaN));
    }

    /** An end of the interval; NaN where nothing is random, for then the number is exact. */
    public static double end(Estimate estimate, boolean chance, boolean isLow) {
        return estimate.interval()
                .filter(any -> chance)
                .map(interval -> isLow ? interval.low() : interval.high())
                .orElse(Double.NaN);
    }

    public JsonFields in(String name, @Nullable JsonFields value) {
        fields.put(name, value == null ? null : value.fields);
        return this;
    }

    public JsonFields list(String name, List<JsonFields> values) {
        fields.put(name, values.stream().map(JsonFields::map).toList());
        return this;
    }

    /** All fields of {@code other}, after those there are. */
    public JsonFields and(JsonFields other) {
        fields.putAll(other.fields);
        return this;
    }

    public Map<String, @Nullable Object> map() {
        return fields;
    }
}
