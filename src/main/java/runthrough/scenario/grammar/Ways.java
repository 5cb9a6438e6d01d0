package runthrough.scenario.grammar;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.scenario.source.Raw;

/**
 * Several ways to say one thing, of which one is taken.
 *
 * @param what is said, such as "the size of a coil"
 * @param required whether one way must be taken
 * @param ways in the order of the listing
 */
public record Ways(String what, boolean required, List<Way> ways) {

    /**
     * One way.
     *
     * @param must keys that this way needs
     * @param may keys that only make sense with this way
     * @param needs of keys that may be added: which other one each of them needs to make sense
     */
    public record Way(List<String> must, List<String> may, Map<String, String> needs) {

        /** A way that needs all of {@code keys}. */
        public static Way of(String... keys) {
            return new Way(List.of(keys), List.of(), Map.of());
        }

        /** This way with keys that may be added. */
        public Way with(String... keys) {
            return new Way(must, List.of(keys), needs);
        }

        /** This way, in which {@code key} makes sense only with {@code needed}. */
        public Way needing(String key, String needed) {
            return new Way(must, may, Map.of(key, needed));
        }

        /** Whether {@code key} belongs to this way. */
        boolean isGoodWith(String key) {
            return must.contains(key) || may.contains(key);
        }

        String words() {
            return must.size() == 1
                    ? must.get(0)
                    : String.join(", ", must.subList(0, must.size() - 1)) + " with " + must.get(must.size() - 1);
        }
    }

    /** Exactly one of {@code ways}. */
    public static Ways oneOf(String what, Way... ways) {
        return new Ways(what, true, List.of(ways));
    }

    /** One of {@code ways}, or none. */
    public static Ways atMostOneOf(String what, Way... ways) {
        return new Ways(what, false, List.of(ways));
    }

    /** The ways in words: "length; mass; outer-diameter with inner-diameter". */
    public String words() {
        return ways.stream().map(Way::words).collect(Collectors.joining("; "));
    }

    /**
     * Reports to {@code context} when not exactly one way is taken.
     *
     * @param meant keys that were probably meant by misspelt ones, which have been reported
     */
    void check(Raw.Mapping mapping, Set<String> meant, Context context) {
        List<Raw.Entry> first = List.of();
        Optional<Way> taken = Optional.empty();
        for (Way way : ways) {
            List<Raw.Entry> found = entriesOf(mapping, way.must()).stream()
                    .filter(entry -> !goesWithAnother(entry.key(), way, mapping))
                    .toList();
            if (found.isEmpty()) {
                continue;
            }
            if (taken.isPresent()) {
                tellTwice(first.get(0), found.get(0), context);
                return;
            }
            taken = Optional.of(way);
            first = found;
        }
        if (taken.isEmpty() && required && keys().noneMatch(meant::contains)) {
            context.error(
                    mapping, "does not say " + what + "; give one of: " + words(), "Add one of these to this section.");
        }
        taken.ifPresent(way -> checkComplete(mapping, way, context));
        taken.ifPresent(way -> checkNeeds(mapping, way, context));
        checkLoose(mapping, taken, context);
    }

    private void tellTwice(Raw.Entry one, Raw.Entry other, Context context) {
        Raw.Entry later = one.place().isBehind(other.place()) ? one : other;
        Raw.Entry earlier = later.equals(one) ? other : one;
        context.problems()
                .error(
                        later.place(),
                        context.pathTo(later.key()),
                        later.value().shown(),
                        what + " is already given by " + earlier.key() + "; allowed is one of: " + words(),
                        "Leave out all but one.");
    }

    private static void checkComplete(Raw.Mapping mapping, Way way, Context context) {
        List<Raw.Entry> found = entriesOf(mapping, way.must());
        String given = found.stream().map(Raw.Entry::key).collect(Collectors.joining(" and "));
        for (String key : way.must()) {
            if (found.stream().noneMatch(entry -> entry.key().equals(key))) {
                context.problems()
                        .error(
                                found.get(0).place(),
                                context.pathTo(key),
                                "",
                                "is missing; " + given + " needs it",
                                "Add " + key + ".");
            }
        }
    }

