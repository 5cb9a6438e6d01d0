package runthrough.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.ManPage;

/** Prints the script that lets a shell complete commands and options. */
@Command(
        name = "completion",
        description = "Prints a script with which bash or zsh completes commands and options, or the manual page.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  # both lines belong in .bashrc or .zshrc",
            "  alias runthrough='java -jar /path/to/runthrough.jar'",
            "  source <(runthrough completion)",
            "  runthrough completion --man > /usr/local/share/man/man1/runthrough.1"
        })
final class CompletionCommand implements Callable<Integer> {
    private final Environment environment;

    @Option(names = "--man", description = "Print the manual page (man 1) instead.")
    private boolean man;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        CommandSpec program = spec.root();
        environment
                .out()
                .print(
                        man
                                ? ManPage.of(program.commandLine())
                                : AutoComplete.bash(program.name(), program.commandLine()));
        environment.out().flush();
        return ExitCode.DONE;
    }
}
