package runthrough.scenario.source;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong while reading goes on, so that the user learns of everything at once. */
public final class Problems {

    /** More than anybody mends in one go; what exceeds it is only counted. */
    private static final int MOST = 100;

    private final Set<Problem> errors = new LinkedHashSet<>();
    private final Set<Problem> warnings = new LinkedHashSet<>();
    private int further;
    private int repeated;

    /** Adds something that must be mended before anything runs; once, though a file may be read for several reasons. */
    public void error(Place place, String path, String value, String rule, String remedy) {
        error(Problem.at(place, path, value, rule, remedy));
    }

    /** The same for one that is described already. */
    public void error(Problem problem) {
        if (errors.contains(problem)) {
            repeat();
        } else if (isFull()) {
            further++;
        } else {
            errors.add(problem);
        }
    }

    /** Whether something is wrong with {@code file}. */
    public boolean isRefused(String file) {
        return errors.stream().anyMatch(problem -> problem.file().equals(file));
    }

    /** Counts one that was added before and is found for another reason. */
    public void repeat() {
        repeated++;
    }

    /** Adds something that the user should know. */
    public void warning(Place place, String path, String value, String rule, String remedy) {
        Problem problem = Problem.at(place, path, value, rule, remedy);
        if (warnings.size() < MOST) {
            warnings.add(problem);
        }
    }

    /** Whether nothing must be mended so far. */
    public boolean none() {
        return errors.isEmpty();
    }

    /** Whether further errors are only counted. */
    public boolean isFull() {
        return errors.size() == MOST;
    }

    /** How many errors so far, repeated ones too, so that a reader can tell whether it added one. */
    public int count() {
        return errors.size() + further + repeated;
    }

    /** The errors in the order of the files, lines and columns; the first {@value #MOST} found. */
    public List<Problem> errors() {
        return errors.stream().sorted(Problem.BY_PLACE).toList();
    }

    /** The warnings in the order of the files, lines and columns. */
    public List<Problem> warnings() {
        return warnings.stream().sorted(Problem.BY_PLACE).toList();
    }

    /** How many errors there are beyond those listed. */
    public int further() {
        return further;
    }
}
