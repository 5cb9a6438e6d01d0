package runthrough.study.sensitivity;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import runthrough.study.sensitivity.Swing.End;

/**
 * What moving an input does.
 *
 * @param swing what was moved
 * @param low at the lower end
 * @param high at the higher end
 */
public record SwingEffect(Swing swing, AtEnd low, AtEnd high) {

    /**
     * What it does at one end.
     *
     * @param end of the range
     * @param strip change of the margin (m), or of the lost time (s) where there is none; empty where the end is not possible
     * @param share change of the share run through; empty where the end is not possible
     */
    public record AtEnd(End end, Optional<Change> strip, Optional<Change> share) {}

    /** How far it is shown to move the margin, or the lost time: the greater of both ends, {@code >= 0}; 0 if it is not. */
    public double stripReach() {
        return reach(AtEnd::strip);
    }

    /** How far it is shown to move the share run through: the greater of both ends, {@code >= 0}; 0 if it is not. */
    public double shareReach() {
        return reach(AtEnd::share);
    }

    /** Whether it is shown to move anything. */
    public boolean isShown() {
        return stripReach() > 0 || shareReach() > 0;
    }

    private double reach(Function<AtEnd, Optional<Change>> what) {
        return Stream.of(low, high)
                .flatMap(end -> what.apply(end).stream())
                .filter(Change::shown)
                .mapToDouble(change -> Math.abs(change.by().mean()))
                .max()
                .orElse(0);
    }
}
