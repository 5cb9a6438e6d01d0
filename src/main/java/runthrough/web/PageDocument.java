package runthrough.web;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Alternative;
import runthrough.plant.SimulationRequest;
import runthrough.report.document.DocumentFiles;
import runthrough.report.document.DocumentMaker;
import runthrough.report.document.Paper;
import runthrough.report.verdict.RunThroughResult;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.comparison.Comparison;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.WorthStudy;
import runthrough.web.job.Refusal;
import runthrough.web.study.GivenValues;

/**
 * The document to hand over, as the command {@code document} makes it.
 *
 * @param pdf its bytes in Base64
 */
record PageDocument(String pdf) {

    static PageDocument of(Studies studies, StudyListener listener) {
        PageScenario draft = studies.draft();
        SimulationRequest request = draft.asked();
        int threads = studies.threads();
        PageAlternatives alternatives = PageAlternatives.of(draft).checked();
        alternatives.notRun().stream().findFirst().ifPresent(one -> {
            throw new Refusal(422, "alternative \"" + one.name() + "\" cannot be run: " + one.why() + ".");
        });
        RunThroughResult verdict = RunThroughResult.of(
                new RunThroughStudy(request).run(StudyOptions.forReport().withThreads(threads), listener),
                draft.warnings(),
                studies.provenance());
        RunThroughResult result = verdict.with(new WorthStudy(verdict.study()).run(threads, listener))
                .with(new LeverStudy(request).run(threads, listener));
        Optional<Comparison> comparison =
                alternatives.study(request.run().target()).map(study -> study.run(threads, listener));
        byte[] pdf = DocumentFiles.of(
                        DocumentMaker.of(
                                result,
                                draft.handover(),
                                GivenValues.of(draft.file(), draft.file(), draft.handover()),
                                comparison,
                                Optional.of(studies.sensitivity(List.of(), listener)),
                                Alternative.AS_WRITTEN),
                        Paper.usualWith(request.resultsIn()),
                        studies.provenance().program())
                .get(DocumentFiles.PDF);
        return new PageDocument(Base64.getEncoder().encodeToString(pdf));
    }
}
