package runthrough.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import runthrough.plant.RunPlan;

/** A study's answer for machines: what all of them have in common, then what is its own. */
public final class StudyJson {
    private StudyJson() {}

    /** The whole document, indented by two spaces, ended by a line feed; ASCII, so that no encoding of a pipe can spoil it. */
    public static String render(StudyAnswer answer) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try {
            return JsonMapper.builder()
                            .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
                            .build()
                            .writer(new DefaultPrettyPrinter()
                                    .withObjectIndenter(indenter)
                                    .withArrayIndenter(indenter))
                            .writeValueAsString(document(answer).map())
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers and words are always written", e);
        }
    }

    private static JsonFields document(StudyAnswer answer) {
        return new JsonFields()
                .text("format", "runthrough-" + answer.study() + "/1")
                .text("program", answer.provenance().program())
                .in("scenario", scenario(answer))
                .text("question", answer.question())
                .text("verdict", answer.mark().word())
                .text("headline", answer.mark().sentence())
                .texts("advice", answer.advice())
                .flag("left_to_chance", answer.chance())
                .and(answer.document())
                .texts("warnings", answer.warnings());
    }

    private static JsonFields scenario(StudyAnswer answer) {
        RunPlan run = answer.brief().run();
        JsonFields fields = new JsonFields().text("title", answer.brief().title());
        answer.provenance().fingerprint().ifPresent(digits -> fields.text("sha256", digits));
        if (run.extent() instanceof RunPlan.Extent.Changes changes) {
            fields.count("coil_changes", changes.changes());
        } else if (run.extent() instanceof RunPlan.Extent.Time time) {
            fields.number("duration_s", time.duration());
        }
        return fields.count("left_out", run.leaveOut())
                .count("replications", run.replications())
                .count("seed", run.seed());
    }
}
