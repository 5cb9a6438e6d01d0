package runthrough.scenario.coil;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runthrough.plant.CoilSource;
import runthrough.plant.check.StandIn;
import runthrough.quantity.Numbers;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Deferred;
import runthrough.scenario.grammar.Items;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.part.MixWeight;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** Reads which coils come: one kind, a mix, or a schedule from its own file. */
public final class CoilSourceReader {

    /** One kind of coil. */
    public static final Key<Values> COIL = Key.optional("coil", "the coil that comes every time", CoilKeys.COIL, "");

    /** Coils of several kinds. */
    public static final Key<Raw.Mapping> COILS =
            Key.optional("coils", "several kinds of coil", new Deferred(CoilsKeys.COILS), "");

    /** The path of a mix. */
    public static final String MIX = COILS.name() + "." + CoilsKeys.MIX.name();

    /** Shares in percent are decimal fractions; their sum may miss 1 by this much and still be meant to be 1. */
    private static final double SLACK = 1e-9;

    private final Path scenario;
    private final KnownCoils known;
    private final Context top;

    /**
     * The coils and where they are described.
     *
     * @param places one for each kind of coil, in order
     */
    public record Found(CoilSource coilSource, List<Place> places) {
        private Found withSpeedsTimes(double factor) {
            return factor == 1 ? this : new Found(coilSource.withEach(coil -> coil.withSpeedTimes(factor)), places);
        }
    }

    /**
     * A reader of the coils of one scenario.
     *
     * @param scenario file; the names of other files are relative to it
     * @param known coils, which are not read again
     * @param top of the scenario file
     */
    public CoilSourceReader(Path scenario, KnownCoils known, Context top) {
        this.scenario = scenario;
        this.known = known;
        this.top = top;
    }

    /** The coils that {@code values} describe; when there are none, problems were reported. */
    public Optional<Found> read(Values values) {
        Optional<Found> several =
                values.find(COILS).flatMap(raw -> readCoils(raw).filter(found -> isClear(raw)));
        return values.find(COIL).map(CoilSourceReader::one).or(() -> several);
    }

    /** The one kind of coil that {@code values} of {@link #COIL} describe. */
    public static CoilSource repeated(Values values) {
        return new CoilSource.Repeated(CoilKeys.coil(values, "coil"));
    }

    private static Found one(Values values) {
        return new Found(repeated(values), List.of(values.raw().place()));
    }

    private Optional<Found> readCoils(Raw.Mapping raw) {
        Context context = top.at(COILS);
        Values coils = CoilsKeys.COILS.readPartly(raw, context);
        Optional<Raw> defaults = raw.find(CoilsKeys.DEFAULTS.name());
        if (raw.find(CoilsKeys.MIX.name()).orElse(raw) instanceof Raw.Sequence mix) {
            return !Items.areFew(mix) ? Optional.empty() : mix(mix.items(), defaults, context.at(CoilsKeys.MIX));
        }
        // What each coil lacks is known only once its defaults are mended.
        if (defaults.isPresent() && !coils.has(CoilsKeys.DEFAULTS)) {
            return Optional.empty();
        }
        Raw.Mapping asInTheFile = raw.without(Set.of(CoilsKeys.SPEED_FACTOR.name()));
        double factor = coils.find(CoilsKeys.SPEED_FACTOR).orElse(1.0);
        return coils.find(CoilsKeys.SCHEDULE)
                .flatMap(name -> schedule(name, asInTheFile, entries(defaults)))
                .map(found -> found.withSpeedsTimes(factor));
    }

    /** Whether {@code coils} says one thing of which coils come. */
    private static boolean isClear(Raw.Mapping coils) {
        boolean isOneWay = coils.find(CoilsKeys.MIX.name()).isEmpty()
                || coils.find(CoilsKeys.SCHEDULE.name()).isEmpty();
        return isOneWay
                && coils.entries().stream().map(Raw.Entry::key).distinct().count()
                        == coils.entries().size();
    }

    private static List<Raw.Entry> entries(Optional<Raw> defaults) {
        return defaults.filter(raw -> raw instanceof Raw.Mapping)
                .map(raw -> ((Raw.Mapping) raw).entries())
                .orElse(List.of());
    }

