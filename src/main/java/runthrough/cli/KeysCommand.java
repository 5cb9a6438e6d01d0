package runthrough.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.Choice;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.scenario.ScenarioGuide;
import runthrough.scenario.source.Nearest;

/** Lists what a scenario may say. */
@Command(
        name = "keys",
        description = "Lists what a scenario may say: every key with its meaning, range, default and an example.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, "2:there is no such section"},
        footerHeading = "%nExamples:%n",
        footer = {"  runthrough keys", "  runthrough keys accumulator", "  runthrough keys units"})
final class KeysCommand implements Callable<Integer> {
    private final Environment environment;

    @Parameters(
            paramLabel = "SECTION",
            arity = "0..1",
            description = "One section with those within it, such as process; or units.",
            completionCandidates = Sections.class)
    private @Nullable String section;

    KeysCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        environment.out().print(section == null ? ScenarioGuide.text() : text(section));
        environment.out().flush();
        return ExitCode.DONE;
    }

    private static String text(String name) {
        String text = ScenarioGuide.text(name);
        if (text.isEmpty()) {
            String remedy = Nearest.remedy(name, ScenarioGuide.names());
            throw new BadInputException(name + " is not a section of a scenario. " + remedy);
        }
        return text;
    }

    /** The names for completion in a shell. */
    static final class Sections extends Choice<String> {
        Sections() {
            ScenarioGuide.names().forEach(name -> or(name, name));
        }
    }
}
