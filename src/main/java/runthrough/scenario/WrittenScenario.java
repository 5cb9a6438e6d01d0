package runthrough.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import runthrough.plant.LineFigure;
import runthrough.scenario.coil.CoilSourceReader;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.part.MixShares;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** What a scenario says, not yet understood, and what it says with settings in it. */
record WrittenScenario(Raw root) {

    /**
     * The scenario with those of {@code settings} that {@linkplain #holding hold}, without origins of what is no longer there, and with shares
     * that agree.
     *
     * @param figures takes those of figures of the line, which no scenario says
     * @param problems takes what is wrong with {@code settings}
     */
    WrittenScenario with(List<Setting> settings, List<Setting> figures, Problems problems) {
        List<Setting> holding = holding(settings);
        return applied(holding, figures, problems).agreeing(holding).withoutOriginsOfWhatWent(this, holding);
    }

    /** The scenario with {@code settings} in it, whatever comes of that; otherwise as {@link #with}. */
    WrittenScenario applied(List<Setting> settings, List<Setting> figures, Problems problems) {
        Raw changed = root;
        Set<String> seen = new HashSet<>();
        for (Setting setting : settings) {
            Optional<LineFigure> figure = LineFigure.called(setting.path());
            Optional<Route> route =
                    figure.isPresent() ? Optional.empty() : Route.find(ScenarioKeys.SCENARIO, changed, setting.path());
            if (figure.isEmpty() && route.isEmpty()) {
                new Inputs(changed).refuseUnknown(setting, problems);
            } else if (!seen.add(route.map(Route::path).orElse(setting.path())) && !setting.isAddition()) {
                problems.error(
                        setting.place(), setting.path(), setting.value().shown(), "is set twice", "Leave out one.");
            }
            figure.ifPresent(any -> figures.add(setting));
            if (route.isPresent()) {
                changed = route.get().part().put().apply(setting.value());
            }
        }
        return new WrittenScenario(changed);
    }

    private WrittenScenario applied(List<Setting> settings) {
        return applied(settings, new ArrayList<>(), new Problems());
    }

    /** {@code settings} but for the measured times of {@link #givenUp} elements. */
    List<Setting> holding(List<Setting> settings) {
        Set<String> givenUp = givenUp(settings);
        return givenUp.isEmpty()
                ? settings
                : settings.stream()
                        .filter(setting -> !setting.isMeasured() || !givenUp.contains(setting.around()))
                        .toList();
    }

    /**
     * Paths of the work elements of which {@code settings} hold measured times, and give another time besides: it goes by what the
     * scenario and these say.
     */
    Set<String> givenUp(List<Setting> settings) {
        List<Setting> measured = settings.stream().filter(Setting::isMeasured).toList();
        List<Setting> others =
                settings.stream().filter(setting -> !setting.isMeasured()).toList();
        if (measured.isEmpty() || others.isEmpty()) {
            return Set.of();
        }
        WrittenScenario timed = applied(measured);
        WrittenScenario all = timed.applied(others);
        // Of the scenario's own time for it, which the measured one replaced.
        Set<String> ofOwnTime = others.stream()
                .map(Setting::path)
                .filter(path -> isWritten(path) && !timed.isWritten(path))
                .map(this::usualPath)
                .collect(Collectors.toSet());
        Set<String> set = others.stream().map(Setting::path).map(all::usualPath).collect(Collectors.toSet());
        return measured.stream()
                .filter(time -> set.contains(all.usualPath(time.path()))
                        || (all.isThere(time.path()) && !all.isWritten(time.path()))
                        || ofOwnTime.stream().anyMatch(path -> path.startsWith(usualPath(time.around()) + ".")))
                .map(Setting::around)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** {@code own} settings, and before them those of {@code others} that none of them replaces, in whatever way it names the part. */
    List<Setting> replacing(List<Setting> own, List<Setting> others) {
        WrittenScenario changed = applied(others);
        Set<String> replaced =
                own.stream().map(Setting::path).map(changed::usualPath).collect(Collectors.toSet());
        List<Setting> both = new ArrayList<>(others);
        both.removeIf(other -> replaced.contains(changed.usualPath(other.path())));
        both.addAll(own);
        return both;
    }

    /** The path that is usual for the part at {@code path}; {@code path} itself where there is none. */
    String usualPath(String path) {
        return Route.find(ScenarioKeys.SCENARIO, root, path).map(Route::path).orElse(path);
    }

    private boolean isThere(String path) {
        return Route.find(ScenarioKeys.SCENARIO, root, path).isPresent();
    }

    private boolean isWritten(String path) {
        return Route.find(ScenarioKeys.SCENARIO, root, path)
                .filter(route -> route.part().written().isPresent())
                .isPresent();
    }

    /** With the shares of a mix that {@code settings} have set, and others that made room for them. */
    private WrittenScenario agreeing(List<Setting> settings) {
        // What the scenario itself sets, as an alternative does, comes before what is set besides, in whatever order
        // they
        // are applied.
        Map<String, Set<Raw>> shares = settings.stream()
                .sorted(Comparator.comparing(Setting::isBesides))
                .collect(Collectors.groupingBy(
                        setting -> setting.place().file(),
                        LinkedHashMap::new,
                        Collectors.flatMapping(
                                setting -> MixShares.in(setting.path(), setting.value()).stream(),
                                Collectors.toSet())));
        return withRoom(shares.values());
    }

    /**
     * With other shares of a mix that made room for those that were set.
     *
     * @param set those that were set at once together, the last ones last
     */
    WrittenScenario withRoom(Collection<Set<Raw>> set) {
        List<Set<Raw>> any = set.stream().filter(group -> !group.isEmpty()).toList();
        return any.isEmpty()
                ? this
                : Route.find(ScenarioKeys.SCENARIO, root, CoilSourceReader.MIX)
                        .map(Route::part)
                        .filter(mix -> mix.written()
                                .filter(Raw.Sequence.class::isInstance)
                                .isPresent())
                        .map(mix -> mix.put()
                                .apply(MixShares.withRoom(
                                        (Raw.Sequence) mix.written().orElseThrow(), any)))
                        .map(WrittenScenario::new)
                        .orElse(this);
    }

    private WrittenScenario withoutOriginsOfWhatWent(WrittenScenario before, List<Setting> settings) {
        boolean maybeLost = settings.stream().anyMatch(WrittenScenario::mayRemove);
        if (!maybeLost || !(root instanceof Raw.Mapping mapping)) {
            return this;
        }
        String key = HandoverKeys.ORIGINS.name();
        return mapping.findMapping(key)
                .map(origins -> mapping.with(
                        key,
                        origins.without(origins.entries().stream()
                                .map(Raw.Entry::key)
                                .filter(path -> before.isThere(path) && !isThere(path))
                                .collect(Collectors.toSet()))))
                .map(WrittenScenario::new)
                .orElse(this);
    }

    /** Whether with {@code setting} an item may go that has a name, or its name. */
    private static boolean mayRemove(Setting setting) {
        return !(setting.value() instanceof Raw.Scalar)
                || setting.path().strip().endsWith(".name");
    }
}
