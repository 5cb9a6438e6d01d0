package runthrough.web;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.ScenarioText;

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
        @Nullable String practice) {

    private static final int MOST_CHANGES = 100;
    private static final String US = "us";

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

    String scenario() {
        return need(text, "text");
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
