package runthrough.report;

/**
 * The JSON format of an answer: what is its own beside what all answers have.
 *
 * @param study name of the command, such as {@code size}; files are named after it
 * @param version of the format, counted up when a member is renamed, taken away or given another meaning
 * @param subject members that say what was asked about
 * @param own members that give the answer
 */
public record AnswerFormat(String study, int version, JsonShape<?> subject, JsonShape<?> own) {

    /** Name and version. */
    public String name() {
        return "runthrough-" + study + "/" + version;
    }
}
