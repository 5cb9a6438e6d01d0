package runthrough.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.cli.terminal.BadInputException;
import runthrough.plant.Alternative;
import runthrough.report.document.Document;
import runthrough.report.document.DocumentMaker;
import runthrough.report.verdict.RunThroughResult;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonStudy;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.WorthStudy;

/**
 * What is run for a document: the line as asked for, and the alternatives of the scenario.
 *
 * @param asked the line as written, or the alternative that the document is of
 * @param alternatives all of them, with the line as written
 * @param name that the line asked for has among them
 */
record DocumentRun(Scenario asked, Alternatives alternatives, String name) {

    /**
     * What {@code asked} wants to be run.
     *
     * @throws BadInputException when an alternative cannot be run, or its price cannot stand
     */
    static DocumentRun of(Scenario asked, RunOverrides overrides) {
        return new DocumentRun(
                asked,
                Alternatives.of(asked.asWritten(overrides), overrides),
                overrides.alternative().map(String::strip).orElse(Alternative.AS_WRITTEN));
    }

    /** Runs it; {@code date} as the user wants it printed, the scenario's by default. */
    Made run(StudyOptions options, StudyListener listener, @Nullable String date) {
        return asked.running(() -> made(options, listener, date));
    }

    private Made made(StudyOptions options, StudyListener listener, @Nullable String date) {
        RunThroughResult verdict = RunThroughResult.of(
                new RunThroughStudy(asked.request()).run(options, listener), asked.warnings(), asked.provenance(date));
        RunThroughResult result = verdict.with(new WorthStudy(verdict.study()).run(options.threads(), listener))
                .with(new LeverStudy(asked.request()).run(options.threads(), listener));
        Document document = DocumentMaker.of(
                result,
                asked.handover(),
                asked.givenValues(),
                comparison(options.threads(), listener),
                Optional.of(SensitivityCommand.answer(asked, options.threads(), listener, result.provenance())),
                name);
        return new Made(result, document);
    }

    /** What was run, and the document made of it. */
    record Made(RunThroughResult result, Document document) {}

    private Optional<Comparison> comparison(int threads, StudyListener listener) {
        if (alternatives.all().size() < 2) {
            return Optional.empty();
        }
        Alternative today = alternatives.all().stream()
                .filter(one -> one.name().equals(alternatives.today()))
                .findFirst()
                .orElseThrow();
        List<Alternative> others =
                alternatives.all().stream().filter(one -> !one.equals(today)).toList();
        return Optional.of(
                new ComparisonStudy(today, others, asked.request().run().target()).run(threads, listener));
    }
}
