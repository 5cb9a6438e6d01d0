package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.Alternative;
import runthrough.scenario.AlternativesReading;
import runthrough.scenario.ScenarioReading;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonStudy;
import runthrough.web.job.Refusal;

/**
 * The alternatives that a scenario names.
 *
 * @param all that can be run, the line as written first, with results in the units of the page
 * @param notRun those that describe a line that cannot be run
 * @param faults what is wrong so that nothing can be compared, a line each
 * @param today name of the one that the others are compared with
 * @param warnings but for those of the line as written
 */
record PageAlternatives(
        List<Alternative> all,
        List<Comparison.NotRun> notRun,
        List<String> faults,
        String today,
        List<String> warnings) {
    static final String NONE =
            "The file names no other ways to build or to run the line (alternatives:), so nothing is compared.";

    PageAlternatives {
        all = List.copyOf(all);
        notRun = List.copyOf(notRun);
        faults = List.copyOf(faults);
        warnings = List.copyOf(warnings);
    }

    /** Those of {@code draft}, which can be run. */
    static PageAlternatives of(PageScenario draft) {
        ScenarioReading.Accepted written =
                (ScenarioReading.Accepted) draft.file().with(List.of());
        AlternativesReading reading = draft.file().alternatives(List.of(), written);
        List<Alternative> all = new ArrayList<>(List.of(Alternative.asWritten(draft.asked())));
        reading.alternatives().stream()
                .skip(1)
                .map(one -> one.with(one.request().with(draft.asked().resultsIn())))
                .forEach(all::add);
        return new PageAlternatives(
                all,
                reading.leftOut().stream()
                        .map(one -> new Comparison.NotRun(one.name(), one.why()))
                        .toList(),
                Stream.concat(reading.hindering().stream().map(PageScenario::said), reading.further().stream())
                        .toList(),
                reading.today(),
                reading.warnings().stream().map(PageScenario::said).toList());
    }

    /** Refuses to go on where something is wrong with them. */
    PageAlternatives checked() {
        if (!faults.isEmpty()) {
            throw new Refusal(422, String.join("\n", faults));
        }
        return this;
    }

    /** Compares them; empty where there are none to compare. */
    Optional<ComparisonStudy> study(double target) {
        Optional<Alternative> reference =
                all.stream().filter(one -> one.name().equals(today)).findFirst();
        return reference
                .filter(any -> all.size() > 1 && faults.isEmpty())
                .map(one -> new ComparisonStudy(
                        one, all.stream().filter(other -> !other.equals(one)).toList(), notRun, target));
    }
}
