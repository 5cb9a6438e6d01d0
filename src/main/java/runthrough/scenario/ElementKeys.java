package runthrough.scenario;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.CoilDifference;
import runthrough.plant.Distribution;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.StandIn;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Count;
import runthrough.scenario.grammar.Different;
import runthrough.scenario.grammar.DistributionKeys;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Numeric;
import runthrough.scenario.grammar.Part;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Schemas;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.grammar.Word;
import runthrough.scenario.part.TravelKeys;
import runthrough.scenario.source.ElementName;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * A work element: its name with a time ({@code inspect: 10 s}), a distribution ({@code fit up: {lognormal: [20 s, 6 s]}}) or more
 * ({@code weld: {travel: 600 mm/min, plus: 6 s}}).
 *
 * <p>Rules CHANGE-9, CHECK-32.
 *
 * @param redoByDefault whether it is done again after a reject unless it says otherwise
 */
record ElementKeys(boolean redoByDefault) implements Shape<WorkElement> {

    private static final DistributionShape TIME = new DistributionShape(Dimension.TIME, Range.NOT_NEGATIVE);
    private static final DistributionKeys DISTRIBUTIONS = DistributionKeys.of(Dimension.TIME, Range.NOT_NEGATIVE);

    private static final Key<TravelSpeed> TRAVEL = Key.optional(
            "travel",
            "the speed across the strip, one or by strip thickness; the time is the width of the wider strip over it",
            new TravelKeys(),
            "600 mm/min");
    private static final Key<Distribution> PLUS = Key.optional(
                    "plus", "the time added to the travel across the strip", TIME, "6 s")
            .orElse("0 s");
    private static final Key<Integer> EVERY = Key.optional(
            "every",
            "n, when it is done on coil changes n, 2n, 3n and so on only",
            new Count(1, 1_000_000).map(Math::toIntExact),
            "20");
    private static final Key<Double> CHANCE = Key.optional(
            "chance",
            "the share of coil changes at which it is done, drawn at random",
            new Amount(Dimension.SHARE, Range.SHARE),
            "10 %");
    private static final Key<List<CoilDifference>> WHEN = Key.optional(
            "when",
            "what must differ between the two coils for it to be done; several may be listed, of which any will do",
            new Different<>(new Items<>(
                    Word.<CoilDifference>choice()
                            .or("width", CoilDifference.WIDTH)
                            .or("thickness", CoilDifference.THICKNESS)
                            .or("product", CoilDifference.PRODUCT),
                    "what differs",
                    1,
                    true)),
            "[width, product]");
    private static final Key<Integer> PEOPLE = Key.optional(
                    "people", "how many people it takes", new Count(1, 100).map(Math::toIntExact), "2")
            .withDefaultWords("1");
    private static final Key<Boolean> PUT_DOWN = Key.optional(
                    "put-down",
                    "whether a prepare element may be put down when the joint needs the people, and be taken up again later;"
                            + " a coil on the hook may not",
                    Word.yesOrNo(),
                    "no")
            .withDefaultWords("yes");
    private static final Key<Double> SHORTER_BY = Key.optional(
                    "shorter-by",
                    "seconds off it each time that it is done, though it takes no less than 0; to try what quicker work would"
                            + " bring",
                    new Amount(Dimension.TIME, Range.NOT_NEGATIVE),
                    "5 s")
            .withDefaultWords("0 s");
    private static final Key<Boolean> REDO = Key.optional(
                    "redo", "whether it is done again when the joint is rejected", Word.yesOrNo(), "no")
            .withDefaultWords("yes for tail and join elements, no for prepare");

    private static final Key<String> SHEET = Key.optional(
            "sheet",
            "the time-study sheet, a CSV file beside the scenario, in which it was timed; elements of the same sheet take the"
                    + " same row at a coil change, and for a blank another value of their own column",
            new Text("the name of a CSV file"),
            "times.csv");
    private static final Key<String> COLUMN = Key.optional(
                    "column", "the column of the sheet that holds its times", new Text("a text"), "join: weld")
            .withDefaultWords("the one with the name of the element");

    /** The key of the sheet in which an element was timed. */
    static final String SHEET_KEY = SHEET.name();

    /** The key of its column in the sheet, where that has another name. */
    static final String COLUMN_KEY = COLUMN.name();

    /** The key of a time that is always the same, which a single value stands for. */
    static final String SINGLE_VALUE = DISTRIBUTIONS.kinds().get(0).name();

