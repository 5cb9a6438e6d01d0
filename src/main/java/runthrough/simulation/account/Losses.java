package runthrough.simulation.account;

/**
 * To what each instant below the rated speed belongs: the first of downtime, joint break until it is repaired, lack of strip with
 * the recovery from it, recovery from a break, joint passage. What lacks for strip belongs to one coil change, whatever begins
 * in the meantime. SI units.
 *
 * <p>Rules PASS-4, PASS-5, BREAK-6, REPORT-6, REPORT-7.
 */
final class Losses {
    private final ObservedLine line;
    /** Starved, slowed, or recovering from it. */
    private boolean forStrip;
    /** Broken, or recovering from it. */
    private boolean fromBreak;
    /** In a joint passage, or recovering from it. */
    private boolean fromPassage;
    /** The coil change that loses what lacks for strip. */
    private ChangeUnderWay owner = new ChangeUnderWay();

    Losses(ObservedLine line) {
        this.line = line;
    }

    /** A starved stop, a slowing or a hold begins, in {@code latest}: all metres are its own from here on. */
    void stripLacks(ChangeUnderWay latest) {
        forStrip = true;
        owner = latest;
    }

    /** A joint has broken. */
    void jointBreaks() {
        fromBreak = true;
    }

    /** A joint passage opens. */
    void passageOpens() {
        fromPassage = true;
    }

    /** Whether the process is below its rated speed for any of these, or may be. */
    boolean mayLose() {
        return forStrip || fromBreak || fromPassage;
    }

    /** What no longer holds the process is over once it has its rated speed. */
    void noteSpeed() {
        if (line.processSpeed() >= line.ratedSpeed()) {
            forStrip &= line.isStarved() || line.isSlowed();
            fromBreak &= line.isBroken();
            fromPassage &= line.isInJointPassage();
        }
    }

    /** Books the {@code dt} seconds ahead, in which no downtime holds the process, at the rated speed {@code rated}. */
    void book(double dt, double rated, Sums sums) {
        double metres = shortfall(rated - line.processSpeed(), -line.processAcceleration(), dt);
        if (line.isBroken()) {
            sums.breakSeconds += dt;
            broken(metres, rated, sums);
        } else if (forStrip) {
            if (line.isStarved() && line.processStands()) {
                sums.starvedSeconds += dt;
            }
            double time = metres / rated;
            sums.lostMetres += metres;
            sums.lostTime += time;
            owner.lost(metres, time);
        } else if (fromBreak) {
            broken(metres, rated, sums);
        } else if (fromPassage) {
            sums.passageLostMetres += metres;
        }
    }

    private static void broken(double metres, double rated, Sums sums) {
        sums.breakLostMetres += metres;
        sums.breakLostTime += metres / rated;
    }

    /** Integral over {@code dt} of {@code below + slope t} where it is positive. */
    private static double shortfall(double below, double slope, double dt) {
        double end = below + slope * dt;
        if (below >= 0 && end >= 0) {
            return dt * (below + end) / 2;
        }
        if (below <= 0 && end <= 0) {
            return 0;
        }
        double positive = Math.max(below, end);
        return positive * positive / (2 * Math.abs(slope));
    }
}
