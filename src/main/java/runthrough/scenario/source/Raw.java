package runthrough.scenario.source;

import java.util.List;

/** A part of a file, not yet understood. */
public sealed interface Raw {

    /** Where it begins. */
    Place place();

    /** How it is shown in a message. */
    String shown();

    /** A single value, as written. */
    record Scalar(String text, Place place) implements Raw {
        @Override
        public String shown() {
            return text;
        }
    }

    /** Keys with values, in the order written. */
    record Mapping(List<Entry> entries, Place place) implements Raw {
        public Mapping {
            entries = List.copyOf(entries);
        }

        @Override
        public String shown() {
            return entries.isEmpty() ? "{}" : "{" + entries.get(0).key() + ": ...}";
        }
    }

    /** Values in order. */
    record Sequence(List<Raw> items, Place place) implements Raw {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String shown() {
            return items.isEmpty() ? "[]" : "[" + items.get(0).shown() + (items.size() > 1 ? ", ...]" : "]");
        }
    }

    /**
     * A key with its value.
     *
     * @param place of the key
     */
    record Entry(String key, Place place, Raw value) {}
}
