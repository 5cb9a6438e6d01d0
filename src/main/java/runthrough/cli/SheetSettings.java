package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import runthrough.cli.terminal.BadInputException;
import runthrough.plant.CoilChange;
import runthrough.plant.DerivedDistributions;
import runthrough.plant.Distribution;
import runthrough.report.described.DistributionYaml;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Problems;
import runthrough.scenario.times.SheetMatch;
import runthrough.study.StudyListener;
import runthrough.study.fitting.ElementFits;
import runthrough.study.fitting.FittingStudy;
import runthrough.study.times.SheetStatistics;

/**
 * What a time-study sheet says of the work of a scenario: for each of its elements the distribution recommended for it.
 *
 * @param settings in the place of what the scenario says
 * @param warnings one line each
 */
record SheetSettings(List<Setting> settings, List<String> warnings) {
    /** That of the command {@code times} when none is given. */
    private static final long SEED = 1;

    SheetSettings {
        settings = List.copyOf(settings);
        warnings = List.copyOf(warnings);
    }

    /**
     * The distributions of {@code measured} for the elements of {@code change} that have the same names.
     *
     * @throws BadInputException when the sheet has elements that the scenario has not
     */
    static SheetSettings of(MeasuredTimes measured, CoilChange change) {
        SheetMatch match = SheetMatch.of(measured.sheet(), change);
        if (!match.unknown().isEmpty()) {
            throw new BadInputException(match.unknown());
        }
        List<Setting> settings = new ArrayList<>();
        SheetStatistics statistics = SheetStatistics.of(measured.sheet(), SEED);
        for (ElementFits fits : new FittingStudy(SEED).run(statistics, StudyListener.NONE)) {
            SheetMatch.Place place = match.place(fits.times().element()).orElseThrow();
            settings.addAll(settings(place, fits.distribution()));
        }
        List<String> warnings = new ArrayList<>(measured.warnings());
        warnings.addAll(match.untimed());
        return new SheetSettings(settings, warnings);
    }

    /** Sets the kind of distribution, which leaves alone when the element is done; and takes away a shift that is no longer meant. */
    private static List<Setting> settings(SheetMatch.Place place, Distribution distribution) {
        Map<String, String> keys = DistributionYaml.keys(distribution);
        boolean hadShift = place.element().time().drawn() instanceof DerivedDistributions.Shifted;
        if (hadShift) {
            keys.putIfAbsent("shift", "0 s");
        }
        Problems none = new Problems();
        return keys.entrySet().stream()
                .flatMap(key ->
                        Setting.written(place.path() + "." + key.getKey(), key.getValue(), Setting.MEASURED, none)
                                .stream())
                .toList();
    }
}
