package runthrough.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import runthrough.report.Answer;
import runthrough.report.Fingerprint;
import runthrough.report.Provenance;
import runthrough.report.times.TimesAnswer;
import runthrough.report.times.TimesResult;
import runthrough.scenario.times.TimeSheetReader;
import runthrough.scenario.times.TimeSheetReading;
import runthrough.study.StudyListener;
import runthrough.study.fitting.FittingStudy;
import runthrough.study.times.SampleSize;
import runthrough.study.times.SheetStatistics;
import runthrough.web.job.Refusal;

/**
 * What a time-study sheet shows, as the command {@code times} has it where no option is given.
 *
 * @param sheet as read, with what to warn of
 * @param provenance of it
 */
record SheetStudy(TimeSheetReading.Accepted sheet, List<String> warnings, Provenance provenance) {
    private static final long SEED = 1;

    SheetStudy {
        warnings = List.copyOf(warnings);
    }

    /** That of {@code file}, which holds what was {@code sent}. */
    static SheetStudy of(Path file, PageRequest.Sent sent, String program) {
        TimeSheetReading reading = TimeSheetReader.read(file, sent.named());
        if (reading instanceof TimeSheetReading.Refused refused) {
            throw new Refusal(422, PageFolder.said(refused.problems(), refused.further(), file));
        }
        TimeSheetReading.Accepted accepted = (TimeSheetReading.Accepted) reading;
        return new SheetStudy(
                accepted,
                accepted.warnings().stream()
                        .map(problem -> PageFolder.said(problem, file))
                        .toList(),
                new Provenance(program, Optional.of(Fingerprint.of(sent.content())), Optional.empty()));
    }

    Answer run(StudyListener listener) {
        SheetStatistics statistics = SheetStatistics.of(sheet.sheet(), SEED);
        List<SampleSize> sizes = statistics.elements().stream()
                .map(element -> SampleSize.of(
                        SampleSize.USUAL_CONFIDENCE,
                        SampleSize.USUAL_PRECISION,
                        element.sample().values()))
                .toList();
        if (listener.cancelled()) {
            throw new CancellationException();
        }
        TimesResult result = new TimesResult(
                statistics,
                new FittingStudy(SEED).run(statistics, listener),
                sizes,
                false,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                SEED);
        return TimesAnswer.of(result, warnings, provenance);
    }
}
