package runthrough.scenario.coil;

import java.util.List;
import java.util.stream.Stream;
import runthrough.scenario.grammar.Deferred;
import runthrough.scenario.grammar.Followed;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.PlainNumber;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Text;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.grammar.Ways.Way;
import runthrough.scenario.part.MixShares;
import runthrough.scenario.part.MixWeight;
import runthrough.scenario.source.Raw;

/** What may be said of coils of several kinds: a random mix, or a schedule in a file of its own. */
final class CoilsKeys {

    static final Key<MixWeight> WEIGHT = Key.required(
            MixShares.WEIGHT,
            "how often this coil comes, as a share of all or relative to the others; where shares in percent are changed,"
                    + " as with --set, the others keep their proportions and make room",
            new MixWeight.Shape(),
            "30 %");

    private static final List<Key<?>> COIL_KEYS_OPTIONAL =
            CoilKeys.COIL.keys().stream().<Key<?>>map(Key::madeOptional).toList();

    /** What coils have in common, so that it need not be said of each. */
    private static final Section SHARED = Section.of(
            "coils.defaults", "what holds for every coil that does not say otherwise", keys(COIL_KEYS_OPTIONAL));

    /** One coil of a mix as an editor sees it: what it leaves out may stand among the defaults. */
    static final Section SHARE = Section.of(
            "coils.mix",
            "coils drawn at random, each with its weight; the other keys are those of coil",
            keys(Stream.concat(Stream.of(WEIGHT), COIL_KEYS_OPTIONAL.stream()).toList()));

    /** One coil of a mix in full. */
    static final Section WEIGHTED_COIL = new Section(
            "coils.mix",
            SHARE.meaning(),
            Stream.concat(Stream.of(WEIGHT), CoilKeys.COIL.keys().stream()).toList(),
            CoilKeys.COIL.ways(),
            CoilKeys.COIL.orders());

    static final Key<Values> DEFAULTS = Key.optional(
            "defaults",
            "what holds for every coil that does not say otherwise",
            new Followed<>(SHARED, followed(SHARED)),
            "");
    static final Key<List<Raw.Mapping>> MIX = Key.optional(
            "mix",
            "the kinds of coil with their weights",
            new Items<>(new Followed<>(new Deferred(SHARE), followed(SHARE)), "coils with their weights", 1, false),
            "");
    static final Key<String> SCHEDULE = Key.optional(
            "schedule",
            "the CSV file that lists the coils in order, beside the scenario file; its columns are named like the keys"
                    + " of coil with the unit in brackets, as in width [mm]",
            new Text("the name of a CSV file"),
            "coils.csv");

    static final Key<Double> SPEED_FACTOR = Key.optional(
                    "process-speed-factor",
                    "what the process speeds in the schedule are multiplied by; to try other speeds than those of the file",
                    new PlainNumber(Range.POSITIVE),
                    "0.9")
            .orElse("1", 1.0);

    static final Section COILS = Section.of("coils", "several kinds of coil", MIX, SCHEDULE, SPEED_FACTOR, DEFAULTS)
            .with(Ways.oneOf(
                    "which coils come",
                    Way.of(MIX.name()),
                    Way.of(SCHEDULE.name()).with(SPEED_FACTOR.name())));

    private CoilsKeys() {}

    /** {@code section} for those who follow a path into it: what it does not say, another part of the file may. */
    private static Section followed(Section section) {
        return new Section(
                section.name(),
                section.meaning(),
                section.keys().stream().<Key<?>>map(Key::withoutDefault).toList(),
                CoilKeys.COIL.ways(),
                List.of());
    }

    private static Key<?>[] keys(List<Key<?>> keys) {
        return keys.toArray(Key<?>[]::new);
    }
}
