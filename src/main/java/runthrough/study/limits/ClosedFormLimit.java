package runthrough.study.limits;

import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Storage;
import runthrough.plant.Line;
import runthrough.plant.check.LineCheck;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.Varied;
import runthrough.study.limits.LineLimit.Neighbour;
import runthrough.study.search.Crossing.Found;

/** Where by closed form one number overloads the line: by halving, since each of its values has a hand calculation. */
final class ClosedFormLimit {
    /** Enough halvings of any range to reach the spacing of doubles. */
    private static final int HALVINGS = 60;

    private final Varied driven;
    private final boolean isFeasible;

    ClosedFormLimit(Varied driven) {
        this.driven = driven;
        this.isFeasible = LeverRun.isFeasible(driven.line());
    }

    /** Whether there is a limit within the range. */
    Found found() {
        if (isBorne(driven.hardest())) {
            return Found.MET_THROUGHOUT;
        }
        return isBorne(driven.present()) || isBorne(driven.easiest()) ? Found.CROSSED : Found.MISSED_THROUGHOUT;
    }

    /** The limit; empty unless there is one within the range. */
    Optional<Neighbour> find() {
        if (found() != Found.CROSSED) {
            return Optional.empty();
        }
        double borne = isBorne(driven.present()) ? driven.present() : driven.easiest();
        double not = isBorne(driven.present()) ? driven.hardest() : driven.present();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (borne + not) / 2;
            if (isBorne(middle)) {
                borne = middle;
            } else {
                not = middle;
            }
        }
        Line beyond = driven.variant().apply(not);
        return Optional.of(new Neighbour(
                borne,
                LineCheck.accepts(beyond) && !isBorne(beyond)
                        ? HandCalculation.of(beyond).limitingFactor()
                        : Optional.empty()));
    }

    private boolean isBorne(double value) {
        Line line = driven.variant().apply(value);
        return isBorne(line) && (!isFeasible || LeverRun.isFeasible(line));
    }

    /** Whether nothing is overloaded: capacity, refill and preparation are each enough. */
    static boolean isBorne(Line line) {
        if (!LineCheck.accepts(line)) {
            return false;
        }
        HandCalculation hand = HandCalculation.of(line);
        Storage storage = hand.storage().orElseThrow();
        return storage.toRunThrough().capacity().isEnough()
                && storage.coilStrip().map(Margin::isEnough).orElse(false)
                && hand.preparationTime().isEnough()
                && !hand.preparation().grows();
    }
}
