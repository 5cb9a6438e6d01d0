package runthrough.cli;

import java.util.List;
import java.util.Optional;
import runthrough.report.AnswerFormat;
import runthrough.report.comparison.ComparisonAnswer;
import runthrough.report.limits.LimitsAnswer;
import runthrough.report.log.LogAnswer;
import runthrough.report.map.MapAnswer;
import runthrough.report.sensitivity.SensitivityAnswer;
import runthrough.report.sizing.SizingAnswer;
import runthrough.report.speeds.SpeedAnswer;
import runthrough.report.times.TimesAnswer;
import runthrough.report.uncertainty.UncertaintyAnswer;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.report.write.JsonWriter;

/** The JSON Schemas of all answers, by the name of what they answer. */
final class StudySchemas {
    private static final List<AnswerFormat> FORMATS = List.of(
            VerdictAnswer.FORMAT,
            TimesAnswer.FORMAT,
            ComparisonAnswer.FORMAT,
            LimitsAnswer.FORMAT,
            LogAnswer.FORMAT,
            MapAnswer.FORMAT,
            SensitivityAnswer.FORMAT,
            SizingAnswer.FORMAT,
            SpeedAnswer.FORMAT,
            UncertaintyAnswer.FORMAT);

    private StudySchemas() {}

    /** The answers that there are. */
    static List<String> studies() {
        return FORMATS.stream().map(AnswerFormat::study).toList();
    }

    /** The schema of what {@code study} gives as JSON, if there is such a study. */
    static Optional<String> of(String study) {
        return FORMATS.stream()
                .filter(format -> format.study().equals(study))
                .findFirst()
                .map(JsonWriter::schema);
    }
}
