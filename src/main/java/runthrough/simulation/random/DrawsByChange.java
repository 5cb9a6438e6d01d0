package runthrough.simulation.random;

import umontreal.ssj.rng.MRG32k3a;

/**
 * Numbers that belong to coil changes: the first pass of coil change n takes number n of the stream, whether or not those
 * before were needed, and what is done again takes numbers from a place that is kept for it. So a joint that is rejected, or
 * an element that is done, leaves every later coil change its random numbers.
 *
 * <p>Rule RANDOM-4.
 */
final class DrawsByChange implements SourceDraws {
    private final Streams streams;
    private final int source;
    private final MRG32k3a firstPasses;
    private int taken;

    DrawsByChange(Streams streams, int source) {
        this.streams = streams;
        this.source = source;
        this.firstPasses = streams.stream(source);
    }

    @Override
    public double next(int change, int pass) {
        if (pass > 1 || change == 0) {
            return again(change, pass);
        }
        if (change <= taken) {
            throw new IllegalStateException("coil change " + change + " asks for its number after " + taken);
        }
        double number = Double.NaN;
        for (; taken < change; taken++) {
            number = firstPasses.nextDouble();
        }
        return number;
    }

    private double again(int change, int pass) {
        MRG32k3a repeats = streams.repeats(source, change);
        double number = repeats.nextDouble();
        for (int i = 1; i < pass; i++) {
            number = repeats.nextDouble();
        }
        return number;
    }
}
