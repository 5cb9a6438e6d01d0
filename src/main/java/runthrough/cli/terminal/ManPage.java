package runthrough.cli.terminal;

import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The manual page: the help of the program and of each of its commands, in the language of man (groff_man(7)). */
public final class ManPage {
    private ManPage() {}

    /** The page of {@code program}. */
    public static String of(CommandLine program) {
        StringBuilder page = new StringBuilder();
        page.append(".TH RUNTHROUGH 1 \"\" \"")
                .append(ProgramVersion.text())
                .append("\"\n.SH NAME\nrunthrough \\- ")
                .append(escaped(program.getCommandSpec().usageMessage().description()[0]))
                .append('\n');
        section("DESCRIPTION", program, page);
        program.getSubcommands().forEach((name, command) -> section("COMMAND " + name, command, page));
        return page.toString();
    }

    private static void section(String title, CommandLine command, StringBuilder page) {
        page.append(".SH ")
                .append(title.toUpperCase(Locale.ROOT))
                .append("\n.nf\n")
                .append(escaped(command.getUsageMessage(Ansi.OFF).stripTrailing()))
                .append("\n.fi\n");
    }

    /** A backslash begins a request, and so does a point or an apostrophe at the start of a line; a plain hyphen stays one. */
    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-").replaceAll("(?m)^([.'])", "\\\\&$1");
    }
}
