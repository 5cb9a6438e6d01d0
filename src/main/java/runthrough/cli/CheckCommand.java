package runthrough.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;

/** Reads and checks scenarios without running them. */
@Command(
        name = "check",
        description = "Reads and checks scenarios and their alternatives, and prints every error and warning. Simulates"
                + " nothing.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all can be run, though perhaps with warnings",
            ExitCode.INTERNAL_ERROR_MEANS,
            "2:one of them cannot be run"
        },
        footerHeading = "%nExamples:%n",
        footer = {"  runthrough check my-line.yaml", "  runthrough check scenarios/*.yaml"})
final class CheckCommand implements Callable<Integer> {
    private final Environment environment;

    @Parameters(paramLabel = "SCENARIO", arity = "1..*", description = "The scenario files, or - for standard input.")
    private List<Path> scenarios;

    @Spec
    private CommandSpec spec;

    CheckCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        long refused = scenarios.stream().filter(scenario -> !isGood(scenario)).count();
        return refused == 0 ? ExitCode.DONE : ExitCode.BAD_INPUT;
    }

    private boolean isGood(Path file) {
        // Errors are the answer of this command; they stay when it is to be quiet.
        PrintWriter err = spec.commandLine().getErr();
        List<String> warnings = new ArrayList<>();
        try {
            Scenario scenario = Scenario.read(file, environment);
            warnings.addAll(scenario.warnings());
            warnings.addAll(Alternatives.of(scenario, new RunOverrides()).warnings());
            warnings.stream().map(Scenario::asWarning).forEach(environment.err()::println);
            String doubts = switch (warnings.size()) {
                case 0 -> "";
                case 1 -> ", with 1 warning";
                default -> ", with " + warnings.size() + " warnings";
            };
            environment.out().println(file + ": can be run" + doubts);
            return true;
        } catch (BadInputException e) {
            e.lines().forEach(err::println);
            warnings.stream().map(Scenario::asWarning).forEach(environment.err()::println);
            return false;
        }
    }
}
