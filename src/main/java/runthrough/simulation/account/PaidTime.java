package runthrough.simulation.account;

import java.util.ArrayList;
import java.util.List;
import runthrough.plant.CoilChange;
import runthrough.plant.Shifts.Shift;

/**
 * What people are paid for: by the clock, breaks included and never moved. People times seconds.
 *
 * <p>Rule CREW-16.
 */
final class PaidTime {
    /** One shift where there are none in the description: it never ends. */
    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    private final double[] crew;
    private final double[] length;
    private final double cycle;

    PaidTime(CoilChange work) {
        List<Shift> shifts = work.shifts().map(given -> given.list()).orElse(List.of());
        crew = shifts.isEmpty()
                ? new double[] {work.crew()}
                : shifts.stream().mapToDouble(Shift::crew).toArray();
        length = shifts.isEmpty()
                ? new double[] {ENDLESS}
                : shifts.stream().mapToDouble(Shift::hours).toArray();
        cycle = work.shifts().map(given -> given.length()).orElse(ENDLESS);
    }

    /** Of each shift, from {@code from} to {@code to} (s). */
    List<Double> between(double from, double to) {
        List<Double> paid = new ArrayList<>();
        for (int i = 0; i < crew.length; i++) {
            paid.add(crew[i] * (worked(i, to) - worked(i, from)));
        }
        return paid;
    }

    /** How long shift {@code shift} has lasted until {@code time} (s), all of its turns together. */
    private double worked(int shift, double time) {
        if (cycle == ENDLESS) {
            return time;
        }
        double cycles = Math.floor(time / cycle);
        double left = time - cycles * cycle;
        for (int before = 0; before < shift; before++) {
            left -= length[before];
        }
        return cycles * length[shift] + Math.min(Math.max(left, 0), length[shift]);
    }
}
