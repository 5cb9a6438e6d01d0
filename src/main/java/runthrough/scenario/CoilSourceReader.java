package runthrough.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.check.StandIn;
import runthrough.quantity.Numbers;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Shape;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.part.MixWeight;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Raw;

/** Reads which coils come: one kind, a mix, or a schedule from its own file. */
final class CoilSourceReader {

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
    record Found(CoilSource coilSource, List<Place> places) {
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
    CoilSourceReader(Path scenario, KnownCoils known, Context top) {
        this.scenario = scenario;
        this.known = known;
        this.top = top;
    }

    /** The coils that {@code values} describe; when there are none, problems were reported. */
    Optional<Found> read(Values values) {
        if (values.has(ScenarioKeys.COIL)) {
            Values only = values.get(ScenarioKeys.COIL);
            Coil coil = CoilKeys.coil(only, "coil");
            return Optional.of(
                    new Found(new CoilSource.Repeated(coil), List.of(only.raw().place())));
        }
        return values.find(ScenarioKeys.COILS).flatMap(this::readCoils);
    }

    private Optional<Found> readCoils(Raw.Mapping raw) {
        Context context = top.at(ScenarioKeys.COILS);
        Values coils = CoilsKeys.COILS.readPartly(raw, context);
        boolean defaultsAreWrong = !coils.has(CoilsKeys.DEFAULTS)
                && raw.entries().stream().anyMatch(entry -> entry.key().equals(CoilsKeys.DEFAULTS.name()));
        if (defaultsAreWrong) {
            // What each coil lacks is known only once its defaults are mended.
            return Optional.empty();
        }
        List<Raw.Entry> defaults = coils.find(CoilsKeys.DEFAULTS)
                .map(values -> values.raw().entries())
                .orElse(List.of());
        if (coils.has(CoilsKeys.MIX)) {
            return mix(coils.get(CoilsKeys.MIX), defaults, context.at(CoilsKeys.MIX));
        }
        Raw.Mapping asInTheFile = raw.without(Set.of(CoilsKeys.SPEED_FACTOR.name()));
        return coils.find(CoilsKeys.SCHEDULE)
                .flatMap(name -> schedule(name, asInTheFile, defaults))
                .map(found -> found.withSpeedsTimes(coils.get(CoilsKeys.SPEED_FACTOR)));
    }

    private Optional<Found> mix(List<Raw.Mapping> items, List<Raw.Entry> defaults, Context context) {
        List<CoilSource.Share> shares = new ArrayList<>();
        List<MixWeight> weights = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Raw.Mapping item = CoilOverlay.over(defaults, items.get(i));
            String name = "coil " + (i + 1);
            CoilsKeys.WEIGHTED_COIL.read(item, context.item(i + 1)).ifPresent(values -> {
                MixWeight weight = values.get(CoilsKeys.WEIGHT);
                weights.add(weight);
                shares.add(new CoilSource.Share(CoilKeys.coil(values, name), weight.value()));
            });
        }
        if (shares.size() < items.size() || !weightsAgree(weights, items.get(0), context)) {
            return Optional.empty();
        }
        return Optional.of(new Found(
                new CoilSource.Mix(shares),
                items.stream().map(Raw.Mapping::place).toList()));
    }

    /**
     * A mix with what stands in for what cannot be read of its coils; empty where it is no mix, or where nothing is known of a coil.
     *
     * @param raw what stands under {@code coils}
     */
    static Optional<CoilSource> standIn(Raw.Mapping raw, StandIn standIn) {
        Optional<Raw> defaults = raw.find(CoilsKeys.DEFAULTS.name());
        if (defaults.filter(written -> !(written instanceof Raw.Mapping)).isPresent()
                || !(raw.find(CoilsKeys.MIX.name()).orElse(raw) instanceof Raw.Sequence mix)) {
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

    private static boolean weightsAgree(List<MixWeight> weights, Raw.Mapping first, Context context) {
        long inPercent = weights.stream().filter(MixWeight::isShare).count();
        if (inPercent == 0) {
            return true;
        }
        String rule;
        if (inPercent < weights.size()) {
            rule = "some weights are in percent and some are not";
        } else {
            double sum = weights.stream().mapToDouble(MixWeight::value).sum();
            if (Math.abs(sum - 1) <= SLACK) {
                return true;
            }
            rule = "the weights add up to " + Numbers.text(100 * sum, 6) + " %; must be 100 %";
        }
        context.problems()
                .error(
                        first.place(),
                        context.path(),
                        "",
                        rule,
                        "Give shares that add up to 100 %, or plain numbers such as 3 and 1.");
        return false;
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