    /** The keys of which each element has one, since they say how long it takes. */
    static final Set<String> WAYS_OF_TIME = Stream.concat(
                    DISTRIBUTIONS.kinds().stream().map(Key::name), Stream.of(TRAVEL.name(), SHEET.name()))
            .collect(Collectors.toUnmodifiableSet());

    /** The same with those that stand beside them. */
    static final Set<String> OF_TIME = Stream.concat(
                    WAYS_OF_TIME.stream(), Stream.of(DISTRIBUTIONS.shift().name(), PLUS.name(), COLUMN.name()))
            .collect(Collectors.toUnmodifiableSet());

    private static final Section ELEMENT = element();

    private static Section element() {
        Key<?>[] keys = Stream.concat(
                        DISTRIBUTIONS.kinds().stream(),
                        Stream.of(
                                DISTRIBUTIONS.shift(),
                                TRAVEL,
                                PLUS,
                                SHEET,
                                COLUMN,
                                EVERY,
                                CHANCE,
                                WHEN,
                                PEOPLE,
                                PUT_DOWN,
                                REDO,
                                SHORTER_BY))
                .toArray(Key<?>[]::new);
        Way[] times = Stream.concat(
                        Stream.of(DISTRIBUTIONS.waysWith(DISTRIBUTIONS.shift().name())),
                        Stream.of(
                                Way.of(TRAVEL.name()).with(PLUS.name()),
                                Way.of(SHEET.name()).with(COLUMN.name())))
                .toArray(Way[]::new);
        return Section.of("work element", "a name with a time, a random time, or more of these keys", keys)
                .with(Ways.oneOf("how long the element takes", times))
                .with(Ways.atMostOneOf(
                        "when the element is done", Way.of(EVERY.name()), Way.of(CHANCE.name()), Way.of(WHEN.name())));
    }

    /** What stands behind a name, as keys. */
    static Raw.Mapping keys(Raw body) {
        return DISTRIBUTIONS.asMapping(body) instanceof Raw.Mapping keys
                ? keys
                : new Raw.Mapping(List.of(), body.place());
    }

