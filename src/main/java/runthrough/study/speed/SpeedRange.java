package runthrough.study.speed;

import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.Message;
import runthrough.quantity.Kind;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.StudyException;

/**
 * Which speeds to try: fastest rated process speeds (m/s). What cannot be asked is refused with a {@link StudyException},
 * whose message is for the user.
 *
 * @param from slowest, {@code > 0}
 * @param to fastest, {@code > from}
 * @param points how many, evenly spaced, from {@value #FEWEST} to {@value #MOST}
 */
public record SpeedRange(double from, double to, int points) {
    /** With fewer points there is no curve to see. */
    public static final int FEWEST = 3;

    /** More points than can be distinguished. */
    public static final int MOST = 1000;

    /** So many points unless given otherwise. */
    public static final int USUAL_POINTS = 15;

    /** The usual range, as factors on the present speed. */
    private static final double SLOWER = 0.6;

    private static final double FASTER = 1.4;

    /** A little faster than a speed at which the line's check refuses. */
    private static final double ABOVE = 1.001;

    /** A speed this close to another, as a part of the step from one to the next, adds nothing to it. */
    private static final double NEXT_TO = 0.2;

    /** Enough halvings to come within a millionth of the range. */
    private static final int HALVINGS = 20;

    /** Enough halvings to come to the spacing of doubles. */
    private static final int FINE_HALVINGS = 60;

    public SpeedRange {
        if (!(from > 0 && from < to && to < Double.POSITIVE_INFINITY)) {
            Units units = Units.of(UnitSystem.METRIC);
            throw new StudyException("range of speeds = " + units.text(Kind.SPEED, from) + " to "
                    + units.text(Kind.SPEED, to)
                    + "; must be more than 0 and not upside down. Give two speeds, the slower one first.");
        }
        if (!(points >= FEWEST && points <= MOST)) {
            throw new StudyException("points = " + points + "; must be from " + FEWEST + " to " + MOST
                    + ". Leave it out for " + USUAL_POINTS + ".");
        }
    }

    /** The range from 0.6 to 1.4 times the present speed, as far as {@code line} allows it. */
    public static SpeedRange usual(Line line) {
        double now = line.fastestRatedSpeed();
        double slowest = Math.min(now, Math.max(SLOWER * now, ABOVE * line.ratedSpeedsMustExceed()));
        double most = Math.min(FASTER * now, Math.max(now, line.practice().topSpeed(line.entry())));
        return new SpeedRange(slowest, fastestAccepted(line, now, most), USUAL_POINTS);
    }

    private static double fastestAccepted(Line line, double now, double most) {
        double good = now;
        double next = most;
        double bad = most;
        for (int i = 0; i < HALVINGS && good < most; i++) {
            if (LineCheck.accepts(line.withRatedSpeedsTimes(next / now))) {
                good = next;
            } else {
                bad = next;
            }
            next = (good + bad) / 2;
        }
        return good;
    }

    /**
     * This range up to the fastest speed at which {@code line} is feasible; all of it where it is feasible throughout or, as the
     * warnings of the line itself say, not even as it is.
     *
     * @throws StudyException when the line is feasible, but not at the slowest speed
     */
    SpeedRange within(Line line, UnitSystem units) {
        if (LineCheck.notFeasible(line, units).isPresent()) {
            return this;
        }
        Optional<Message> why = notFeasible(line, to, units);
        if (why.isEmpty()) {
            return this;
        }
        notFeasible(line, from, units).ifPresent(message -> {
            throw new StudyException("range of speeds from " + Units.of(units).text(Kind.SPEED, from)
                    + "; the line is not feasible at any of them: " + message.text());
        });
        double good = from;
        double bad = to;
        for (int i = 0; i < FINE_HALVINGS; i++) {
            double next = (good + bad) / 2;
            if (notFeasible(line, next, units).isPresent()) {
                bad = next;
            } else {
                good = next;
            }
        }
        // What is accepted as equal to what the carriage gives may be more by the last digits.
        return new SpeedRange(from, Math.min(good, line.emptyingRateLimit()), points);
    }

    /** Why {@code line} cannot be run at {@code speed} (m/s); empty where it can. */
    static Optional<Message> notFeasible(Line line, double speed, UnitSystem units) {
        return LineCheck.notFeasible(line.withRatedSpeedsTimes(speed / line.fastestRatedSpeed()), units);
    }

    /** The speeds, slowest first; one within the range that is next to the present speed {@code now} (m/s) gives way to it. */
    DoubleStream speeds(double now) {
        double step = (to - from) / (points - 1);
        return IntStream.range(0, points)
                .mapToDouble(i -> i == points - 1 ? to : from + step * i)
                .map(speed -> isInside(speed) && Math.abs(speed - now) < NEXT_TO * step ? now : speed);
    }

    private boolean isInside(double speed) {
        return from < speed && speed < to;
    }

    /** Refuses the range when {@code line} does not pass its check at one of its ends. */
    void check(Line line) {
        DoubleStream.of(from, to).forEach(speed -> check(line, speed));
    }

    private static void check(Line line, double speed) {
        Line variant = line.withRatedSpeedsTimes(speed / line.fastestRatedSpeed());
        Optional<Message> refused = LineCheck.check(variant, UnitSystem.METRIC).stream()
                .filter(Message::isError)
                .findFirst();
        refused.ifPresent(message -> {
            throw new StudyException(
                    "range of speeds = " + Units.of(UnitSystem.METRIC).text(Kind.SPEED, speed)
                            + " at one end; the line cannot be run so: " + message.text()
                            + " Or give another range, with --from and --to.");
        });
    }
}
