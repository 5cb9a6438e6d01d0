package runthrough.scenario.source;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML into {@link Raw} parts. It follows the parser's events with a stack of its own instead of composing nodes, so
 * that neither depth nor aliases can exhaust anything, and the first fault stops it with a place.
 *
 * <p>Read are mappings, sequences and scalars of one document. Refused are aliases and tags, which a description of a line
 * does not need. Every scalar stays the text that was written: whether it is a number is decided by what its key asks for.
 */
public final class YamlText {

    private static final int DEEPEST = 20;

    private final TextFile file;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Raw root;
    private int documents;
    private Place reached;

    private YamlText(TextFile file) {
        this.file = file;
        reached = Place.whole(file.name());
    }

    /** The one document of {@code file}; empty when it cannot be read, and {@code problems} says why. */
    public static Optional<Raw> read(TextFile file, Problems problems) {
        try {
            return Optional.of(new YamlText(file).document());
        } catch (Fault fault) {
            problems.error(fault.place, "", "", fault.rule, fault.remedy);
            return Optional.empty();
        }
    }

    private Raw document() throws Fault {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file.name())
                .setCodePointLimit(Integer.MAX_VALUE)
                .build();
        try {
            for (Event event : new Parse(settings).parseString(file.text())) {
                reached = place(event);
                follow(event);
            }
        } catch (MarkedYamlEngineException e) {
            throw syntaxFault(e);
        } catch (YamlEngineException e) {
            // Some faults the parser meets without a word on where.
            throw new Fault(reached, "is not YAML from here on", "Check brackets, quotes and indentation.");
        }
        if (root == null || (root instanceof Raw.Scalar scalar && scalar.text().isBlank())) {
            throw new Fault(
                    Place.whole(file.name()),
                    "is empty",
                    "Describe a line in it; begin with a copy of a shipped scenario.");
        }
        return root;
    }

    private void follow(Event event) throws Fault {
        if (event instanceof DocumentStartEvent && ++documents > 1) {
            throw new Fault(place(event), "a second document begins here", "Keep one scenario to a file.");
        } else if (event instanceof AliasEvent) {
            throw new Fault(
                    place(event), "aliases (*name) are not read", "Write the value out; coils can share defaults.");
        } else if (event instanceof CollectionStartEvent start) {
            refuseTag(start.getTag(), event);
            if (open.size() >= DEEPEST) {
                throw new Fault(
                        place(event),
                        "is nested deeper than " + DEEPEST + " levels",
                        "Check brackets and indentation.");
            }
            open.push(new Open(event instanceof MappingStartEvent, place(event)));
        } else if (event instanceof CollectionEndEvent) {
            add(open.pop().close());
        } else if (event instanceof ScalarEvent scalar) {
            refuseTag(scalar.getTag(), event);
            refuseStrange(scalar.getValue(), place(event));
            add(new Raw.Scalar(scalar.getValue(), place(event)));
        }
    }

    /** What the file does not hold may come by an escape. */
    private static void refuseStrange(String text, Place place) throws Fault {
        Optional<String> strange = TextFile.strange(text);
        if (strange.isPresent()) {
            throw new Fault(place, strange.get(), "Write it without.");
        }
    }

    private void add(Raw raw) throws Fault {
        Open parent = open.peek();
        if (parent == null) {
            root = raw;
        } else {
            parent.add(raw);
        }
    }

    private void refuseTag(Optional<String> tag, Event event) throws Fault {
        if (tag.isPresent()) {
            throw new Fault(place(event), "tags (" + tag.get() + ") are not read", "Write the plain value.");
        }
    }

    private Place place(Event event) {
        return event.getStartMark().map(this::place).orElse(Place.whole(file.name()));
    }

    private Place place(Mark mark) {
        return new Place(file.name(), mark.getLine() + 1, mark.getColumn() + 1);
    }

    private Fault syntaxFault(MarkedYamlEngineException e) {
        Place place = e.getProblemMark().map(this::place).orElse(Place.whole(file.name()));
        String problem = String.valueOf(e.getProblem());
        if (problem.contains("TAB") || problem.contains("\\t")) {
            return new Fault(place, "a tab stands where spaces are expected", "Indent with spaces.");
        }
        String context = e.getContext() == null ? "" : " " + e.getContext();
        return new Fault(
                place,
                "is not YAML: " + problem + context,
                "Check this line and the one before: indentation, a space after each colon, closed quotes and brackets.");
    }

    /** A mapping or sequence whose end has not been seen. */
    private static final class Open {
        private final boolean isMapping;
        private final Place place;
        private final List<Raw.Entry> entries = new ArrayList<>();
        private final List<Raw> items = new ArrayList<>();
        private Raw.@Nullable Scalar key;

        Open(boolean isMapping, Place place) {
            this.isMapping = isMapping;
            this.place = place;
        }

        void add(Raw raw) throws Fault {
            if (!isMapping) {
                items.add(raw);
            } else if (key != null) {
                entries.add(new Raw.Entry(key.text(), key.place(), raw));
                key = null;
            } else if (raw instanceof Raw.Scalar scalar) {
                refuseOddKey(scalar);
                key = scalar;
            } else {
                throw new Fault(raw.place(), "a key must be a word", "Write it as \"key: value\".");
            }
        }

        private static void refuseOddKey(Raw.Scalar key) throws Fault {
            if (TextFile.isBlank(key.text())) {
                throw new Fault(key.place(), "a key must be a word", "Write it as \"key: value\".");
            }
            if (!TextFile.isOneLine(key.text())) {
                throw new Fault(
                        key.place(), "a key must stand in one line, without tabs", "Write a blank in their place.");
            }
        }

        Raw close() {
            return isMapping ? new Raw.Mapping(entries, place) : new Raw.Sequence(items, place);
        }
    }

    /** What stops the reading of this file. */
    @SuppressWarnings("serial") // never serialised
    private static final class Fault extends Exception {
        private final Place place;
        private final String rule;
        private final String remedy;

        Fault(Place place, String rule, String remedy) {
            super(rule, null, false, false);
            this.place = place;
            this.rule = rule;
            this.remedy = remedy;
        }
    }
}
