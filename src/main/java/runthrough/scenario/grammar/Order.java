package runthrough.scenario.grammar;

import runthrough.scenario.source.Raw;

/**
 * Two keys of a section of which one must have the larger value.
 *
 * @param smaller key
 * @param larger key
 * @param mayBeEqual whether the two may be equal
 */
public record Order(Key<Double> smaller, Key<Double> larger, boolean mayBeEqual) {

    void check(Values values, Context context) {
        if (!values.has(smaller) || !values.has(larger)) {
            return;
        }
        double less = values.get(smaller);
        double more = values.get(larger);
        boolean inOrder = mayBeEqual ? more >= less : more > less;
        if (!inOrder) {
            Raw.Entry entry = entry(values.raw(), larger);
            Raw.Entry other = entry(values.raw(), smaller);
            context.problems()
                    .error(
                            entry.value().place(),
                            context.pathTo(larger.name()),
                            entry.value().shown(),
                            "must be " + (mayBeEqual ? "at least " : "more than ") + smaller.name() + " = "
                                    + other.value().shown(),
                            larger.remedy());
        }
    }

    private static Raw.Entry entry(Raw.Mapping mapping, Key<?> key) {
        return mapping.entries().stream()
                .filter(candidate -> candidate.key().equals(key.name()))
                .findFirst()
                .orElseThrow();
    }
}
