package runthrough.cli;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.plant.Alternative;
import runthrough.report.comparison.ComparisonAnswer;
import runthrough.scenario.source.Nearest;
import runthrough.study.comparison.ComparisonStudy;

/** Which alternative is worth what? */
@Command(
        name = "compare",
        description =
                "Runs the alternatives of a scenario under the same random numbers and compares each with the one called today:"
                        + " share run through, stops, lost time, output, scrap, crew time at the joint; and marks the differences that are"
                        + " statistically significant.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough compare scenarios/stamping-rethread.yaml",
            "  runthrough compare my-line.yaml --today \"second uncoiler\" --replications 200",
            "  runthrough compare my-line.yaml --set run.hours-per-year=6000h \\",
            "      --json --no-report > compare.json"
        })
final class CompareCommand extends StudyCommand {
    private final Environment environment;

    @Option(
            names = "--today",
            paramLabel = "NAME",
            description =
                    "The alternative that the others are compared with, instead of the one that the scenario names; \""
                            + Alternative.AS_WRITTEN + "\" is the scenario without any change.")
    private @Nullable String today;

    CompareCommand(Environment environment) {
        super(environment, "compare");
        this.environment = environment;
    }

    @Override
    Study study(Scenario asked, double target) {
        overrides().alternative().ifPresent(name -> {
            throw new BadInputException("--alternative = " + name
                    + "; compare runs all alternatives. To compare the others with it, give --today \"" + name + "\".");
        });
        Alternatives alternatives = Alternatives.runnable(asked, overrides());
        alternatives.warnings().stream().map(Scenario::asWarning).forEach(environment.err()::println);
        alternatives.notRun().stream()
                .filter(one -> one.name().equals(today == null ? "" : today.strip()))
                .findFirst()
                .ifPresent(one -> {
                    throw new BadInputException("--today = " + one.name() + "; cannot be run: " + one.why() + ".");
                });
        Alternative reference = named(today == null ? alternatives.today() : today.strip(), asked, alternatives.all());
        ComparisonStudy study = new ComparisonStudy(
                reference,
                alternatives.all().stream()
                        .filter(one -> !one.equals(reference))
                        .toList(),
                alternatives.notRun(),
                target);
        return (threads, listener, warnings, provenance) -> ComparisonAnswer.of(
                study.run(threads, listener),
                asked.request(),
                Stream.concat(warnings.stream(), alternatives.warnings().stream())
                        .toList(),
                provenance);
    }

    private static Alternative named(String name, Scenario asked, List<Alternative> all) {
        List<String> names = all.stream().map(Alternative::name).toList();
        return all.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new BadInputException("--today = " + name + "; "
                        + (asked.file().alternatives().contains(name)
                                ? "changes nothing of what is set for this run. Give --today \""
                                        + Alternative.AS_WRITTEN + "\"."
                                : "is not an alternative of this scenario. " + Nearest.remedy(name, names))));
    }
}
