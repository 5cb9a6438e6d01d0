package runthrough.report;

import java.util.function.Supplier;

/**
 * The JSON format of an answer: what is its own beside what all answers have.
 *
 * @param study name of the command, such as {@code size}; files are named after it
 * @param version of the format, counted up when a member is renamed, taken away or given another meaning
 * @param subject members that say what was asked about
 * @param own members that give the answer; made when a writer asks for them, which a terminal never does
 */
public record AnswerFormat(String study, int version, JsonShape<?> subject, Supplier<JsonShape<?>> own) {

    /** Name and version. */
    public String name() {
        return "runthrough-" + study + "/" + version;
    }
}
