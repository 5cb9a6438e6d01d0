package runthrough.scenario;

import java.util.Optional;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.source.YamlText;

/**
 * A value for a part of a scenario, in the place of what its file says.
 *
 * @param path of the part, such as {@code entry.top-speed} or {@code coil-change.join.weld.travel}, or the name of a {@link
 *     runthrough.plant.LineFigure}
 * @param value as it would stand in the file; its place is where problems with it are reported
 */
public record Setting(String path, Raw value) {

    /** Where a setting was written that comes from a time-study sheet; all others are on top of it. */
    public static final String MEASURED = "--times";

    public Setting {
        path = path.strip();
    }

    /**
     * A setting written outside of the file.
     *
     * @param text of the value as it would stand in the file: a number with its unit, a word, a list in brackets or keys in
     *     braces
     * @param where it was written, such as the name of an option
     * @param problems takes it when {@code text} cannot be read
     */
    public static Optional<Setting> written(String path, String text, String where, Problems problems) {
        Place place = Place.whole(where);
        if (text.isBlank() || text.strip().startsWith("#")) {
            problems.error(place, path, "", "is empty", "Give a value, with its unit if it has one.");
            return Optional.empty();
        }
        Problems found = new Problems();
        Optional<Raw> value = YamlText.read(new TextFile(where, text.strip()), found);
        boolean hasBrackets = text.strip().startsWith("{") || text.strip().startsWith("[");
        found.errors()
                .forEach(problem -> problems.error(
                        place,
                        path,
                        text,
                        hasBrackets ? problem.rule() : "cannot be read as a value",
                        hasBrackets ? problem.remedy() : "Give a number with its unit, a word, or a text in quotes."));
        return value.map(raw -> new Setting(path, raw.at(place)));
    }

    /** Whether it was written outside of the file, and not in one of its alternatives. */
    boolean isBesides() {
        return place().line() == 0;
    }

    /** Whether it is a measured time. */
    boolean isMeasured() {
        return place().file().equals(MEASURED);
    }

    /** Whether it adds an item to a list. */
    boolean isAddition() {
        return path.endsWith("[+]");
    }

    /** The path of the part that it stands in; empty for the whole. */
    String around() {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    /** Where it was written. */
    Place place() {
        return value.place();
    }
}
