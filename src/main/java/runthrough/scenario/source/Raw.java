package runthrough.scenario.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A part of a file, not yet understood. */
public sealed interface Raw {

    /** Where it begins. */
    Place place();

    /** How it is shown in a message. */
    String shown();

    /** All of it on one line, as it could stand in the file. */
    String text();

    /** The same as if it, and everything in it, stood at {@code place}. */
    Raw at(Place place);

    /** A single value, as written. */
    record Scalar(String text, Place place) implements Raw {
        @Override
        public String shown() {
            return text;
        }

        @Override
        public Scalar at(Place other) {
            return new Scalar(text, other);
        }
    }

    /** Keys with values, in the order written. */
    record Mapping(List<Entry> entries, Place place) implements Raw {
        public Mapping {
            entries = List.copyOf(entries);
        }

        /** What stands under {@code key}. */
        public Optional<Raw> find(String key) {
            return entries.stream()
                    .filter(entry -> entry.key().equals(key))
                    .map(Entry::value)
                    .findFirst();
        }

        /** The group that stands under {@code key}; empty where there is none, or something else. */
        public Optional<Mapping> findMapping(String key) {
            return find(key).filter(Mapping.class::isInstance).map(Mapping.class::cast);
        }

        /** This with {@code value} under {@code key}, in the place of what stood there or behind all others. */
        public Mapping with(String key, Raw value) {
            List<Entry> changed = new ArrayList<>(entries);
            Entry entry = new Entry(key, value.place(), value);
            IntStream.range(0, entries.size())
                    .filter(i -> entries.get(i).key().equals(key))
                    .findFirst()
                    // A second one of the name stays, for whoever reads to refuse.
                    .ifPresentOrElse(i -> changed.set(i, entry), () -> changed.add(entry));
            return new Mapping(changed, place);
        }

        /** This without what stands under {@code keys}. */
        public Mapping without(Set<String> keys) {
            return new Mapping(
                    entries.stream()
                            .filter(entry -> !keys.contains(entry.key()))
                            .toList(),
                    place);
        }

        @Override
        public String shown() {
            return entries.isEmpty() ? "{}" : "{" + entries.get(0).key() + ": ...}";
        }

        @Override
        public String text() {
            return entries.stream()
                    .map(entry -> entry.key() + ": " + entry.value().text())
                    .collect(Collectors.joining(", ", "{", "}"));
        }

        @Override
        public Mapping at(Place other) {
            return new Mapping(
                    entries.stream()
                            .map(entry ->
                                    new Entry(entry.key(), other, entry.value().at(other)))
                            .toList(),
                    other);
        }
    }

    /** Values in order. */
    record Sequence(List<Raw> items, Place place) implements Raw {
        public Sequence {
            items = List.copyOf(items);
        }

        /** This with another item at {@code index}, counted from 0. */
        public Sequence with(int index, Raw item) {
            List<Raw> changed = new ArrayList<>(items);
            changed.set(index, item);
            return new Sequence(changed, place);
        }

        /** This with {@code item} behind the others. */
        public Sequence and(Raw item) {
            List<Raw> more = new ArrayList<>(items);
            more.add(item);
            return new Sequence(more, place);
        }

        @Override
        public String shown() {
            return items.isEmpty() ? "[]" : "[" + items.get(0).shown() + (items.size() > 1 ? ", ...]" : "]");
        }

        @Override
        public String text() {
            return items.stream().map(Raw::text).collect(Collectors.joining(", ", "[", "]"));
        }

        @Override
        public Sequence at(Place other) {
            return new Sequence(items.stream().map(item -> item.at(other)).toList(), other);
        }
    }

    /**
     * A key with its value.
     *
     * @param place of the key
     */
    record Entry(String key, Place place, Raw value) {}
}
