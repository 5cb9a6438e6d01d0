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

/**
 * The alternatives of a scenario, all of which can be run.
 *
 * @param all the scenario as written first
 * @param today name of the one that the scenario holds the others against
 * @param warnings one line each, but for those of the scenario as written
 */
record Alternatives(List<Alternative> all, String today, List<String> warnings) {

    Alternatives {
        all = List.copyOf(all);
        warnings = List.copyOf(warnings);
    }

    /**
     * Those of {@code asked}, each with what the command line says otherwise.
     *
     * @throws BadInputException with everything that is wrong with any of them
     */
    static Alternatives of(Scenario asked, RunOverrides overrides) {
        if (!(asked.file().with(asked.settings()) instanceof ScenarioReading.Accepted written)) {
            throw new IllegalStateException("the scenario was accepted before");
        }
        AlternativesReading reading = asked.file().alternatives(asked.settings(), written);
        List<String> errors = new ArrayList<>(Scenario.texts(reading.problems()).toList());
        List<Alternative> all = new ArrayList<>(List.of(Alternative.asWritten(asked.request())));
        reading.alternatives().stream().skip(1).forEach(one -> {
            SimulationRequest request = one.request();
            SimulationRequest changed = request.with(overrides.plan(request.run()));
            newErrors(request, changed)
                    .map(message -> "alternative \"" + one.name() + "\": " + Scenario.onCommandLine(message))
                    .forEach(errors::add);
            all.add(one.with(new SimulationRequest(
                    changed.title(),
                    changed.notes(),
                    changed.line(),
                    changed.run(),
                    overrides.units(changed.resultsIn()))));
        });
        if (!errors.isEmpty()) {
            throw new BadInputException(errors);
        }
        return new Alternatives(
                all, reading.today(), Scenario.texts(reading.warnings()).toList());
    }

    private static Stream<Message> newErrors(SimulationRequest request, SimulationRequest changed) {
        List<Message> before = LineCheck.check(request);
        return LineCheck.check(changed).stream().filter(Message::isError).filter(message -> !before.contains(message));
    }
}
