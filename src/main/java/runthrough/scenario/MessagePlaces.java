package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.check.Message;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * Finds the line and column that a message about the line is about: those of its key, or of the nearest part around it that
 * stands in the file; for a coil of a schedule those of its row.
 *
 * @param scenario the whole file
 * @param coils where each kind of coil is described
 */
record MessagePlaces(Raw scenario, List<Place> coils) {

    private static final Pattern SCHEDULED_COIL = Pattern.compile("coils\\.schedule\\[(\\d+)].*");
    /** Items are counted from 1. */
    private static final Pattern ITEM = Pattern.compile("\\[(\\d+)](.*)");

    /** Adds {@code message} to {@code problems} with its place. */
    void tell(Message message, Problems problems) {
        Place place = place(message.path());
        // What was found reads "value; rule", or is a rule alone.
        String[] parts = message.what().split("; ", 2);
        String value = parts.length == 2 ? parts[0] : "";
        String rule = parts[parts.length - 1];
        if (message.severity() == Message.Severity.ERROR) {
            problems.error(place, message.path(), value, rule, message.remedy());
        } else {
            problems.warning(place, message.path(), value, rule, message.remedy());
        }
    }

    /**
     * What {@code check} finds, each message in the units in which its part is written.
     *
     * @param usual units, for what is not written, in units of both systems, or in none
     */
    List<Message> inUnitsOfFile(UnitSystem usual, Function<UnitSystem, List<Message>> check) {
        List<Message> messages = check.apply(usual);
        UnitSystem other = usual == UnitSystem.METRIC ? UnitSystem.US_CUSTOMARY : UnitSystem.METRIC;
        Set<UnitSystem> otherAlone = Set.of(other);
        if (messages.stream().noneMatch(message -> systems(message).equals(otherAlone))) {
            return messages;
        }
        List<Message> inOther = check.apply(other);
        return IntStream.range(0, messages.size())
                .mapToObj(i -> systems(messages.get(i)).equals(otherAlone) ? inOther.get(i) : messages.get(i))
                .toList();
    }

    private Set<UnitSystem> systems(Message message) {
        return part(scenario, message.path())
                .map(raw -> units(raw).flatMap(unit -> unit.system().stream()).collect(Collectors.toSet()))
                .orElse(Set.of());
    }

    private static Stream<Unit> units(Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return mapping.entries().stream().flatMap(entry -> units(entry.value()));
        }
        return raw instanceof Raw.Sequence list
                ? list.items().stream().flatMap(MessagePlaces::units)
                : QuantityParser.unit(raw.text()).stream();
    }

    /** The same for messages that come of something else than the file, written at {@code place}. */
    MessagePlaces at(Place place) {
        return new MessagePlaces(
                new Raw.Scalar("", place), coils.stream().map(coil -> place).toList());
    }

    private Place place(String path) {
        Matcher coil = SCHEDULED_COIL.matcher(path);
        if (coil.matches()) {
            return coils.get(Integer.parseInt(coil.group(1)) - 1);
        }
        return place(scenario, path);
    }

    /** The place of what {@code path} names in {@code raw}, or of the nearest part around it that is there. */
    static Place place(Raw raw, String path) {
        return inner(raw, path).map(step -> place(step.raw(), step.rest())).orElse(raw.place());
    }

    /** What {@code path} names in {@code raw}; empty where it is not there. */
    private static Optional<Raw> part(Raw raw, String path) {
        return path.isEmpty() ? Optional.of(raw) : inner(raw, path).flatMap(step -> part(step.raw(), step.rest()));
    }

    /** One step on the way; the rest of the path leads on from there. */
    private record Step(Raw raw, String rest) {}

    private static Optional<Step> inner(Raw raw, String path) {
        if (raw instanceof Raw.Mapping mapping) {
            String rest = path.startsWith(".") ? path.substring(1) : path;
            return mapping.entries().stream()
                    .filter(entry -> rest.startsWith(entry.key())
                            && (rest.length() == entry.key().length()
                                    || ".[".indexOf(rest.charAt(entry.key().length())) >= 0))
                    .findFirst()
                    .map(entry ->
                            new Step(entry.value(), rest.substring(entry.key().length())));
        }
        Matcher item = ITEM.matcher(path);
        if (raw instanceof Raw.Sequence sequence && item.matches()) {
            int number = Integer.parseInt(item.group(1));
            return number <= sequence.items().size()
                    ? Optional.of(new Step(sequence.items().get(number - 1), item.group(2)))
                    : Optional.empty();
        }
        return Optional.empty();
    }
}
