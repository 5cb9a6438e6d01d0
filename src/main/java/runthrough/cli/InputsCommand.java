package runthrough.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.plant.handover.Handover;
import runthrough.scenario.Input;

/** Lists the numbers of a scenario, by the paths at which they can be set. */
@Command(
        name = "inputs",
        description =
                "Lists every number of a scenario with its path, its value, what is allowed and where it came from, as far as origins say so. With --set PATH=VALUE the other "
                        + "commands run the scenario with another value.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough inputs my-line.yaml",
            "  runthrough run my-line.yaml --set entry.top-speed=100m/min \\",
            "      --set coil-change.reject.chance=0%%"
        })
final class InputsCommand implements Callable<Integer> {
    private static final String BETWEEN = "  ";

    private final Environment environment;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file, or - for standard input.")
    private Path scenario;

    InputsCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Scenario asked = Scenario.read(scenario, environment);
        List<Input> inputs = asked.file().inputs();
        int paths = width(inputs.stream().map(Input::path));
        int values = width(inputs.stream().map(Input::text));
        Input.Origin last = Input.Origin.WRITTEN;
        for (Input input : inputs) {
            boolean isFirstFigure = input.origin() == Input.Origin.FIGURE && last != Input.Origin.FIGURE;
            if (isFirstFigure) {
                environment.out().println("\nFigures of the whole line; setting one changes what is behind it:");
            }
            last = input.origin();
            environment.out().println(row(input, asked.handover(), paths, values));
        }
        environment.out().flush();
        return ExitCode.DONE;
    }

    private static String row(Input input, Handover handover, int paths, int values) {
        String origin = switch (input.origin()) {
            case DEFAULT -> "; default, not in the file";
            case FIGURE -> "";
            case WRITTEN ->
                handover.originOf(input.path()).map(from -> "; " + from).orElse("");
        };
        return padded(input.path(), paths)
                + BETWEEN
                + padded(input.text(), values)
                + BETWEEN
                + input.allowed()
                + origin;
    }

    private static int width(Stream<String> texts) {
        return texts.mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
