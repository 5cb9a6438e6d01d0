package runthrough.plant.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;

/**
 * Whether every coil outlasts its crops, can be stopped in time and is long enough to reach its speed. Each kind of coil is
 * reported for its gravest trouble only, and the kinds that share a trouble together.
 *
 * <p>Rules CHECK-2, CHECK-3, CHECK-4, CHECK-5.
 */
final class CoilCheck {
    private final Line line;
    private final Messages messages;
    private final Wording in;
    private final List<Coil> coils;

    private CoilCheck(Line line, Messages messages) {
        this.line = line;
        this.messages = messages;
        this.in = messages.in();
        this.coils = line.coils();
    }

    /** What may be the matter with a coil, the gravest first. */
    private enum Trouble {
        SHORTER_THAN_CROPS,
        FIRST_TOO_SHORT_TO_STOP,
        MAY_BE_SHORTER_THAN_CROPS,
        FIRST_MAY_BE_TOO_SHORT_TO_STOP,
        TOO_SHORT_TO_REACH_SPEED,
        WITHIN_UNCOILER_PATH,
        NONE
    }

    /** Says nothing of {@code unknown} coils, counted from 0. */
    static void check(Line line, Set<Integer> unknown, Messages messages) {
        CoilCheck check = new CoilCheck(line, messages);
        Map<Trouble, Sharing> troubles = new EnumMap<>(Trouble.class);
        for (int index = 0; index < check.coils.size(); index++) {
            Trouble gravest = unknown.contains(index) ? Trouble.NONE : check.gravest(index);
            troubles.merge(gravest, new Sharing(index, 1), (a, b) -> new Sharing(a.first, a.count + 1));
        }
        troubles.remove(Trouble.NONE);
        troubles.forEach(check::report);
    }

    /** The kinds of coil that share a trouble: the first of them, and how many. */
    private record Sharing(int first, int count) {}

    private Trouble gravest(int index) {
        Coil coil = coils.get(index);
        double shortest = coil.usableLength(Distribution.LEAST_DRAW);
        double longest = coil.usableLength(1 - Distribution.LEAST_DRAW);
        double runOut = line.runOutLength(line.ratedSpeed(coil));
        if (isNothing(longest, coil)) {
            return Trouble.SHORTER_THAN_CROPS;
        } else if (mayComeFirst(index) && Excess.isMore(runOut, longest)) {
            return Trouble.FIRST_TOO_SHORT_TO_STOP;
        } else if (isNothing(shortest, coil)) {
            return Trouble.MAY_BE_SHORTER_THAN_CROPS;
        } else if (mayComeFirst(index) && Excess.isMore(runOut, shortest)) {
            return Trouble.FIRST_MAY_BE_TOO_SHORT_TO_STOP;
        } else if (Excess.isMore(lengthToReachSpeed(coil), shortest)) {
            return Trouble.TOO_SHORT_TO_REACH_SPEED;
        } else if (Excess.isAtLeast(line.entry().uncoilerPath(), shortest)) {
            return Trouble.WITHIN_UNCOILER_PATH;
        }
        return Trouble.NONE;
    }

    /** Whether the crops of {@code coil} leave nothing of it. */
    private static boolean isNothing(double usable, Coil coil) {
        double crops = coil.headCrop() + coil.tailCrop();
        return Excess.isAtLeast(crops, usable + crops);
    }

    /** In a schedule only the first coil comes first; in a mix it may be any. */
    private boolean mayComeFirst(int index) {
        return index == 0 || line.coilSource() instanceof CoilSource.Mix;
    }

    private double lengthToReachSpeed(Coil coil) {
        double rated = line.ratedSpeed(coil);
        return rated * rated / (2 * line.headAcceleration()) + line.runOutLength(rated);
    }

    private void report(Trouble trouble, Sharing sharing) {
        int first = sharing.first();
        Coil coil = coils.get(first);
        String path = LinePart.coil(line.coilSource(), first);
        String others = sharing.count() == 1 ? "" : " (and " + (sharing.count() - 1) + " more like it)";
        String given = usable(coil) + " of usable strip" + others + "; ";
        switch (trouble) {
            case SHORTER_THAN_CROPS ->
                messages.error(
                        path,
                        given + "must be more than 0 after its crops, " + crops(coil),
                        "Give a longer coil or shorter crops.");
            case FIRST_TOO_SHORT_TO_STOP ->
                messages.error(
                        path,
                        given + "must be at least what it takes to stop the first coil from " + speed(coil) + ", "
                                + in.leastLength(line.runOutLength(line.ratedSpeed(coil))),
                        "Give a longer first coil, a faster stop or a lower process speed.");
            case MAY_BE_SHORTER_THAN_CROPS ->
                messages.warning(
                        path,
                        given + "should always be more than 0 after its crops, " + crops(coil)
                                + ", but is not for 1 coil in " + in.oneIn(shareShorterThan(coil, 0)),
                        "A run that draws such a coil ends with an error: give lengths that are bounded below.");
            case FIRST_MAY_BE_TOO_SHORT_TO_STOP ->
                messages.warning(
                        path,
                        given + "should always be at least what it takes to stop the first coil from " + speed(coil)
                                + ", "
                                + in.leastLength(line.runOutLength(line.ratedSpeed(coil)))
                                + ", but is not for 1 coil in "
                                + in.oneIn(shareShorterThan(coil, line.runOutLength(line.ratedSpeed(coil)))),
                        "A run that draws such a first coil ends with an error: give lengths that are bounded below.");
            case TOO_SHORT_TO_REACH_SPEED ->
                messages.warning(
                        path,
                        given + "should be at least what it takes to reach " + speed(coil) + " and stop from it again, "
                                + in.leastLength(lengthToReachSpeed(coil)),
                        "The entry cannot refill the accumulator from such a coil: give longer coils or faster ramps.");
            case WITHIN_UNCOILER_PATH ->
                messages.warning(
                        path,
                        given + "should be more than the strip path from uncoiler to joiner, "
                                + in.leastLength(line.entry().uncoilerPath()),
                        "Its tail leaves the uncoiler before it has begun to run, which counts as leaving when its joint is"
                                + " released: give a shorter path or longer coils.");
            case NONE -> throw new IllegalArgumentException("no trouble to report");
        }
    }

    private String speed(Coil coil) {
        return in.speed(line.ratedSpeed(coil));
    }

    private String crops(Coil coil) {
        return in.length(coil.headCrop() + coil.tailCrop());
    }

    /** The usable length, or the range of what may be drawn. */
    private String usable(Coil coil) {
        double shortest = coil.usableLength(Distribution.LEAST_DRAW);
        double longest = coil.usableLength(1 - Distribution.LEAST_DRAW);
        return shortest == longest ? in.length(shortest) : in.length(shortest) + " to " + in.length(longest);
    }

    /** The share of coils of a kind whose usable length is at most {@code length} (m). */
    private static double shareShorterThan(Coil coil, double length) {
        return Bisection.share(p -> coil.usableLength(p) <= length);
    }
}
