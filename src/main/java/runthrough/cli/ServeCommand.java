package runthrough.cli;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Browser;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.web.PageServer;
import runthrough.web.gate.Access;

/** The page for the meeting. */
@Command(
        name = "serve",
        description = {
            "Serves a page on this machine on which a line is drawn, changed and answered at once. Nothing leaves the machine"
                    + " unless --network is given.",
            "It runs until it is interrupted (Ctrl-C)."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough serve",
            "  runthrough serve --port 9000 --no-browser",
            "  runthrough serve --network --no-browser"
        })
final class ServeCommand implements Callable<Integer> {
    private final Environment environment;

    @Option(
            names = "--port",
            paramLabel = "N",
            converter = Port.class,
            description = "The port; " + PageServer.USUAL_PORT + " by default, or a free one where it is taken.")
    private @Nullable Long port;

    @Option(
            names = "--network",
            description =
                    "Open the page to the local network, for a phone or a tablet at the line. Who has the link that"
                            + " is printed can use it; what is sent is not encrypted. By default the page is there for this machine alone.")
    private boolean network;

    @Option(names = "--no-browser", description = "Open no browser, only print the address.")
    private boolean noBrowser;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = RunCommand.Threads.class,
            description = "Replications that run at once; one for each processor by default.")
    private @Nullable Long threads;

    ServeCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        int atOnce = threads == null ? Runtime.getRuntime().availableProcessors() : Math.toIntExact(threads);
        try (PageServer page = PageServer.start(
                ProgramVersion.text(),
                atOnce,
                port == null ? PageServer.USUAL_PORT : Math.toIntExact(port),
                network ? Access.ofTheNetwork() : Access.ofThisMachine())) {
            tell(page.links());
            if (!noBrowser) {
                Browser.open(page.links().get(0), environment.variables());
            }
            // The end of the program interrupts this thread.
            new CountDownLatch(1).await();
        } catch (InterruptedException | CancellationException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            throw new BadInputException(e.getMessage() + ". Give another port with --port.");
        }
        return ExitCode.DONE;
    }

    /** Where the page is, and what it means that it is open to others. */
    private void tell(List<URI> links) {
        environment.out().println("The page is at " + links.get(0) + "  (Ctrl-C ends it)");
        if (network) {
            links.stream().skip(1).forEach(link -> environment.out().println("From the network: " + link));
            environment.out().println("""
                    It is open to the local network. Whoever has a link can use the page and this machine's processors, and
                    sees nothing but what is sent to it: no files, no other person's line. What is sent is not encrypted, the
                    token of the link neither: do not use it in a network that strangers are in. The token ends with the page.""");
        }
        environment.out().flush();
    }

    static final class Port extends WholeNumber {
        Port() {
            super(1, 65535);
        }
    }
}
