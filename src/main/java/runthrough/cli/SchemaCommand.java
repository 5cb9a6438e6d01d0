package runthrough.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import runthrough.scenario.ScenarioSchema;

/** Prints the JSON Schema of scenarios. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of scenarios, with which editors complete and check them.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough schema > scenario.schema.json",
            "  and begin each scenario beside it with:",
            "  # yaml-language-server: $schema=scenario.schema.json"
        })
final class SchemaCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    SchemaCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        surroundings.out().print(ScenarioSchema.text());
        surroundings.out().flush();
        return ExitCode.DONE;
    }
}
