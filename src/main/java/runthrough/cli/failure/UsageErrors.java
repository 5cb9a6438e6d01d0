package runthrough.cli.failure;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import runthrough.cli.terminal.ExitCode;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problem;

/** Shows what is wrong with a command line: in one line, with what was probably meant. */
public final class UsageErrors implements IParameterExceptionHandler {
    /** How picocli begins when a converter refuses a value; what follows is the converter's own text. */
    private static final String CONVERTER_SAYS = "Invalid value for ";

    /** Length of an option of one letter, such as {@code -o}. */
    private static final int LETTER = 2;

    @Override
    public int handleParseException(ParameterException failure, String[] args) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(Problem.withoutControls(message(failure)));
        err.println("See " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }

    private static String message(ParameterException failure) {
        if (failure instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(
                    unmatched.getUnmatched().get(0), failure.getCommandLine().getCommandSpec());
        }
        String message = String.valueOf(failure.getMessage());
        ArgSpec argument = failure.getArgSpec();
        if (argument != null && message.startsWith(CONVERTER_SAYS)) {
            String name = argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
            return name + " = " + message.substring(message.indexOf(": ") + 2);
        }
        return message;
    }

    private static String unmatched(String word, CommandSpec command) {
        if (word.startsWith("-")) {
            List<String> options = command.options().stream()
                    .flatMap(option -> List.of(option.names()).stream())
                    .toList();
            String name = word.replaceFirst("=.*", "");
            String meant = name.length() == LETTER ? meantByLetter(name, options) : meant(name, options);
            return name + " is not an option of " + command.qualifiedName() + "." + meant;
        }
        if (!command.subcommands().isEmpty()) {
            Collection<String> commands = command.subcommands().keySet();
            return FormerCommands.now(word)
                    .map(now -> "The command " + word + " is now called " + now + ".")
                    .orElseGet(() -> word + " is not a command." + meant(word, commands));
        }
        if (word.startsWith("@")) {
            return word + ": there is no such file. Behind @ comes the name of a file that holds arguments.";
        }
        return (word.isBlank() ? "\"" + word + "\"" : word) + " is one argument too many for " + command.qualifiedName()
                + ".";
    }

    /** Any other letter is one slip away from it, so of {@code -o} the options that begin with it were meant. */
    private static String meantByLetter(String letter, List<String> options) {
        String beginning = "-" + letter.toLowerCase(Locale.ROOT);
        List<String> meant = options.stream()
                .filter(name -> name.startsWith(beginning))
                .sorted()
                .toList();
        return meant.isEmpty() ? "" : " Did you mean " + String.join(" or ", meant) + "?";
    }

    private static String meant(String word, Collection<String> known) {
        return Nearest.to(word, known)
                .map(nearest -> " Did you mean " + nearest + "?")
                .orElse("");
    }
}
