package runthrough.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import runthrough.plant.SimulationRequest;
import runthrough.study.StudyOptions;
import runthrough.web.job.Jobs;
import runthrough.web.job.Replies;
import runthrough.web.study.StudyView;

/** The addresses of what takes longer than a request: each begins a job, which is asked after and may be given up. */
final class JobRoutes implements AutoCloseable {
    private final PageMessages messages;
    private final PageFolder files;
    private final Answers answers;
    private final Jobs jobs = new Jobs();

    JobRoutes(PageMessages messages, PageFolder files, Answers answers) {
        this.messages = messages;
        this.files = files;
        this.answers = answers;
    }

    @Override
    public void close() {
        jobs.close();
    }

    void serve(JavalinDefaultRoutingApi routes) {
        begins(routes, "curve", (ask, draft) -> {
            SimulationRequest request = draft.asked();
            return listener -> CurveView.of(request, answers.threads(), listener);
        });
        begins(routes, "fixes", (ask, draft) -> {
            SimulationRequest request = draft.asked();
            return listener -> Fixes.of(request, draft.handover().money(), answers.threads(), listener);
        });
        begins(routes, "worth", (ask, draft) -> {
            SimulationRequest request = AnswerPrecision.of(draft.asked(), AnswerPrecision.AS_ASKED);
            Optional<SimulationRequest> opened = ask.before()
                    .flatMap(text -> PageScenario.of(text, files.with(ask.sentBefore()), ask.system())
                            .request());
            return listener -> WorthView.of(
                    draft, opened, answers.run(request, draft, StudyOptions.plain()), answers.threads(), listener);
        });
        begins(routes, "map", (ask, draft) -> {
            draft.asked();
            String across = ask.across();
            String upwards = ask.upwards();
            return listener -> MapView.of(draft, across, upwards, ask.system(), answers.threads(), listener);
        });
        Studies.OF_THE_LINE.forEach((name, study) -> begins(routes, name, (ask, draft) -> {
            Studies studies = studies(draft);
            return listener -> StudyView.of(study.run(studies, listener));
        }));
        // Bears the date of the day where the scenario has none, so it is made each time.
        routes.post("/api/job/document", context -> {
            Studies studies = studies(PageScenario.of(messages.ask(context), files));
            begin(context, listener -> PageDocument.of(studies, listener));
        });
        begins(routes, "log", (ask, draft) -> {
            Studies studies = studies(draft);
            Path log = files.with(ask.withSent()).resolve(ask.sent().named());
            return listener -> StudyView.of(studies.log(log, listener));
        });
        routes.post("/api/job/times", context -> {
            PageRequest ask = messages.ask(context);
            SheetStudy study = Answers.readInTime(() -> SheetStudy.of(
                    files.with(ask.withSent()).resolve(ask.sent().named()), ask.sent(), answers.program()));
            begin(context, listener -> StudyView.of(study.run(listener)));
        });
        routes.post(
                "/api/job",
                context ->
                        messages.reply(context, jobs.ask(messages.ask(context).job())));
        routes.post("/api/job/stop", context -> {
            jobs.stop(messages.ask(context).job());
            messages.reply(context, Map.of());
        });
    }

    private Studies studies(PageScenario draft) {
        return new Studies(draft, answers.program(), answers.threads());
    }

    /** The job {@code name} of a line; what is wrong with what is asked is said before it begins. */
    private void begins(
            JavalinDefaultRoutingApi routes, String name, BiFunction<PageRequest, PageScenario, Jobs.Work> work) {
        routes.post("/api/job/" + name, context -> {
            PageRequest ask = messages.ask(context);
            Jobs.Work begun = work.apply(ask, PageScenario.of(ask, files));
            String question = Replies.question(name, context.bodyAsBytes());
            messages.reply(context, Map.of("id", jobs.begin(question, begun)));
        });
    }

    private void begin(Context context, Jobs.Work work) throws JsonProcessingException {
        messages.reply(context, Map.of("id", jobs.begin(work)));
    }
}
