package runthrough.scenario;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.plant.check.Message;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * Finds the line and column that a message about the line is about: those of its key, or of the nearest part around it that
 * stands in the file; for a coil of a schedule those of its row.
 *
 * @param scenario the whole file
 * @param coils where each kind of coil is described
 */
record MessagePlaces(Raw scenario, List<Place> coils) {

    private static final Pattern SCHEDULED_COIL = Pattern.compile("coils\\.schedule\\[(\\d+)].*");
    /** Items are counted from 1. */
    private static final Pattern ITEM = Pattern.compile("\\[(\\d+)](.*)");

    /** Adds {@code message} to {@code problems} with its place. */
    void tell(Message message, Problems problems) {
        Place place = place(message.path());
        // What was found reads "value; rule", or is a rule alone.
        String[] parts = message.what().split("; ", 2);
        String value = parts.length == 2 ? parts[0] : "";
        String rule = parts[parts.length - 1];
        if (message.severity() == Message.Severity.ERROR) {
            problems.error(place, message.path(), value, rule, message.remedy());
        } else {
            problems.warning(place, message.path(), value, rule, message.remedy());
        }
    }

    /** The same for messages that come of something else than the file, written at {@code place}. */
    MessagePlaces at(Place place) {
        return new MessagePlaces(
                new Raw.Scalar("", place), coils.stream().map(coil -> place).toList());
    }

    private Place place(String path) {
        Matcher coil = SCHEDULED_COIL.matcher(path);
        if (coil.matches()) {
            return coils.get(Integer.parseInt(coil.group(1)) - 1);
        }
        return place(scenario, path);
    }

    /** The place of what {@code path} names in {@code raw}, or of the nearest part around it that is there. */
    static Place place(Raw raw, String path) {
        if (raw instanceof Raw.Mapping mapping) {
            String rest = path.startsWith(".") ? path.substring(1) : path;
            for (Raw.Entry entry : mapping.entries()) {
                boolean isPrefix = rest.startsWith(entry.key())
                        && (rest.length() == entry.key().length()
                                || ".[".indexOf(rest.charAt(entry.key().length())) >= 0);
                if (isPrefix) {
                    String inner = rest.substring(entry.key().length());
                    return inner.isEmpty() ? entry.value().place() : place(entry.value(), inner);
                }
            }
        }
        Matcher item = ITEM.matcher(path);
        if (raw instanceof Raw.Sequence sequence && item.matches()) {
            int number = Integer.parseInt(item.group(1));
            if (number <= sequence.items().size()) {
                return place(sequence.items().get(number - 1), item.group(2));
            }
        }
        return raw.place();
    }
}
