package runthrough.bars;

import java.util.Arrays;

/** Figures that were measured several times, in rows by jar. */
final class Medians {
    private final double[][] measured;

    Medians(int jars, int times) {
        measured = new double[jars][times];
    }

    void set(int jar, int time, double value) {
        measured[jar][time] = value;
    }

    double of(int jar) {
        return of(measured[jar]);
    }

    static double of(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
