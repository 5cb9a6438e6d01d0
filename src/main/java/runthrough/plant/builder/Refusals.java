package runthrough.plant.builder;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;
import runthrough.plant.check.Message.Severity;

/** What is refused of a description while it is made: numbers out of their ranges, and parts that are not there. */
final class Refusals {
    /** The records say what is wrong as "name = value; what is allowed". */
    private static final String VALUE = " = ";

    /** Of these no check is made that has to do with other parts. */
    private static final Set<LinePart> UNRELATED = EnumSet.of(
            LinePart.UNCOILERS,
            LinePart.CREW,
            LinePart.SHIFTS,
            LinePart.JOINT_PASSAGE,
            LinePart.JOINT_BREAK,
            LinePart.REJECT,
            LinePart.PROCESS_PATH,
            LinePart.SCRAP_PER_STOP,
            LinePart.SCRAP_PER_JOINT,
            LinePart.FILL_RATE_LIMIT,
            LinePart.OVERTRAVEL_ALLOWANCE);

    /** Parts of which each value has a path of its own. */
    private static final Set<LinePart> COMPOSED = EnumSet.of(
            LinePart.COIL,
            LinePart.CREEP,
            LinePart.SLOWING,
            LinePart.JOINT_PASSAGE,
            LinePart.JOINT_BREAK,
            LinePart.SHIFTS);

    /** The last word of a value's path where a record calls the value otherwise. */
    private static final Map<String, String> KEYS = Map.ofEntries(
            Map.entry("creep speed", "speed"),
            Map.entry("creep length", "length"),
            Map.entry("slowed speed", "speed"),
            Map.entry("slowing level", "level"),
            Map.entry("resume level", "resume"),
            Map.entry("joint passage speed", "speed"),
            Map.entry("strip before the joint", "before"),
            Map.entry("strip after the joint", "after"),
            Map.entry("break chance", "chance"),
            Map.entry("length of the process section", "length"),
            Map.entry("scrap of a break", "scrap"),
            Map.entry("hours of a shift", "hours"));

    private final List<Message> messages = new ArrayList<>();
    private final Set<LinePart> parts = EnumSet.noneOf(LinePart.class);

    /** Does {@code step}; a value that it refuses is kept as a message about {@code part}. */
    void tell(LinePart part, Runnable step) {
        tell(part, part.path(), step);
    }

    /** The same of {@code part} at {@code path}, which is one of several. */
    void tell(LinePart part, String path, Runnable step) {
        try {
            step.run();
        } catch (IllegalArgumentException e) {
            String text = String.valueOf(e.getMessage());
            int value = text.indexOf(VALUE);
            String name = value < 0 ? "" : text.substring(0, value);
            String member = COMPOSED.contains(part) && value >= 0 ? "." + KEYS.getOrDefault(name, name) : "";
            String what = value < 0 ? text : text.substring(value + VALUE.length());
            messages.add(new Message(Severity.ERROR, path + member, what, "Give a value in its range."));
            parts.add(part);
        }
    }

    /** Refuses what was said of {@code part}. */
    void refuse(LinePart part, String what, String remedy) {
        messages.add(message(part, what, remedy));
        parts.add(part);
    }

    /** {@code value}; when there is none, and nothing was refused of it, a message goes to {@code missing}. */
    <T> @Nullable T given(LinePart part, @Nullable T value, String remedy, List<Message> missing) {
        if (value == null && !parts.contains(part)) {
            missing.add(message(part, "nothing; must be given", remedy));
        }
        return value;
    }

    private static Message message(LinePart part, String what, String remedy) {
        return new Message(Severity.ERROR, part.path(), what, remedy);
    }

    boolean any() {
        return !messages.isEmpty();
    }

    /** Whether what relates the parts to each other can be checked although some values were refused. */
    boolean leaveRelationsToCheck() {
        return UNRELATED.containsAll(parts);
    }

    LineRefusedException with(List<Message> others) {
        List<Message> all = new ArrayList<>(messages);
        all.addAll(others);
        return new LineRefusedException(all);
    }
}
