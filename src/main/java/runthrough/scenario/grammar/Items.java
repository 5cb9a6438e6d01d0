package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Raw;

/**
 * A list.
 *
 * @param of what each item may be
 * @param what the items are, to follow "a list of"
 * @param least how many at least
 * @param mayBeSingle whether a single item may stand without its list
 */
public record Items<T>(Shape<T> of, String what, int least, boolean mayBeSingle) implements Shape<List<T>> {

    private static final String ANOTHER = "[+]";

    /** More than anybody writes; a longer one would take minutes to read and draw. */
    private static final int MOST = 500;
    /** As many as the rows of a sheet. */
    private static final int MOST_NUMBERS = 20_000;

    @Override
    public Optional<List<T>> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Sequence sequence)) {
            if (mayBeSingle) {
                return of.read(raw, context).map(List::of);
            }
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        if (sequence.items().size() < least) {
            context.error(raw, "must be " + allowed());
            return Optional.empty();
        }
        if (isTooLong(sequence)) {
            context.error(raw, "has " + sequence.items().size() + " items; at most " + most() + " are read");
            return Optional.empty();
        }
        List<T> read = new ArrayList<>();
        for (int i = 0; i < sequence.items().size(); i++) {
            of.read(sequence.items().get(i), context.item(i + 1)).ifPresent(read::add);
        }
        return read.size() == sequence.items().size() ? Optional.of(List.copyOf(read)) : Optional.empty();
    }

    /** The list with what stands in for each item that cannot be read. */
    @Override
    public Optional<List<T>> standIn(Raw raw, StandIn standIn) {
        if (!(raw instanceof Raw.Sequence sequence)) {
            return mayBeSingle ? of.standIn(raw, standIn).map(List::of) : Optional.empty();
        }
        if (isTooLong(sequence)) {
            return Optional.empty();
        }
        List<T> items = sequence.items().stream()
                .flatMap(item -> Shape.readOrStandIn(of, item, standIn).stream())
                .toList();
        boolean isWhole = items.size() == sequence.items().size() && items.size() >= least;
        return isWhole ? Optional.of(items) : Optional.empty();
    }

    private boolean isTooLong(Raw.Sequence list) {
        return list.items().size() > most();
    }

    private int most() {
        return of.number(Optional.empty()).isPresent() ? MOST_NUMBERS : MOST;
    }

    /** Whether {@code list}, whose items are no numbers, has no more of them than are read. */
    public static boolean areFew(Raw.Sequence list) {
        return list.items().size() <= MOST;
    }

    /** Whether {@code mapping}, whose keys are names of the user's own, has no more entries than a list may have items. */
    public static boolean areFew(Raw.Mapping mapping) {
        return mapping.entries().size() <= MOST;
    }

    /** Whether {@code mapping}, whose keys are names of the user's own, has no more entries than a list may have items; if not, that is reported. */
    public static boolean areFew(Raw.Mapping mapping, Context context) {
        if (!areFew(mapping)) {
            context.error(mapping, "has " + mapping.entries().size() + " entries; at most " + MOST + " are read");
        }
        return areFew(mapping);
    }

    @Override
    public String allowed() {
        return "a list of " + what + (least > 0 ? ", at least " + least : "");
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode list = schemas.type("array");
        list.set("items", of.schema(schemas));
        if (least > 0) {
            list.put("minItems", least);
        }
        return mayBeSingle ? schemas.anyOf(of.schema(schemas), list) : list;
    }

    /** Items are called by name where no other is called so, and by number, counted from 1; {@code [+]} adds one. */
    @Override
    public List<Part> parts(Optional<Raw> written) {
        boolean areNumbers = of.number(Optional.empty()).isPresent();
        Optional<Raw.Sequence> list =
                written.filter(raw -> raw instanceof Raw.Sequence).map(raw -> (Raw.Sequence) raw);
        if (areNumbers || list.filter(this::isTooLong).isPresent()) {
            return List.of();
        }
        List<Part> parts = new ArrayList<>();
        list.ifPresent(
                items -> IntStream.range(0, items.items().size()).forEach(index -> parts.add(part(items, index))));
        parts.add(new Part(
                List.of(ANOTHER),
                "",
                of,
                Optional.empty(),
                raw -> list.orElseGet(() -> new Raw.Sequence(List.of(), raw.place()))
                        .and(raw)));
        return parts;
    }

    private Part part(Raw.Sequence list, int index) {
        List<Raw> items = list.items();
        Part item = of.item(items.get(index));
        String number = "[" + (index + 1) + "]";
        List<String> names = new ArrayList<>();
        for (String name : item.names()) {
            long namesakes = items.stream()
                    .filter(other -> of.item(other).names().contains(name))
                    .count();
            if (namesakes == 1) {
                names.add(name);
            }
        }
        names.add(number);
        item.names().forEach(name -> names.add(number + "." + name));
        return new Part(
                names,
                "",
                item.shape(),
                item.written(),
                raw -> list.with(index, item.put().apply(raw)));
    }

    @Override
    public List<Section> sections() {
        return of.sections();
    }
}
