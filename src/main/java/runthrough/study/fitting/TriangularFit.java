package runthrough.study.fitting;

/**
 * Fits the triangular distribution. For given ends the likeliest mode is one of the times, and the likelihood of all of them is found in
 * one pass over the times in order of size; the ends are then climbed to. S. Kotz and J. R. van Dorp, Beyond Beta, 2004, ch. 1
 * (from memory).
 */
final class TriangularFit {
    private final Durations times;
    private final double width;

    private TriangularFit(Durations times) {
        this.times = times;
        this.width = times.greatest() - times.least();
    }

    static FittedDistribution fit(Durations times) {
        TriangularFit fit = new TriangularFit(times);
        double[] best = LikelihoodMaximum.high(
                at -> fit.mode(fit.min(at), fit.max(at)).logLikelihood(),
                new double[] {Math.log(0.1), Math.log(0.1)},
                new double[] {0.5, 0.5});
        double min = fit.min(best);
        double max = fit.max(best);
        double mode = fit.mode(min, max).value();
        return FittedDistribution.of(new FittedNumbers.Triangular(min, mode, max), times);
    }

    /** The ends lie some part of the range beyond the times; a time is never negative. */
    private double min(double[] at) {
        return Math.max(0, times.least() - width * Math.exp(at[0]));
    }

    private double max(double[] at) {
        return times.greatest() + width * Math.exp(at[1]);
    }

    private record Mode(double value, double logLikelihood) {}

    /** The likeliest mode between {@code min} and {@code max}. */
    private Mode mode(double min, double max) {
        int n = times.n();
        double[] below = new double[n + 1];
        double[] above = new double[n + 1];
        for (int i = 0; i < n; i++) {
            below[i + 1] = below[i] + Math.log(times.get(i) - min);
            above[i + 1] = above[i] + Math.log(max - times.get(i));
        }
        Mode best = new Mode(times.least(), Double.NEGATIVE_INFINITY);
        for (int r = 0; r < n; r++) {
            double left = r == 0 ? 0 : below[r] - r * (below[r + 1] - below[r]);
            int rest = n - r - 1;
            double right = rest == 0 ? 0 : above[n] - above[r + 1] - rest * (above[r + 1] - above[r]);
            double sum = left + right;
            if (sum > best.logLikelihood()) {
                best = new Mode(times.get(r), sum);
            }
        }
        return new Mode(best.value(), best.logLikelihood() + n * Math.log(2 / (max - min)));
    }
}
