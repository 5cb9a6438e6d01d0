package runthrough.study.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.handcalc.Limit;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.study.cause.Cause;
import runthrough.study.limits.LineLimit.Difference;

/** Why simulation and closed form do not give the same limit: what is in the line that the closed form leaves out. */
final class Differences {

    private Differences() {}

    /**
     * The differences, the weightiest first: what the failures just beyond the limit are attributed to, when that is not what the
     * closed form found limiting; then chance, which widens everything; then the rest.
     */
    static List<Difference> of(Line line, double target, Optional<Limit> limitingFactor, Optional<Cause> beyond) {
        List<Difference> differences = new ArrayList<>();
        beyond.filter(cause -> !isKnown(cause, limitingFactor))
                .flatMap(Differences::of)
                .ifPresent(differences::add);
        add(differences, Difference.CHANCE, !line.isDeterministic());
        add(differences, Difference.SLOWING, line.process().slowing().isPresent());
        add(differences, Difference.DOWNTIME, line.process().downtime().isPresent());
        add(differences, Difference.COILS_DIFFER, line.coils().size() > 1);
        add(differences, Difference.OCCASIONAL_WORK, hasOccasionalWork(line.change()));
        add(differences, Difference.TARGET, target < 1);
        boolean grows = limitingFactor.filter(limit -> limit != Limit.CAPACITY).isPresent();
        add(differences, Difference.RUN_LENGTH, grows && !line.isDeterministic());
        return differences;
    }

    private static void add(List<Difference> differences, Difference difference, boolean applies) {
        if (applies) {
            differences.add(difference);
        }
    }

    private static boolean isKnown(Cause cause, Optional<Limit> limitingFactor) {
        return cause.limit().isPresent() && cause.limit().equals(limitingFactor);
    }

    private static Optional<Difference> of(Cause cause) {
        return switch (cause) {
            case ACCUMULATOR_NOT_FULL -> Optional.of(Difference.REFILL);
            case WAITING_FOR_PREPARATION, BOTH_WAITS -> Optional.of(Difference.PREPARATION);
            default -> Optional.empty();
        };
    }

    private static boolean hasOccasionalWork(CoilChange change) {
        return change.reject().meanExtraPasses() > 0
                || Stream.of(change.prepare(), change.tail(), change.join())
                        .flatMap(List::stream)
                        .anyMatch(element -> !(element.occurrence() instanceof Occurrence.Always));
    }
}
