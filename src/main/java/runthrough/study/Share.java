package runthrough.study;

import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;

/** Shares that a user asks for, checked before anything runs. */
public final class Share {

    private Share() {}

    /**
     * A target, {@code > 0} and at most 1.
     *
     * @throws StudyException when it is not
     */
    public static double target(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new StudyException("target = " + text(share)
                    + "; must be more than 0 % and at most 100 %. Give the share of coil changes that should run"
                    + " through, such as 99.5 %.");
        }
        return share;
    }

    /**
     * A target that something is to be made large enough for: no finite run shows that every coil change will run through.
     *
     * @throws StudyException when it is not in (0, 1)
     */
    public static double targetBelowAll(double share) {
        if (!(share > 0 && share < 1)) {
            throw new StudyException("target = " + text(share)
                    + "; must be more than 0 % and less than 100 %. Give the share of coil changes that should run"
                    + " through, such as 99.5 %: no run, however long, can show that all of them will.");
        }
        return share;
    }

    /** A share for people to read. */
    public static String text(double share) {
        return Units.of(UnitSystem.METRIC).text(Kind.SHARE, share);
    }
}
