package runthrough.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.router.JavalinDefaultRoutingApi;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Stream;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnector;
import runthrough.folder.TemporaryFolderException;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.report.verdict.RunThroughResult;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.report.write.HtmlWriter;
import runthrough.report.write.ReportFolderException;
import runthrough.scenario.ScenarioText;
import runthrough.study.StudyException;
import runthrough.study.StudyOptions;
import runthrough.web.gate.Access;
import runthrough.web.gate.Doorkeeper;
import runthrough.web.gate.Guard;
import runthrough.web.gate.LetIn;
import runthrough.web.gate.Refused;
import runthrough.web.gate.WholeRequests;
import runthrough.web.job.Refusal;
import runthrough.web.job.Replies;

/** Serves the page: on the loopback address of this machine, or to its local network where that was asked for. */
public final class PageServer implements AutoCloseable {
    /** Where people find it unless another program has the port. */
    public static final int USUAL_PORT = 8417;

    private static final int LARGEST_REQUEST = 1_000_000;

    /** Within which a request has to come. */
    private static final int LONGEST_SECONDS = 15;

    /** So long an old server may take to answer whom it has let in. */
    private static final int LONGEST_CLOSING_MS = 5000;

    /** So many answers are kept, and none that is larger (bytes). */
    private static final int KEPT = 64;

    private static final int LARGEST_KEPT = 300_000;

    private final PageMessages messages = new PageMessages();
    private final Access access;
    private final PageFolder files;
    private final ShippedLines shipped;
    private final Answers answers;
    private final Replies<byte[]> replies = new Replies<>(KEPT);
    private final JobRoutes jobs;
    private volatile Javalin server;
    private Optional<Doorkeeper> doorkeeper = Optional.empty();
    private Optional<LetIn> letIn = Optional.empty();
    private boolean isClosed;

    private PageServer(String program, int threads, Access access) throws IOException {
        this.access = access;
        shipped = ShippedLines.read();
        files = new PageFolder(shipped.files());
        answers = new Answers(program, threads);
        jobs = new JobRoutes(messages, files, answers);
        server = Javalin.create(this::configure);
    }

    /**
     * Starts serving this machine alone.
     *
     * @param program name and version of the program, for reports
     * @param threads that a computation may use, {@code >= 1}
     * @param port wanted; a free one is taken where that is taken already, or where it is 0
     * @throws IOException when nothing can be served
     */
    public static PageServer start(String program, int threads, int port) throws IOException {
        return start(program, threads, port, Access.ofThisMachine());
    }

    /**
     * Starts serving whom {@code access} lets in.
     *
     * @see #start(String, int, int)
     */
    public static PageServer start(String program, int threads, int port, Access access) throws IOException {
        PageServer page = new PageServer(program, threads, access);
        // So that whoever opens the page meets a program that has answered before.
        beside("warm-up", page::warmUp);
        try {
            page.server.start(access.address(), port);
        } catch (Exception e) {
            // Also what is thrown without being declared: an interrupt, as the server's own language allows.
            page.close();
            if (isBehind(e, InterruptedException.class)) {
                throw new CancellationException("given up while the page started");
            }
            if (port == 0 || !isTaken(e)) {
                throw new IOException("the page cannot be served: " + e.getMessage(), e);
            }
            return start(program, threads, 0, access);
        }
        page.watch();
        int open = page.server.port();
        page.doorkeeper = Optional.of(new Doorkeeper(open, () -> page.openAnew(open)));
        return page;
    }

    /**
     * All of the server anew, on the port that whoever has the page open knows: after memory was short, nobody knows what of the old one
     * is left, nor how long it takes to end.
     */
    private synchronized void openAnew(int port) throws IOException {
        if (isClosed) {
            return;
        }
        Javalin old = server;
        LetIn left = letIn.orElseThrow();
        for (Connector connector : old.jettyServer().server().getConnectors()) {
            ((NetworkConnector) connector).close();
        }
        Thread closing = beside("page-closing", old::stop);
        beside("page-letting-go", () -> letGo(closing, left));
        server = Javalin.create(this::configure);
        server.start(access.address(), port);
        watch();
    }

