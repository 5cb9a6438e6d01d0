package runthrough.scenario.grammar;

import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * Where reading stands, and where to tell what is wrong.
 *
 * @param path of the key being read, such as {@code coils.mix[2].width}, items counted from 1; empty for the whole file
 * @param remedy how to mend a wrong value of this key
 * @param problems what was found so far
 */
public record Context(String path, String remedy, Problems problems) {

    /** At the top of a file. */
    public static Context top(Problems problems) {
        return new Context("", "", problems);
    }

    /** At {@code key} of the section where this stands. */
    public Context at(Key<?> key) {
        return new Context(pathTo(key.name()), key.remedy(), problems);
    }

    /** At the {@code number}-th item, counted from 1. */
    public Context item(int number) {
        return new Context(path + "[" + number + "]", remedy, problems);
    }

    /** At something that the user named. */
    public Context named(String name) {
        return new Context(pathTo(name), remedy, problems);
    }

    /** The same place with another hint. */
    public Context withRemedy(String other) {
        return new Context(path, other, problems);
    }

    /** Path of {@code name} in the section where this stands. */
    public String pathTo(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Reports that {@code raw} is wrong. */
    public void error(Raw raw, String rule) {
        error(raw, rule, remedy);
    }

    /** Reports that {@code raw} is wrong and how to mend it. */
    public void error(Raw raw, String rule, String howToMend) {
        problems.error(raw.place(), path, raw.shown(), rule, howToMend);
    }

    /** Reports that {@code raw} is not of the shape that is allowed here. */
    public void wrongShape(Raw raw, String allowed) {
        boolean isBlank = raw instanceof Raw.Scalar scalar && scalar.text().isBlank();
        error(raw, (isBlank ? "has no value; must be " : "must be ") + allowed);
    }
}