    /** Reads a mix; {@code items} that are no coils, and {@code defaults} that are wrong, have been reported. */
    private static Optional<Found> mix(List<Raw> items, Optional<Raw> defaults, Context context) {
        int before = context.problems().count();
        Problems ofDefaults = new Problems();
        defaults.ifPresent(raw -> CoilsKeys.DEFAULTS.shape().read(raw, Context.top(ofDefaults)));
        boolean isOverlay = defaults.isEmpty() || defaults.get() instanceof Raw.Mapping;
        Section section = isOverlay ? CoilsKeys.WEIGHTED_COIL : CoilsKeys.SHARE;
        List<CoilSource.Share> shares = new ArrayList<>();
        List<Optional<MixWeight>> weights = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (!(items.get(i) instanceof Raw.Mapping item)) {
                weights.add(Optional.empty());
                continue;
            }
            Context here = context.item(i + 1);
            Problems found = new Problems();
            Values values = section.readPartly(CoilOverlay.over(entries(defaults), item), here.reportingTo(found));
            weights.add(weight(values));
            found.errors().stream()
                    .filter(problem -> ofDefaults.errors().stream().noneMatch(problem::isAbout))
                    .forEach(context.problems()::error);
            if (isOverlay && found.none()) {
                shares.add(new CoilSource.Share(
                        CoilKeys.coil(values, "coil " + (i + 1)),
                        values.get(CoilsKeys.WEIGHT).value()));
            }
        }
        items.stream().findFirst().ifPresent(first -> checkWeights(weights, first, context));
        boolean isGood = ofDefaults.none() && shares.size() == items.size();
        return !isGood || shares.isEmpty() || context.problems().count() > before
                ? Optional.empty()
                : Optional.of(new Found(
                        new CoilSource.Mix(shares),
                        items.stream().map(Raw::place).toList()));
    }

    /** The weight that {@code coil} gives; empty where it cannot be read or is given twice. */
    private static Optional<MixWeight> weight(Values coil) {
        long given = coil.raw().entries().stream()
                .filter(entry -> entry.key().equals(CoilsKeys.WEIGHT.name()))
                .count();
        return given == 1 ? coil.find(CoilsKeys.WEIGHT) : Optional.empty();
    }

    /**
     * A mix with what stands in for what cannot be read of its coils; empty where it is no mix, or where nothing is known of a coil.
     *
     * @param raw what stands under {@code coils}
     */
    public static Optional<CoilSource> standIn(Raw.Mapping raw, StandIn standIn) {
        Optional<Raw> defaults = raw.find(CoilsKeys.DEFAULTS.name());
        if (!isClear(raw)
                || defaults.filter(written -> !(written instanceof Raw.Mapping)).isPresent()
                || !(raw.find(CoilsKeys.MIX.name()).orElse(raw) instanceof Raw.Sequence mix)
                || !Items.areFew(mix)) {
            return Optional.empty();
        }
        List<Raw.Entry> shared =
                defaults.map(written -> ((Raw.Mapping) written).entries()).orElse(List.of());
        List<CoilSource.Share> shares = new ArrayList<>();
        for (int i = 0; i < mix.items().size(); i++) {
            String name = "coil " + (i + 1);
            if (mix.items().get(i) instanceof Raw.Mapping item) {
                Shape.readOrStandIn(CoilsKeys.WEIGHTED_COIL, CoilOverlay.over(shared, item), standIn)
                        .ifPresent(values -> shares.add(new CoilSource.Share(
                                CoilKeys.coil(values, name),
                                values.find(CoilsKeys.WEIGHT)
                                        .map(MixWeight::value)
                                        .orElse(1.0))));
            }
        }
        boolean isWhole = !shares.isEmpty() && shares.size() == mix.items().size();
        return isWhole ? Optional.of(new CoilSource.Mix(shares)) : Optional.empty();
    }

    /** Reports weights that do not agree: of all coils, or of those whose weight could be read. */
    private static void checkWeights(List<Optional<MixWeight>> weights, Raw first, Context context) {
        List<MixWeight> read = weights.stream().flatMap(Optional::stream).toList();
        long inPercent = read.stream().filter(MixWeight::isShare).count();
        double sum = read.stream().mapToDouble(MixWeight::value).sum();
        if (inPercent > 0 && inPercent < read.size()) {
            tellOfWeights("some weights are in percent and some are not", first, context);
        } else if (inPercent > 0 && read.size() == weights.size() && !(Math.abs(sum - 1) <= SLACK)) {
            tellOfWeights("the weights add up to " + Numbers.text(100 * sum, 6) + " %; must be 100 %", first, context);
        }
    }

    private static void tellOfWeights(String rule, Raw first, Context context) {
        context.problems()
                .error(
                        first.place(),
                        context.path(),
                        "",
                        rule,
                        "Give shares that add up to 100 %, or plain numbers such as 3 and 1.");
    }

    private Optional<Found> schedule(String name, Raw.Mapping raw, List<Raw.Entry> defaults) {
        Raw.Entry entry = raw.entries().stream()
                .filter(candidate -> candidate.key().equals(CoilsKeys.SCHEDULE.name()))
                .findFirst()
                .orElseThrow();
        return known.of(raw).or(() -> {
            Optional<Found> found = new ScheduleReader(scenario, defaults, top.problems())
                    .read(name, entry.value().place());
            found.ifPresent(coils -> known.remember(raw, coils));
            return found;
        });
    }
}
