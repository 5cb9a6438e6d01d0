package runthrough.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.SimulationRequest;
import runthrough.report.Answer;
import runthrough.report.Provenance;
import runthrough.report.comparison.ComparisonAnswer;
import runthrough.report.limits.LimitsAnswer;
import runthrough.report.log.LogAnswer;
import runthrough.report.sensitivity.SensitivityAnswer;
import runthrough.report.sizing.SizingAnswer;
import runthrough.report.speeds.SpeedAnswer;
import runthrough.report.uncertainty.UncertaintyAnswer;
import runthrough.report.uncertainty.UncertaintyPrecision;
import runthrough.scenario.log.LineLogReader;
import runthrough.scenario.log.LineLogReading;
import runthrough.study.Goal;
import runthrough.study.Share;
import runthrough.study.StudyListener;
import runthrough.study.lever.LeverStudy;
import runthrough.study.lever.Levers;
import runthrough.study.limits.LimitsStudy;
import runthrough.study.logged.LogStudy;
import runthrough.study.sensitivity.SensitivityStudy;
import runthrough.study.sizing.SizingOptions;
import runthrough.study.sizing.SizingStudy;
import runthrough.study.speed.SpeedRange;
import runthrough.study.speed.SpeedStudy;
import runthrough.study.uncertainty.UncertaintyStudy;
import runthrough.web.job.Refusal;
import runthrough.web.study.UsualSwings;

/** The studies of the commands of the same names, as each has it where no option is given: the same numbers. */
final class Studies {
    /** Those that need nothing but the line. */
    static final Map<String, Study> OF_THE_LINE = Map.of(
            "size", Studies::size,
            "speeds", Studies::speeds,
            "limits", Studies::limits,
            "sensitivity", Studies::sensitivity,
            "compare", Studies::compare,
            "uncertainty", Studies::uncertainty);

    private final PageScenario draft;
    private final SimulationRequest request;
    private final String program;
    private final int threads;

    /**
     * Studies of {@code draft}.
     *
     * @param program name and version of the program
     * @param threads that each may use
     */
    Studies(PageScenario draft, String program, int threads) {
        this.draft = draft;
        this.request = draft.asked();
        this.program = program;
        this.threads = threads;
    }

    /** A study of a line. */
    interface Study {
        Answer run(Studies of, StudyListener listener);
    }

    /** The target, for what looks for something that is enough. */
    private double targetBelowAll() {
        return Share.targetBelowAll(request.run().target());
    }

    PageScenario draft() {
        return draft;
    }

    int threads() {
        return threads;
    }

    Provenance provenance() {
        return new Provenance(
                program,
                Optional.of(draft.fingerprint()),
                draft.handover().cover().date());
    }

    private Answer size(StudyListener listener) {
        SizingOptions usual =
                SizingOptions.usual(targetBelowAll(), request.run().replications());
        return SizingAnswer.of(new SizingStudy(request, usual).run(threads, listener), draft.warnings(), provenance());
    }

    private Answer speeds(StudyListener listener) {
        SpeedStudy study = new SpeedStudy(request, targetBelowAll(), SpeedRange.usual(request.line()));
        return SpeedAnswer.of(study.run(threads, listener), draft.warnings(), provenance());
    }

    private Answer limits(StudyListener listener) {
        LimitsStudy study = new LimitsStudy(request, targetBelowAll());
        Optional<Levers> withoutStop = request.run().targetWithoutStop().stream()
                .mapToObj(share -> new LeverStudy(request, List.of(Goal.withoutStop(share))).run(threads, listener))
                .findFirst();
        return LimitsAnswer.of(study.run(threads, listener), withoutStop, draft.warnings(), provenance());
    }

    private Answer sensitivity(StudyListener listener) {
        return sensitivity(draft.warnings(), listener);
    }

    Answer sensitivity(List<String> warnings, StudyListener listener) {
        SensitivityStudy study = new SensitivityStudy(
                request, request.run().target(), new UsualSwings(draft.file(), UsualSwings.USUAL).all(), 0);
        return SensitivityAnswer.of(study.run(threads, listener), UsualSwings.USUAL, warnings, provenance());
    }

    private Answer compare(StudyListener listener) {
        PageAlternatives alternatives = PageAlternatives.of(draft).checked();
        return ComparisonAnswer.of(
                alternatives
                        .study(request.run().target())
                        .orElseThrow(() -> new Refusal(422, PageAlternatives.NONE))
                        .run(threads, listener),
                request,
                Stream.concat(draft.warnings().stream(), alternatives.warnings().stream())
                        .toList(),
                provenance());
    }

    private Answer uncertainty(StudyListener listener) {
        UncertaintyStudy study = new UncertaintyStudy(request, targetBelowAll(), UncertaintyStudy.USUAL);
        return UncertaintyAnswer.of(
                study.run(threads, listener), UncertaintyPrecision.USUAL, draft.warnings(), provenance());
    }

    /** Whether the model fits the line, whose log is {@code file}. */
    Answer log(Path file, StudyListener listener) {
        LineLogReading reading = LineLogReader.read(file);
        if (reading instanceof LineLogReading.Refused refused) {
            throw new Refusal(422, PageFolder.said(refused.problems(), refused.further(), file));
        }
        LineLogReading.Accepted log = (LineLogReading.Accepted) reading;
        LogStudy study = new LogStudy(request, log.log(), false, LogStudy.usualLogs(log.log()));
        return LogAnswer.of(
                study.run(threads, listener),
                Stream.concat(
                                draft.warnings().stream(),
                                log.warnings().stream().map(problem -> PageFolder.said(problem, file)))
                        .toList(),
                provenance());
    }
}
