package runthrough.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Alternative;
import runthrough.report.RunThroughResult;
import runthrough.report.document.Document;
import runthrough.report.document.DocumentMaker;
import runthrough.scenario.source.Nearest;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonStudy;

/**
 * What is run for a document: the line as written, and its alternatives.
 *
 * @param asked the line as written
 * @param alternatives all of them
 */
record HandedOver(Scenario asked, Alternatives alternatives) {

    /**
     * What {@code asked} wants to be run.
     *
     * @throws BadInputException when an alternative cannot be run, or one is priced that there is not
     */
    static HandedOver of(Scenario asked, RunOverrides overrides) {
        HandedOver handedOver = new HandedOver(asked, Alternatives.of(asked, overrides));
        handedOver.checkOffers();
        return handedOver;
    }

    private void checkOffers() {
        List<String> names = alternatives.all().stream().map(Alternative::name).toList();
        List<String> errors = asked.handover().money().stream()
                .flatMap(money -> money.offers().keySet().stream().sorted())
                .filter(name -> !names.contains(name))
                .map(name -> "money.alternatives." + name + "; is not an alternative of this scenario. "
                        + Nearest.to(name, names)
                                .map(nearest -> "Did you mean " + nearest + "?")
                                .orElse("There are: " + String.join(", ", names) + "."))
                .toList();
        if (!errors.isEmpty()) {
            throw new BadInputException(errors);
        }
    }

    /** Runs it; {@code date} as the user wants it printed, the scenario's by default. */
    Made run(StudyOptions options, StudyListener listener, @Nullable String date) {
        RunThroughResult result = RunThroughResult.of(
                new RunThroughStudy(asked.brief()).run(options, listener), asked.warnings(), asked.provenance(date));
        Document document = DocumentMaker.of(
                result,
                asked.handover(),
                asked.givenValues(),
                comparison(options.threads(), listener),
                Optional.of(SensitivityCommand.answer(asked, options.threads(), listener, result.provenance())));
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
                new ComparisonStudy(today, others, asked.brief().run().target()).run(threads, listener));
    }
}
