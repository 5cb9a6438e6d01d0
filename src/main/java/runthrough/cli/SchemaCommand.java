package runthrough.cli;

import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.Choice;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.report.sweep.JsonSweep;
import runthrough.scenario.ScenarioSchema;

/** Prints the JSON Schema of what goes in or comes out. */
@Command(
        name = "schema",
        description =
                "Prints the JSON Schema of scenarios, with which editors complete and check them; or that of the "
                        + "answer that run (verdict), times or a study gives as JSON, with the meaning and unit of every member.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, "2:there is no such schema"},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough schema > scenario.schema.json",
            "  # begin each scenario beside it with this line:",
            "  # yaml-language-server: $schema=scenario.schema.json",
            "  runthrough schema verdict",
            "  runthrough schema size > size.schema.json"
        })
final class SchemaCommand implements Callable<Integer> {
    private final Environment environment;

    @Parameters(
            paramLabel = "OF",
            arity = "0..1",
            converter = Documents.class,
            completionCandidates = Documents.class,
            description = "One of ${COMPLETION-CANDIDATES}; by default scenario.")
    private Supplier<String> document = ScenarioSchema::text;

    SchemaCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        environment.out().print(document.get());
        environment.out().flush();
        return ExitCode.DONE;
    }

    /** What has a schema: scenarios, verdicts, the answers of all studies, and the lines of a sweep. */
    static final class Documents extends Choice<Supplier<String>> {
        Documents() {
            or("scenario", ScenarioSchema::text);
            StudySchemas.studies()
                    .forEach(study -> or(study, () -> StudySchemas.of(study).orElseThrow()));
            or("sweep", JsonSweep::schema);
        }
    }
}
