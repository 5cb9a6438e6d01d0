package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Alternative;
import runthrough.plant.Bending;
import runthrough.quantity.Dimension;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.coil.CoilSourceReader;
import runthrough.scenario.grammar.Amount;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.grammar.Word;
import runthrough.scenario.grammar.WordOr;
import runthrough.scenario.part.PracticeWord;

/** What a scenario may say: the one description from which reading, schema and listing come. */
final class ScenarioKeys {

    static final Key<String> TITLE =
            Key.required("title", "the title of the report", new Text("a title"), "Kestrel Road tube line (invented)");
    /** What changed from one to the next is in {@code src/docs/formats.md}. */
    static final Key<String> FORMAT = Key.optional(
                    "format",
                    "the format that the file is written in",
                    Word.<String>choice().or("runthrough-scenario/1", "runthrough-scenario/1"),
                    "runthrough-scenario/1")
            .orElse("runthrough-scenario/1");

    static final Key<List<String>> NOTES = Key.optional(
                    "notes",
                    "what the reader of the report should know",
                    new Items<>(new Text("a text"), "texts", 0, true),
                    "Joint cycle times measured over two weeks")
            .orElse("none", List.of());
    static final Key<UnitSystem> RESULTS_IN = Key.optional(
                    "results-in",
                    "the units of the results",
                    Word.<UnitSystem>choice().or("metric", UnitSystem.METRIC).or("us", UnitSystem.US_CUSTOMARY),
                    "us")
            .orElse("metric");
    static final Key<PracticeWord> PRACTICE = Key.optional(
                    "practice",
                    "how the line gets from one coil to the next",
                    Word.<PracticeWord>choice()
                            .or("join with accumulator", PracticeWord.JOIN_WITH_ACCUMULATOR)
                            .or("join without accumulator", PracticeWord.JOIN_WITHOUT_ACCUMULATOR)
                            .or("rethread", PracticeWord.RETHREAD),
                    "rethread")
            .orElse("join with accumulator");
    static final Key<Values> ENTRY = Key.optional("entry", "the entry section", EntryKeys.ENTRY, "")
            .depending("required unless the practice is rethread");
    static final Key<Optional<Values>> ACCUMULATOR = Key.optional(
                    "accumulator",
                    "the accumulator, or the word none",
                    new WordOr<>("none", Optional.<Values>empty(), AccumulatorKeys.ACCUMULATOR.map(Optional::of)),
                    "{capacity: 60 m}")
            .depending("required when the practice is join with accumulator");
    static final Key<Values> PROCESS =
            Key.required("process", "the process section", ProcessKeys.PROCESS, "{speed: 45 m/min}");
    static final Key<Values> CHANGE =
            Key.required("coil-change", "the work of a coil change", ChangeKeys.CHANGE, "{join: [{join strip: 90 s}]}");
    static final Key<Values> RUN = Key.optional("run", "how long and how often to run", RunKeys.RUN, "");

    static final Key<List<AlternativeKeys.Written>> ALTERNATIVES = Key.optional(
            "alternatives",
            "other ways to build or to run the line, to be compared; each a name with the values that it changes, by"
                    + " their paths",
            new AlternativeKeys(),
            "{second uncoiler: {entry.uncoilers: 2}, quicker weld: {coil-change.join.weld: 20 s}}");
    static final Key<String> TODAY = Key.optional(
                    "today",
                    "the name of the alternative that the others are compared with",
                    new Text("the name of an alternative"),
                    "rethread")
            .orElse(Alternative.AS_WRITTEN + ", the scenario without any change", Alternative.AS_WRITTEN);

    private static final Key<Double> MODULUS =
            Key.required("modulus", "the modulus of elasticity", Amount.positive(Dimension.STRESS), "210 GPa");
    private static final Key<Double> YIELD =
            Key.required("yield", "the yield stress", Amount.positive(Dimension.STRESS), "280 MPa");
    private static final Key<Double> RADIUS =
            Key.required("radius", "the smallest radius of roll or loop", Amount.positive(Dimension.LENGTH), "400 mm");
    static final Key<Values> BENDING = Key.optional(
            "bending",
            "what the strip is bent over, to report whether it stays elastic",
            Section.of("bending", "reported, not simulated", MODULUS, YIELD, RADIUS),
            "");

    static final Section SCENARIO = Section.of(
                    "",
                    "a strip line and how to run it",
                    TITLE,
                    FORMAT,
                    NOTES,
                    RESULTS_IN,
                    PRACTICE,
                    CoilSourceReader.COIL,
                    CoilSourceReader.COILS,
                    ENTRY,
                    ACCUMULATOR,
                    PROCESS,
                    CHANGE,
                    BENDING,
                    RUN,
                    ALTERNATIVES,
                    TODAY,
                    HandoverKeys.DOCUMENT,
                    HandoverKeys.DRIVE,
                    HandoverKeys.ORIGINS,
                    HandoverKeys.MONEY)
            .with(Ways.oneOf(
                    "which coils come", Way.of(CoilSourceReader.COIL.name()), Way.of(CoilSourceReader.COILS.name())));

    private ScenarioKeys() {}

    static Bending bending(Values values) {
        return new Bending(values.get(MODULUS), values.get(YIELD), values.get(RADIUS));
    }
}
