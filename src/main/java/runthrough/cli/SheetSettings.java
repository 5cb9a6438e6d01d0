package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.cli.terminal.BadInputException;
import runthrough.plant.CoilChange;
import runthrough.plant.DerivedDistributions;
import runthrough.plant.Distribution;
import runthrough.plant.WorkElement;
import runthrough.report.described.DistributionYaml;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problems;
import runthrough.study.fitting.ElementFits;
import runthrough.study.fitting.FittingStudy;
import runthrough.study.times.SheetStatistics;
import runthrough.timestudy.TimedElement;
import runthrough.timestudy.TimedElement.Part;

/**
 * What a time-study sheet says of the work of a scenario: for each of its elements the distribution recommended for it.
 *
 * @param settings in the place of what the scenario says
 * @param warnings one line each
 */
record SheetSettings(List<Setting> settings, List<String> warnings) {
    private static final String OPTION = "--times";
    /** That of the command {@code times} when none is given. */
    private static final long SEED = 1;

    SheetSettings {
        settings = List.copyOf(settings);
        warnings = List.copyOf(warnings);
    }

    /** An element of the scenario. */
    private record Place(Part part, WorkElement element) {
        String path() {
            return "coil-change." + part.word() + "." + element.name();
        }

        boolean isCalled(TimedElement timed) {
            return element.name().equalsIgnoreCase(timed.name())
                    && timed.part().map(wanted -> wanted == part).orElse(true);
        }

        String label() {
            return part.word() + ": " + element.name();
        }
    }

    /**
     * The distributions of {@code measured} for the elements of {@code change} that have the same names.
     *
     * @throws BadInputException when the sheet has elements that the scenario has not
     */
    static SheetSettings of(MeasuredTimes measured, CoilChange change) {
        List<Place> places = Stream.of(Part.values())
                .flatMap(part -> list(change, part).stream().map(element -> new Place(part, element)))
                .toList();
        List<String> unknown = measured.sheet().elements().stream()
                .filter(timed -> find(places, timed).isEmpty())
                .map(timed -> unknown(measured, timed, places))
                .toList();
        if (!unknown.isEmpty()) {
            throw new BadInputException(unknown);
        }
        List<Setting> settings = new ArrayList<>();
        for (ElementFits fits : new FittingStudy(SEED).run(SheetStatistics.of(measured.sheet(), SEED))) {
            Place place = find(places, fits.times().element()).orElseThrow();
            settings.addAll(settings(place, fits.distribution()));
        }
        List<String> warnings = new ArrayList<>(measured.warnings());
        places.stream()
                .filter(place -> measured.sheet().elements().stream().noneMatch(place::isCalled))
                .forEach(place -> warnings.add(measured.sheet().file() + " has no times of " + place.label()
                        + "; they stay as the scenario says."));
        return new SheetSettings(settings, warnings);
    }

    private static List<WorkElement> list(CoilChange change, Part part) {
        return switch (part) {
            case PREPARE -> change.prepare();
            case TAIL -> change.tail();
            case JOIN -> change.join();
        };
    }

    private static Optional<Place> find(List<Place> places, TimedElement timed) {
        return places.stream().filter(place -> place.isCalled(timed)).findFirst();
    }

    private static String unknown(MeasuredTimes measured, TimedElement timed, List<Place> places) {
        List<String> labels = places.stream().map(Place::label).toList();
        return measured.sheet().file() + ":1 " + timed.label() + "; the scenario has no such work element. "
                + Nearest.to(timed.label(), labels)
                        .map(nearest -> "Did you mean " + nearest + "?")
                        .orElse("It has " + String.join(", ", labels) + ".");
    }

    /** Sets the kind of distribution, which leaves alone when the element is done; and takes away a shift that is no longer meant. */
    private static List<Setting> settings(Place place, Distribution distribution) {
        Map<String, String> keys = DistributionYaml.keys(distribution);
        boolean hadShift = place.element().time().drawn() instanceof DerivedDistributions.Shifted;
        if (hadShift) {
            keys.putIfAbsent("shift", "0 s");
        }
        Problems none = new Problems();
        return keys.entrySet().stream()
                .flatMap(key ->
                        Setting.written(place.path() + "." + key.getKey(), key.getValue(), OPTION, none).stream())
                .toList();
    }
}