    @Override
    public Optional<WorkElement> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Mapping mapping) || mapping.entries().size() != 1) {
            context.error(raw, "must be " + allowed(), howToWrite(raw));
            return Optional.empty();
        }
        Raw.Entry entry = mapping.entries().get(0);
        Optional<String> wrong = ElementName.wrong(entry.key());
        if (wrong.isPresent()) {
            context.error(raw, wrong.get(), "Call it otherwise.");
            return Optional.empty();
        }
        Context here = context.named(entry.key())
                .withRemedy("Give the time that the element takes, such as 10 s or {triangular: [8 s, 10 s, 20 s]}.");
        return new Body(entry.key(), redoByDefault).read(entry.value(), here);
    }

    /** The element of that name, with what stands in for what cannot be read behind it. */
    @Override
    public Optional<WorkElement> standIn(Raw raw, StandIn standIn) {
        if (!(raw instanceof Raw.Mapping mapping) || mapping.entries().size() != 1) {
            return Optional.empty();
        }
        Raw.Entry entry = mapping.entries().get(0);
        return new Body(entry.key(), redoByDefault).standIn(entry.value(), standIn);
    }

    /** Where keys of an element stand beside its name instead of behind it, the same as it should be written. */
    private static String howToWrite(Raw raw) {
        if (raw instanceof Raw.Mapping mapping && mapping.entries().size() > 1) {
            List<Raw.Entry> named = mapping.entries().stream()
                    .filter(entry ->
                            ELEMENT.keys().stream().noneMatch(key -> key.name().equals(entry.key())))
                    .toList();
            if (named.size() == 1 && DISTRIBUTIONS.asMapping(named.get(0).value()) instanceof Raw.Mapping body) {
                String name = named.get(0).key();
                List<Raw.Entry> all = Stream.concat(
                                body.entries().stream(), mapping.without(Set.of(name)).entries().stream())
                        .toList();
                return "Everything about an element stands behind its name: write \"- " + name + ": "
                        + new Raw.Mapping(all, raw.place()).text() + "\".";
            }
        }
        return "Write it like \"- inspect: 10 s\", one element to an item.";
    }

    /** An element is called by its name; what may be replaced is what stands behind it. */
    @Override
    public Part item(Raw raw) {
        if (!(raw instanceof Raw.Mapping mapping) || mapping.entries().size() != 1) {
            return Shape.super.item(raw);
        }
        Raw.Entry entry = mapping.entries().get(0);
        return new Part(
                List.of(entry.key()),
                "",
                new Body(entry.key(), redoByDefault),
                Optional.of(entry.value()),
                body -> mapping.with(entry.key(), body));
    }

    @Override
    public String allowed() {
        return "the name of a work element with its time";
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return schemas.shared("work-element", () -> {
            ObjectNode schema = schemas.type("object").put("minProperties", 1).put("maxProperties", 1);
            schema.set("propertyNames", schemas.any().put("minLength", 1).put("maxLength", ElementName.LONGEST));
            schema.set("additionalProperties", new Body("", redoByDefault).schema(schemas));
            return schema;
        });
    }

    @Override
    public List<Section> sections() {
        return List.of(ELEMENT);
    }

    /**
     * What stands behind the name of an element.
     *
     * @param name of the element
     * @param redoByDefault whether it is done again after a reject unless it says otherwise
     */
    private record Body(String name, boolean redoByDefault) implements Shape<WorkElement> {

        @Override
        public Optional<WorkElement> read(Raw raw, Context context) {
            if (!(raw instanceof Raw.Mapping)) {
                return TIME.read(raw, context)
                        .map(time -> new WorkElement(
                                name, new WorkTime.Timed(time), new Occurrence.Always(), redoByDefault));
            }
            return ELEMENT.read(raw, context)
                    .flatMap(values -> time(values, context).map(time -> shortened(values, element(values, time))));
        }

        @Override
        public Optional<WorkElement> standIn(Raw raw, StandIn standIn) {
            WorkTime time = new WorkTime.Timed(standIn.time());
            if (!(raw instanceof Raw.Mapping)) {
                return Optional.of(new WorkElement(name, time, new Occurrence.Always(), redoByDefault));
            }
            // Where not even its keys are known, it may take anybody and anything.
            return ELEMENT.standIn(raw, standIn)
                    .flatMap(values ->
                            standInTime(values, time).map(known -> shortened(values, element(values, known))))
                    .or(() -> Optional.of(standIn.element(name)));
        }

        /** A sheet is not read anew for each thing that stands in. */
        private Optional<? extends WorkTime> standInTime(Values values, WorkTime ofSheet) {
            return values.has(SHEET) ? Optional.of(ofSheet) : time(values, Context.top(new Problems()));
        }

        private WorkElement element(Values values, WorkTime time) {
            return new WorkElement(
                    name,
                    time,
                    occurrence(values),
                    values.find(REDO).orElse(redoByDefault),
                    values.find(PEOPLE).orElse(1),
                    values.find(PUT_DOWN).orElse(true));
        }

        private static WorkElement shortened(Values values, WorkElement element) {
            return values.find(SHORTER_BY)
                    .filter(off -> off > 0)
                    .map(off -> element.with(new WorkElement.Shortening.By(off)))
                    .orElse(element);
        }

        private Optional<? extends WorkTime> time(Values values, Context context) {
            if (values.has(SHEET)) {
                return SheetTimes.of(
                        values.raw(), values.get(SHEET), values.find(COLUMN).orElse(name), context);
            }
            return DISTRIBUTIONS
                    .distribution(values)
                    .<WorkTime>map(WorkTime.Timed::new)
                    .or(() -> Optional.of(new WorkTime.Travel(values.get(TRAVEL), values.get(PLUS))));
        }

        private static Occurrence occurrence(Values values) {
            if (values.has(EVERY)) {
                return new Occurrence.Every(values.get(EVERY));
            }
            if (values.has(WHEN)) {
                return new Occurrence.When(Set.copyOf(values.get(WHEN)));
            }
            return values.has(CHANCE) ? new Occurrence.Chance(values.get(CHANCE)) : new Occurrence.Always();
        }

        @Override
        public String allowed() {
            return TIME.allowed() + ", or more of a work element";
        }

        @Override
        public ObjectNode schema(Schemas schemas) {
            return schemas.anyOf(Amount.notNegative(Dimension.TIME).schema(schemas), schemas.section(ELEMENT));
        }

        @Override
        public Optional<Numeric> number(Optional<Raw> written) {
            return TIME.number(written);
        }

        @Override
        public List<Part> parts(Optional<Raw> written) {
            return ELEMENT.parts(written.map(DISTRIBUTIONS::asMapping));
        }
    }
}
