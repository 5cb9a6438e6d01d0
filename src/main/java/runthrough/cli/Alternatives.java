package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import runthrough.cli.terminal.BadInputException;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.scenario.AlternativesReading;
import runthrough.scenario.ScenarioReading;
import runthrough.study.comparison.Comparison;

/**
 * The alternatives of a scenario that can be run.
 *
 * @param all of them, the scenario as written first
 * @param notRun those that describe a line that cannot be run
 * @param today name of the one that the scenario holds the others against
 * @param warnings one line each, but for those of the scenario as written
 */
record Alternatives(List<Alternative> all, List<Comparison.NotRun> notRun, String today, List<String> warnings) {

    Alternatives {
        all = List.copyOf(all);
        notRun = List.copyOf(notRun);
        warnings = List.copyOf(warnings);
    }

    /**
     * Those of {@code asked}, each with what the command line says otherwise; all of them can be run.
     *
     * @throws BadInputException with everything that is wrong with any of them
     */
    static Alternatives of(Scenario asked, RunOverrides overrides) {
        return of(asked, overrides, false);
    }

    /**
     * Those of {@code asked} that can be run, and which cannot.
     *
     * @throws BadInputException when one does not describe a line, or only the scenario as written can be run
     */
    static Alternatives runnable(Scenario asked, RunOverrides overrides) {
        return of(asked, overrides, true);
    }

    private static Alternatives of(Scenario asked, RunOverrides overrides, boolean withoutRefused) {
        if (!(asked.file().with(asked.settings()) instanceof ScenarioReading.Accepted written)) {
            throw new IllegalStateException("the scenario was accepted before");
        }
        AlternativesReading reading = asked.file().alternatives(asked.settings(), written);
        List<AlternativesReading.Refused> refused = withoutRefused ? reading.leftOut() : List.of();
        List<String> errors = new ArrayList<>(Scenario.texts(withoutRefused ? reading.hindering() : reading.problems())
                .toList());
        reading.further().ifPresent(errors::add);
        List<Alternative> all = new ArrayList<>(List.of(Alternative.asWritten(asked.request())));
        reading.alternatives().stream().skip(1).forEach(one -> {
            SimulationRequest request = one.request();
            SimulationRequest changed = request.with(overrides.plan(request.run()));
            newErrors(request, changed)
                    .map(message -> "alternative \"" + one.name() + "\": " + Scenario.onCommandLine(message))
                    .forEach(errors::add);
            all.add(one.with(changed.with(overrides.units(changed.resultsIn()))));
        });
        if (!errors.isEmpty()) {
            Scenario.texts(reading.warnings()).map(Scenario::asWarning).forEach(errors::add);
            throw new BadInputException(errors);
        }
        return new Alternatives(
                all,
                refused.stream()
                        .map(one -> new Comparison.NotRun(one.name(), one.why()))
                        .toList(),
                reading.today(),
                Scenario.texts(reading.warnings()).toList());
    }

    private static Stream<Message> newErrors(SimulationRequest request, SimulationRequest changed) {
        List<Message> before = LineCheck.check(request);
        return LineCheck.check(changed).stream().filter(Message::isError).filter(message -> !before.contains(message));
    }
}
