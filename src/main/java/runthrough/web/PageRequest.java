package runthrough.web;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.ScenarioText;
import runthrough.web.job.Refusal;

/**
 * What the page asks; each request fills what it needs.
 *
 * @param text of the scenario
 * @param units {@code metric} or {@code us}
 * @param name of the scenario, for files
 * @param changes to be written into the text
 * @param effort how sure the answer should be, from 0
 * @param replication whose course is asked for, from 0; that of the worst coil change by default
 * @param change coil change that the course is asked for, from 1
 * @param id of a job
 * @param x path of what a map goes over across
 * @param y and upwards
 * @param kind of a new line
 * @param practice in which it changes coils
 * @param opened the scenario as it was before it was changed on the page
 * @param openedFiles that it named; the same as {@code files} where none are given
 * @param files that the scenario names
 * @param file that was dropped on the page
 */
@JsonIgnoreProperties(ignoreUnknown = false)
record PageRequest(
        @Nullable String text,
        @Nullable String units,
        @Nullable String name,
        @Nullable List<@Nullable Part> changes,
        @Nullable Integer effort,
        @Nullable Integer replication,
        @Nullable Integer change,
        @Nullable String id,
        @Nullable String x,
        @Nullable String y,
        @Nullable String kind,
        @Nullable String practice,
        @Nullable String opened,
        @Nullable List<@Nullable Sent> openedFiles,
        @Nullable List<@Nullable Sent> files,
        @Nullable Sent file) {

    private static final int MOST_CHANGES = 100;
    private static final int MOST_FILES = 20;
    private static final String US = "us";

    /** A file: its name and what it holds. */
    record Sent(@Nullable String name, @Nullable String text) {
        /** By which a scenario may name it: without folders, and without letters that need quotes. */
        String named() {
            return plain(need(name, "name"));
        }

        Sent checked() {
            if (!NamedFiles.isOwn(named())) {
                throw new Refusal(400, "A file needs a name with letters or digits, at most 100.");
            }
            return this;
        }

        String content() {
            return need(text, "text");
        }
    }

    /**
     * A change of what {@code path} names.
     *
     * @param value to be written; null to remove an item of a list, unless it gets a name
     * @param name that a work element gets
     * @param time key of the way in which {@code value} says how long a work element takes
     */
    record Part(
            @Nullable String path,
            @Nullable String value,
            @Nullable String name,
            @Nullable String time) {
        /** Writes {@code value}. */
        Part(String path, String value) {
            this(path, value, null, null);
        }

        /** The part of {@code change}. */
        static Part of(ScenarioText.Change change) {
            return new Part(
                    change.path(),
                    change instanceof ScenarioText.Change.Write write ? write.value() : null,
                    null,
                    null);
        }

        private ScenarioText.Change change() {
            String what = need(path, "path");
            if (name != null) {
                return new ScenarioText.Change.Rename(what, name);
            }
            if (time != null) {
                return new ScenarioText.Change.Retime(what, time, need(value, "value"));
            }
            return value == null ? new ScenarioText.Change.Remove(what) : new ScenarioText.Change.Write(what, value);
        }
    }

    private static String plain(String name) {
        String plain = name.replaceAll(".*[/\\\\]", "").replaceAll("[^A-Za-z0-9._-]+", "-");
        return Stream.of(plain.split("\\.")).filter(part -> !part.isEmpty()).collect(Collectors.joining("."));
    }

    String scenario() {
        return need(text, "text");
    }

    /** The scenario as it was opened, where it was another. */
    Optional<String> before() {
        return Optional.ofNullable(opened)
                .filter(before -> !before.equals(text) || !sentBefore().equals(allSent()));
    }

    /** The files that it named. */
    List<Sent> sentBefore() {
        return openedFiles == null ? allSent() : checked(openedFiles);
    }

    /** What a file of the scenario is called, without its ending. */
    String fileName() {
        String plain = plain(name == null ? "" : name);
        return plain.isEmpty() ? "line" : plain;
    }

    UnitSystem system() {
        return US.equals(units) ? UnitSystem.US_CUSTOMARY : UnitSystem.METRIC;
    }

    /** What the page calls {@code system}. */
    static String name(UnitSystem system) {
        return system == UnitSystem.US_CUSTOMARY ? US : "metric";
    }

    List<ScenarioText.Change> parts() {
        List<@Nullable Part> parts = need(changes, "changes");
        if (parts.size() > MOST_CHANGES) {
            throw new Refusal(400, "More than " + MOST_CHANGES + " changes at once.");
        }
        return parts.stream().map(part -> need(part, "a change").change()).toList();
    }

    int step() {
        int asked = effort == null ? 0 : effort;
        if (asked < 0 || asked > AnswerPrecision.STEPS) {
            throw new Refusal(400, "effort = " + asked + "; must be from 0 to " + AnswerPrecision.STEPS + ".");
        }
        return asked;
    }

    /** The coil change whose course is asked for; empty for the worst. */
    Optional<WorstChange> shown() {
        return replication == null
                ? Optional.empty()
                : Optional.of(new WorstChange(replication, need(change, "change"), 0));
    }

    String job() {
        return need(id, "id");
    }

    String across() {
        return need(x, "x");
    }

    String upwards() {
        return need(y, "y");
    }

    /** The files that the scenario may name. */
    List<Sent> allSent() {
        return files == null ? List.of() : checked(files);
    }

    private static List<Sent> checked(List<@Nullable Sent> sent) {
        if (sent.size() > MOST_FILES) {
            throw new Refusal(400, "More than " + MOST_FILES + " files.");
        }
        return sent.stream().map(one -> need(one, "a file")).map(Sent::checked).toList();
    }

    /** The file that was dropped. */
    Sent sent() {
        return need(file, "file").checked();
    }

    /** All of them, the one that was dropped in the place of one of its name. */
    List<Sent> withSent() {
        return Stream.concat(allSent().stream().filter(one -> !one.named().equals(sent().named())), Stream.of(sent()))
                .toList();
    }

    String newKind() {
        return need(kind, "kind");
    }

    String newPractice() {
        return need(practice, "practice");
    }

    private static <T> T need(@Nullable T given, String what) {
        if (given == null) {
            throw new Refusal(400, "The request lacks " + what + ".");
        }
        return given;
    }
}