    private static void checkNeeds(Raw.Mapping mapping, Way way, Context context) {
        for (Raw.Entry entry : entriesOf(mapping, List.copyOf(way.needs().keySet()))) {
            String needed = Optional.ofNullable(way.needs().get(entry.key())).orElseThrow();
            if (mapping.find(needed).isEmpty()) {
                refuseLoose(entry, List.of(needed), context);
            }
        }
    }

    private static void refuseLoose(Raw.Entry entry, List<String> with, Context context) {
        String any = String.join("; ", with);
        context.problems()
                .error(
                        entry.place(),
                        context.pathTo(entry.key()),
                        entry.value().shown(),
                        "only goes with " + (with.size() == 1 ? any : "one of: " + any),
                        "Leave it out, or give " + (with.size() == 1 ? any : "one of these") + ".");
    }

    /** Reports keys that only make sense with ways that are not taken, each once. */
    private void checkLoose(Raw.Mapping mapping, Optional<Way> taken, Context context) {
        if (taken.isEmpty() && required) {
            return;
        }
        for (Raw.Entry entry : mapping.entries()) {
            List<String> others = ways.stream()
                    .filter(way -> way.may().contains(entry.key()))
                    .map(Way::words)
                    .toList();
            if (!others.isEmpty()
                    && taken.filter(way -> way.isGoodWith(entry.key())).isEmpty()) {
                refuseLoose(entry, others, context);
            }
        }
    }

    /** Whether {@code key}, which {@code way} needs, only adds to another way that {@code mapping} takes. */
    private boolean goesWithAnother(String key, Way way, Raw.Mapping mapping) {
        return ways.stream()
                .filter(other -> !other.equals(way) && other.may().contains(key))
                .anyMatch(other -> !entriesOf(mapping, other.must()).isEmpty());
    }

    private static List<Raw.Entry> entriesOf(Raw.Mapping mapping, List<String> keys) {
        return mapping.entries().stream()
                .filter(entry -> keys.contains(entry.key()))
                .toList();
    }

    /** The keys that say in another way what {@code key} says beside those {@code written}, or only go with such. */
    Stream<String> excludedBy(String key, Set<String> written) {
        Optional<Way> added = ways.stream()
                .filter(way -> way.may().contains(key) && written.containsAll(way.must()))
                .findFirst();
        Optional<Way> taken = added.or(
                () -> ways.stream().filter(way -> way.must().contains(key)).findFirst());
        return taken.isEmpty()
                ? Stream.empty()
                : keys().filter(other -> !taken.get().isGoodWith(other));
    }

    /** Whether {@code key} goes with the way that {@code mapping} takes. */
    boolean allows(String key, Raw.Mapping mapping) {
        Set<String> written = mapping.entries().stream().map(Raw.Entry::key).collect(Collectors.toSet());
        boolean lacks = ways.stream()
                .filter(way -> written.containsAll(way.must()))
                .map(way -> way.needs().get(key))
                .anyMatch(needed -> needed != null && !written.contains(needed));
        return !lacks
                && written.stream().flatMap(given -> excludedBy(given, written)).noneMatch(key::equals);
    }

    /** The one way of which {@code mapping} has keys that it needs; empty where there is none, or more than one. */
    Optional<Way> only(Raw.Mapping mapping) {
        List<Way> begun = ways.stream()
                .filter(way -> entriesOf(mapping, way.must()).stream()
                        .anyMatch(entry -> !goesWithAnother(entry.key(), way, mapping)))
                .toList();
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }

    /** The keys of {@code mapping} that have no part in {@code way}: those of other ways, and those that lack what they go with. */
    Set<String> notOf(Way way, Raw.Mapping mapping) {
        return keys().filter(key -> {
                    String needed = way.needs().get(key);
                    return !way.isGoodWith(key)
                            || (needed != null && mapping.find(needed).isEmpty());
                })
                .collect(Collectors.toSet());
    }

    /** The keys of every way. */
    Stream<String> keys() {
        return ways.stream().flatMap(way -> Stream.concat(way.must().stream(), way.may().stream()));
    }
}
