package runthrough.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.scenario.source.Raw;

/**
 * A work element as it stands in a scenario: its name, and behind it a time or keys that say more.
 *
 * @param name of it
 * @param body what stands behind the name
 * @param item both
 */
public record WrittenElement(String name, Raw body, Raw.Mapping item) {

    /** That of an item of a list of work elements; empty where the item is no name with something behind it. */
    public static Optional<WrittenElement> of(Raw item) {
        return item instanceof Raw.Mapping mapping && mapping.entries().size() == 1
                ? Optional.of(new WrittenElement(
                        mapping.entries().get(0).key(), mapping.entries().get(0).value(), mapping))
                : Optional.empty();
    }

    /** The key that says how long it takes, such as {@code triangular}; that of a single value where nothing but a value is written. */
    public String timeKey() {
        return keys().entries().stream()
                .map(Raw.Entry::key)
                .filter(ElementKeys.WAYS_OF_TIME::contains)
                .findFirst()
                .orElse("");
    }

    /** What stands under {@code key}, value by value; none where that is no value and no list of values, or nothing. */
    public List<String> values(String key) {
        List<Raw> items = keys().find(key)
                .map(value -> value instanceof Raw.Sequence list ? list.items() : List.of(value))
                .orElse(List.of());
        return items.stream().allMatch(Raw.Scalar.class::isInstance)
                ? items.stream().map(item -> ((Raw.Scalar) item).text()).toList()
                : List.of();
    }

    /** The item with another name; times that are found by the name in a sheet still are. */
    Raw named(String other) {
        boolean isFoundByName = keys().find(ElementKeys.SHEET_KEY).isPresent()
                && keys().find(ElementKeys.COLUMN_KEY).isEmpty();
        Raw after = isFoundByName ? keys().with(ElementKeys.COLUMN_KEY, new Raw.Scalar(name, item.place())) : body;
        return new Raw.Mapping(List.of(new Raw.Entry(other, item.place(), after)), item.place());
    }

    /** The item that takes {@code value} under {@code key}, in the place of all that said how long it takes; all else stays. */
    Raw timed(String key, Raw value) {
        List<Raw.Entry> all = new ArrayList<>();
        all.add(new Raw.Entry(key, value.place(), value));
        all.addAll(keys().without(ElementKeys.OF_TIME).entries());
        boolean isValueAlone = all.size() == 1 && key.equals(ElementKeys.SINGLE_VALUE);
        return item.with(name, isValueAlone ? value : new Raw.Mapping(all, body.place()));
    }

    private Raw.Mapping keys() {
        return ElementKeys.keys(body);
    }
}