    /** Without memory the thread may have died that reads, answers and closes connections: who has one would wait for ever. */
    private static void letGo(Thread closing, LetIn left) {
        try (left) {
            closing.join(LONGEST_CLOSING_MS);
            closing.interrupt();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void watch() {
        letIn = Optional.of(LetIn.by(server.jettyServer().server()));
    }

    private static Thread beside(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    /** What the page asks for when it opens, of the line that it opens with. */
    private void warmUp() {
        try {
            PageRequest ask = messages.ask(
                    messages.written(Map.of("text", shipped.lines().get(0).text(), "units", "metric", "effort", 0)));
            messages.written(line(ask));
            messages.written(answer(ask).answer());
            messages.written(course(ask));
            messages.written(sliders(ask));
        } catch (IOException | RuntimeException e) {
            // Nobody waits for it; whoever asks for the same gets the message.
        }
    }

    private static boolean isBehind(Throwable failure, Class<?> kind) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause)
                .anyMatch(kind::isInstance);
    }

    private static boolean isTaken(Throwable failure) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause)
                .anyMatch(cause -> cause instanceof BindException
                        || String.valueOf(cause.getMessage()).contains("already in use"));
    }

    /** Where the page is on this machine, without the token that it may need. */
    public URI address() {
        return URI.create("http://" + access.names().get(0) + ":" + server.port() + "/");
    }

    /** Every method with the path that it answers at. */
    List<String> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
                .toList();
    }

    /** The links that open the page: that for this machine first. */
    public List<URI> links() {
        return access.links(server.port());
    }

    @Override
    public void close() {
        // Whoever ends the program interrupts this, too.
        try (files) {
            doorkeeper.ifPresent(Doorkeeper::close);
            jobs.close();
            stop();
        }
    }

    /** The last server, since none is opened after it. */
    private synchronized void stop() {
        isClosed = true;
        server.stop();
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = LARGEST_REQUEST;
        config.http.generateEtags = false;
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setRequestHeaderSize(16 * 1024);
        });
        config.jetty.modifyServer(server -> {
            server.setHandler(new WholeRequests(LARGEST_REQUEST, LONGEST_SECONDS));
            server.setErrorHandler(new Refused());
        });
        Guard guard = new Guard(access);
        config.routes.before(context -> guard.check(context, server.port()));
        PageFiles.serve(config.routes);
        config.routes.get("/api/lines", context -> messages.reply(context, shipped.lines()));
        config.routes.get("/api/kinds", context -> messages.reply(context, NewLine.kinds()));
        answers(config.routes, "new", ask -> edit(newLine(ask), ask));
        answers(config.routes, "line", ask -> Answers.readInTime(() -> line(ask)));
        answers(config.routes, "edit", ask -> Answers.readInTime(() -> edit(written(ask), ask)));
        answers(config.routes, "file", ask -> Answers.readInTime(() -> Dropped.of(ask, files)));
        answersOnce(config.routes, "sliders", ask -> Reply.whole(sliders(ask)));
        answersOnce(config.routes, "answer", this::answer);
        answersOnce(config.routes, "course", ask -> Reply.whole(course(ask)));
        config.routes.post("/api/report", this::report);
        config.routes.post("/api/tables", this::tables);
        config.routes.post("/api/scenario", this::scenario);
        jobs.serve(config.routes);
        config.routes.exception(
                Refusal.class, (refusal, context) -> messages.refuse(context, refusal.status(), refusal.words()));
        config.routes.exception(
                StudyException.class,
                (failure, context) -> messages.refuse(context, 422, String.valueOf(failure.getMessage())));
        for (Class<? extends Exception> full : List.of(TemporaryFolderException.class, ReportFolderException.class)) {
            config.routes.exception(
                    full, (failure, context) -> messages.refuse(context, 503, TemporaryFolderException.words()));
        }
        config.routes.exception(
                HttpResponseException.class,
                (failure, context) -> messages.refuse(
                        context,
                        failure.getStatus(),
                        failure.getStatus() == WholeRequests.TOO_LARGE
                                ? WholeRequests.tooLarge(LARGEST_REQUEST)
                                : String.valueOf(failure.getMessage())));
        config.routes.exception(Exception.class, (failure, context) -> {
            boolean isFull = Refusal.isShortMemory(failure);
            messages.refuse(context, isFull ? 503 : 500, isFull ? Refusal.NO_MEMORY : fault(failure));
        });
        config.router.javaLangErrorHandler((response, error) -> failed(response, error));
    }

    /** Answers what is posted to {@code /api/name}. */
    private void answers(JavalinDefaultRoutingApi routes, String name, Function<PageRequest, Object> answer) {
        routes.post("/api/" + name, context -> messages.reply(context, answer.apply(messages.ask(context))));
    }

    /** The same for what takes computing, which is not computed again for the same question. */
    private void answersOnce(JavalinDefaultRoutingApi routes, String name, Function<PageRequest, Reply> answer) {
        routes.post("/api/" + name, context -> {
            byte[] body = context.bodyAsBytes();
            String question = Replies.question(name, body);
            Optional<byte[]> known = replies.to(question);
            byte[] written = known.isPresent() ? known.get() : answered(question, answer.apply(messages.ask(body)));
            context.contentType(PageMessages.TYPE).result(written);
        });
    }

    private byte[] answered(String question, Reply reply) throws IOException {
        byte[] written = messages.written(reply.answer());
        if (reply.isWhole() && written.length <= LARGEST_KEPT) {
            replies.keep(question, written);
        }
        return written;
    }

    private static String fault(Throwable failure) {
        return "A fault of the program (" + failure.getClass().getSimpleName() + "). Please report it.";
    }

    /** An error of the virtual machine ends the request that met it, and no other. */
    private void failed(HttpServletResponse response, Error error) {
        boolean isFull = error instanceof OutOfMemoryError;
        response.setStatus(isFull ? 503 : 500);
        response.setContentType(PageMessages.TYPE);
        try {
            response.getOutputStream().write(Refusal.body(isFull ? Refusal.NO_MEMORY : fault(error)));
        } catch (IOException e) {
            // Whoever asked has gone.
        }
    }

    // ---- what is asked
    // -------------------------------------------------------------------------------------------------

    private PageScenario draft(PageRequest ask) {
        return PageScenario.of(ask, files);
    }

    /** A text with changes, and what it says then. */
    record Edited(String text, LineView line) {}

    private ScenarioText written(PageRequest ask) {
        return new ScenarioText(files.with(ask.allSent()).resolve(PageScenario.NAME), ask.scenario());
    }

    private ScenarioText newLine(PageRequest ask) {
        return NewLine.of(files.shipped().resolve(PageScenario.NAME), ask.newKind(), ask.newPractice(), ask.system());
    }

    private Edited edit(ScenarioText before, PageRequest ask) {
        UnitSystem system = ask.system();
        List<ScenarioText.Change> changes = ask.parts();
        ScenarioText.Changed changed = PageScenario.edited(before, changes);
        if (!changed.problems().isEmpty()) {
            List<LineView.Fault> faults =
                    changed.problems().stream().map(LineView.Fault::of).toList();
            return new Edited(before.text(), LineView.refused(faults, system));
        }
        String text = Assumptions.replaced(before, changed.text(), changes).text();
        return new Edited(text, LineView.of(PageScenario.of(text, before.file().resolveSibling(""), system), system));
    }

    private LineView line(PageRequest ask) {
        return LineView.of(draft(ask), ask.system());
    }

    private Map<String, List<Double>> sliders(PageRequest ask) {
        PageScenario draft = draft(ask);
        return answers.withinTime(() -> SliderEnds.of(draft, ask.system()));
    }

    private CourseView course(PageRequest ask) {
        SimulationRequest request = draft(ask).asked();
        return answers.withinTime(() -> CourseView.of(request, ask.shown().orElseGet(() -> WorstChange.of(request))));
    }

    /**
     * What is answered.
     *
     * @param isWhole whether nothing was left out of it that would have taken too long
     */
    private record Reply(Object answer, boolean isWhole) {
        static Reply whole(Object answer) {
            return new Reply(answer, true);
        }
    }

    private Reply answer(PageRequest ask) {
        PageScenario draft = draft(ask);
        SimulationRequest request = draft.asked();
        RunThroughResult result = answers.run(AnswerPrecision.of(request, ask.step()), draft, StudyOptions.plain());
        Optional<RunThroughResult> whole =
                ask.step() < AnswerPrecision.AS_ASKED ? Optional.of(result) : answers.withWorth(result);
        return new Reply(AnswerView.of(whole.orElse(result), AnswerPrecision.steps(request)), whole.isPresent());
    }

    private void report(Context context) {
        PageScenario draft = draft(messages.ask(context));
        String page = HtmlWriter.render(VerdictAnswer.of(answers.run(draft.asked(), draft, StudyOptions.forReport())));
        context.contentType("text/html; charset=utf-8").result(page.getBytes(StandardCharsets.UTF_8));
    }

    private void tables(Context context) throws IOException {
        PageRequest ask = messages.ask(context);
        PageScenario draft = draft(ask);
        context.contentType("application/zip").result(new TablesZip(files.root(), answers).of(draft, ask.scenario()));
    }

    /** The scenario file; with the tables that it names, where it names any. */
    private void scenario(Context context) throws IOException {
        PageRequest ask = messages.ask(context);
        ScenarioText text = written(ask);
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String name : NamedFiles.of(text).own()) {
            Path file = text.file().resolveSibling(name);
            if (Files.exists(file)) {
                files.put(name, Files.readAllBytes(file));
            }
        }
        byte[] scenario = text.text().getBytes(StandardCharsets.UTF_8);
        if (files.isEmpty()) {
            context.contentType("application/yaml").result(scenario);
        } else {
            files.put(ask.fileName() + ".yaml", scenario);
            context.contentType("application/zip").result(Zip.of(files));
        }
    }
}
