package runthrough.scenario.grammar;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;

/**
 * Where reading stands, and where to tell what is wrong.
 *
 * @param path of the key being read, such as {@code coils.mix[2].width}, items counted from 1; empty for the whole file
 * @param howToMend a wrong value of this key
 * @param problems what was found so far
 * @param readings of earlier, that need not be done again
 * @param isRetold whether this was read before, and is read once more for what can stand in for a part of it: other files that it
 *     names are not
 */
public record Context(String path, Supplier<String> howToMend, Problems problems, Readings readings, boolean isRetold) {

    /** At the top of a file. */
    public static Context top(Problems problems) {
        return top(problems, Readings.none());
    }

    /** The same, where {@code readings} need not be done again. */
    public static Context top(Problems problems, Readings readings) {
        return new Context("", () -> "", problems, readings, false);
    }

    /** At the top of a part of a file that was read before; what is wrong with it is known. */
    static Context retold() {
        return new Context("", () -> "", new Problems(), Readings.none(), true);
    }

    /** How to mend a wrong value of this key. */
    public String remedy() {
        return howToMend.get();
    }

    /** The same place, where {@code others} take what is wrong. */
    public Context reportingTo(Problems others) {
        return new Context(path, howToMend, others, readings, isRetold);
    }

    /** What {@code raw}, which stands under {@code key} of the section where this stands, says. */
    <T> Optional<T> read(Key<T> key, Raw raw) {
        return readings.of(raw, key.shape(), () -> key.shape().read(raw, at(key)), problems);
    }

    /** At {@code key} of the section where this stands. */
    public Context at(Key<?> key) {
        return new Context(pathTo(key.name()), key::remedy, problems, readings, isRetold);
    }

    /** At the {@code number}-th item, counted from 1. */
    public Context item(int number) {
        return new Context(path + "[" + number + "]", howToMend, problems, readings, isRetold);
    }

    /** At something that the user named. */
    public Context named(String name) {
        return new Context(pathTo(name), howToMend, problems, readings, isRetold);
    }

    /** The same place with another hint. */
    public Context withRemedy(String other) {
        return new Context(path, () -> other, problems, readings, isRetold);
    }

    /** Path of {@code name} in the section where this stands. */
    public String pathTo(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Reports that {@code raw} is wrong. */
    public void error(Raw raw, String rule) {
        error(raw, rule, remedy());
    }

    /** Reports that {@code raw} is wrong and how to mend it. */
    public void error(Raw raw, String rule, String mended) {
        problems.error(raw.place(), path, raw.shown(), rule, mended);
    }

    /** Reports that {@code raw} is not of the shape that is allowed here. */
    public void wrongShape(Raw raw, String allowed) {
        boolean isBlank = raw instanceof Raw.Scalar scalar && TextFile.isBlank(scalar.text());
        error(raw, (isBlank ? "has no value; must be " : "must be ") + allowed);
    }

    /** Reports that {@code raw} is no number without a unit of which {@code isRead} knows, with the reason where that is known. */
    void wrongNumber(Raw raw, Predicate<String> isRead, String allowed) {
        Optional<Reading.Unreadable> odd =
                raw instanceof Raw.Scalar scalar ? QuantityParser.oddNumber(scalar.text(), isRead) : Optional.empty();
        odd.ifPresentOrElse(known -> error(raw, known.rule(), known.remedy()), () -> wrongShape(raw, allowed));
    }
}
