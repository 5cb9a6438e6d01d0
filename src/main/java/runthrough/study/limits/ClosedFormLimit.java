package runthrough.study.limits;

import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Storage;
import runthrough.plant.Line;
import runthrough.plant.LineCheck;
import runthrough.study.limits.LineLimit.Neighbour;
import runthrough.study.search.Crossing.Harder;

/** Where by closed form one number overloads the line: by halving, since each of its values has a hand calculation. */
final class ClosedFormLimit {
    /** Enough halvings of any range to reach the spacing of doubles. */
    private static final int HALVINGS = 60;

    private final Driven driven;

    ClosedFormLimit(Driven driven) {
        this.driven = driven;
    }

    /** The limit; empty when there is none in the range, or none of it is borne. */
    Optional<Neighbour> find() {
        boolean largerIsHarder = driven.what().harder() == Harder.LARGER;
        double hardest = largerIsHarder ? driven.to() : driven.from();
        double easiest = largerIsHarder ? driven.from() : driven.to();
        double borne = isBorne(driven.present()) ? driven.present() : easiest;
        double not = isBorne(driven.present()) ? hardest : driven.present();
        if (!isBorne(borne) || isBorne(not)) {
            return Optional.empty();
        }
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
                borne, LineCheck.accepts(beyond) ? HandCalculation.of(beyond).binding() : Optional.empty()));
    }

    /** Whether nothing is overloaded: capacity, refill and preparation are each enough. */
    private boolean isBorne(double value) {
        Line line = driven.variant().apply(value);
        if (!LineCheck.accepts(line)) {
            return false;
        }
        HandCalculation hand = HandCalculation.of(line);
        Storage storage = hand.storage().orElseThrow();
        return storage.capacity().isEnough()
                && storage.coilStrip().map(Margin::isEnough).orElse(false)
                && hand.preparationTime().isEnough()
                && !hand.preparation().grows();
    }
}
