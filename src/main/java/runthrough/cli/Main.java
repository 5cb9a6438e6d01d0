package runthrough.cli;

import java.util.Locale;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.Interruption;

/** Where the program starts and, as the only place that may end the virtual machine, where it ends. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        // Nothing that is written depends on the language of the machine.
        Locale.setDefault(Locale.ROOT);
        // No display is ever looked for.
        System.setProperty("java.awt.headless", "true");
        // What goes to a socket passes through memory beside the heap, which each thread keeps for the next time: large
        // pieces are let go of, or clients that go away, each with a thread at work for it, would use up all of it.
        System.setProperty("jdk.nio.maxCachedBufferSize", "65536");
        System.exit(run(args));
    }

    private static int run(String... args) {
        Interruption interruption = Interruption.watch();
        try {
            return new Program(Environment.ofThisProcess()).run(args);
        } finally {
            interruption.end();
        }
    }
}
