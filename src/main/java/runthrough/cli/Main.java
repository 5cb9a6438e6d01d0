package runthrough.cli;

import picocli.CommandLine;

/** Where the program starts and, as the only place that may end the virtual machine, where it ends. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** The whole command line, ready to execute. Colours appear only at a terminal, and not where NO_COLOR is set. */
    static CommandLine commandLine() {
        return new CommandLine(new RunthroughCommand()).setUsageHelpAutoWidth(true);
    }
}
