package runthrough.cli;

import java.util.List;
import java.util.function.Function;
import runthrough.cli.terminal.Environment;

/**
 * The commands by their names, each made when it is asked for, with all that it brings along. Lambdas, since a reference to a
 * constructor would load the class of the command at once.
 */
final class Commands {
    /** Describes the options of all commands, and so takes all. */
    private static final String COMPLETION = "completion";

    /** In the order in which the help lists them. */
    private static final List<Maker> ALL = List.of(
            new Maker("run", environment -> new RunCommand(environment)),
            new Maker("size", environment -> new SizeCommand(environment)),
            new Maker("limits", environment -> new LimitsCommand(environment)),
            new Maker("speeds", environment -> new SpeedsCommand(environment)),
            new Maker("compare", environment -> new CompareCommand(environment)),
            new Maker("log", environment -> new LogCommand(environment)),
            new Maker("serve", environment -> new ServeCommand(environment)),
            new Maker("map", environment -> new MapCommand(environment)),
            new Maker("sweep", environment -> new SweepCommand(environment)),
            new Maker("merge", environment -> new MergeCommand(environment)),
            new Maker("times", environment -> new TimesCommand(environment)),
            new Maker("uncertainty", environment -> new UncertaintyCommand(environment)),
            new Maker("sensitivity", environment -> new SensitivityCommand(environment)),
            new Maker("document", environment -> new DocumentCommand(environment)),
            new Maker("check", environment -> new CheckCommand(environment)),
            new Maker("keys", environment -> new KeysCommand(environment)),
            new Maker("inputs", environment -> new InputsCommand(environment)),
            new Maker("schema", environment -> new SchemaCommand(environment)),
            new Maker("draws", environment -> new DrawsCommand(environment)),
            new Maker(COMPLETION, environment -> new CompletionCommand(environment)),
            new Maker("validation", environment -> new ValidationCommand(environment)),
            new Maker("samples", environment -> new SamplesCommand(environment)));

    private Commands() {}

    /**
     * A command's name and what makes it.
     *
     * @param command the object in which the options and the call of the command are
     */
    record Maker(String name, Function<Environment, Object> command) {}

    /**
     * The one command that a command line asks for with its {@code first} word: the others would take half a second to be made. All
     * where it takes all, as for the help, the completion, and to say what somebody may have meant.
     */
    static List<Maker> takenBy(String first) {
        List<Maker> named =
                ALL.stream().filter(maker -> maker.name().equals(first)).toList();
        return named.isEmpty() || first.equals(COMPLETION) ? ALL : named;
    }
}
