package runthrough.study.lever;

import runthrough.quantity.Unit;

/**
 * In which steps a lever is varied: round ones in the user's unit, so that what is printed is what was tried.
 *
 * <p>Rule LEVER-12.
 */
final class LeverStep {
    /** A step where something is random, as a part of the reference: finer than any interval of a run of bearable length. */
    private static final double FINE = 2e-3;

    /** The same where nothing is. */
    private static final double EXACT = 1e-4;

    private LeverStep() {}

    /**
     * The step (SI).
     *
     * @param reference amount of the lever, or what it is held against (SI), {@code > 0}
     */
    static double of(double reference, Unit unit, boolean deterministic) {
        double about = Math.log10(unit.fromSi(reference * (deterministic ? EXACT : FINE)));
        return unit.toSi(Math.pow(10, deterministic ? Math.floor(about) : Math.rint(about)));
    }

    /** The step of a part of present values: 0.1 %, or 0.01 % where nothing is random. */
    static double ofParts(boolean deterministic) {
        return Math.pow(10, Math.rint(Math.log10(deterministic ? EXACT : FINE / 2)));
    }
}
