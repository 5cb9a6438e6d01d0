package runthrough.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The guide as a reader meets it.
 *
 * @param text all of it, in Markdown
 */
record Guide(String text) {
    static final Path FILE = Path.of("src/docs/guide.md");
    /** Where the pictures are, and the files that a reader types. */
    static final Path FOLDER = Path.of("src/docs/guide");

    static final String SCENARIO = "larch-street.yaml";
    static final String SHEET = "larch-street-times.csv";

    private static final List<Kind> KINDS = List.of(Kind.values());

    /** A group for each kind, in their order. What a shell does with the output of a command is left out. */
    private static final Pattern STEP = Pattern.compile("(?ms)^```yaml\\n(.*?)^```"
            + "|^```csv\\n(.*?)^```"
            + "|(?:^ {4}|`)runthrough ([^`\\n>|]*)"
            + "|^```text\\n(.*?)^```"
            + "|!\\[[^]]*]\\(guide/([^)]*)\\)");

    /** What there is for a reader to do, or to see. */
    enum Kind {
        /** Parts of the scenario, each in the place of an earlier one of its name. */
        SCENARIO_PARTS,
        TIME_STUDY_SHEET,
        COMMAND,
        OUTPUT,
        PICTURE
    }

    /**
     * One of the things that follow each other.
     *
     * @param kind what it is
     * @param text as it stands in the guide; of a picture its file
     */
    record Step(Kind kind, String text) {}

    static Guide read() throws IOException {
        return new Guide(Files.readString(FILE));
    }

    List<Step> steps() {
        return STEP.matcher(text).results().map(Guide::step).toList();
    }

    private static Step step(MatchResult found) {
        return IntStream.rangeClosed(1, found.groupCount())
                .filter(group -> found.group(group) != null)
                .mapToObj(group -> new Step(KINDS.get(group - 1), found.group(group)))
                .findFirst()
                .orElseThrow();
    }

    List<String> all(Kind kind) {
        return steps().stream()
                .filter(step -> step.kind() == kind)
                .map(Step::text)
                .toList();
    }

    /** What is said between the things to do and to see. */
    String prose() {
        return STEP.matcher(text).replaceAll("");
    }
}
