package runthrough.study.lever;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSource;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.study.cause.Reason;
import runthrough.study.cause.Without;
import runthrough.study.search.Scale;

/**
 * The levers of a line: what can be varied of it by itself, how far, and in which steps.
 *
 * <p>Rules LEVER-3, LEVER-5, LEVER-6, LEVER-7, LEVER-8, LEVER-9.
 *
 * @param line that they are of; it has an accumulator
 * @param system of the user's units, in which steps are round
 */
public record LineLevers(Line line, UnitSystem system) {
    /** Far enough in either direction for every question that makes sense. */
    private static final double FAR = 20;

    /** A little above a speed at which the line's check refuses, as a factor. */
    private static final double ABOVE = 1.001;

    /** So rarely does an element take longer than the most seconds that are tried off it. */
    private static final double HARDLY_EVER = 1 - 1e-6;

    /** More joints than this are hardly ever rejected. */
    private static final double MANY_REJECTS = 0.5;

    /** So many uncoilers are tried at least, and one more than there are. */
    private static final int SOME_UNCOILERS = 3;

    private double step(double reference, Kind kind) {
        return LeverStep.of(reference, unit(kind), line.isDeterministic());
    }

    private Unit unit(Kind kind) {
        return Units.of(system).unit(kind);
    }

    /** In whole strands where the accumulator has some, else by what is adjustable of it. */
    public Varied capacity() {
        Varied continuous = continuousCapacity();
        if (!(line.accumulator().form() instanceof StorageForm.Strands strands)) {
            return continuous;
        }
        double strand = strands.stroke();
        return new Varied(
                continuous.lever(),
                line,
                continuous.present(),
                false,
                new Scale(
                        continuous.lever().what().harder(),
                        strand,
                        Math.ceil(continuous.scale().to() / strand) * strand,
                        strand,
                        0),
                value -> line.with(line.accumulator().with(strands.withStrands((int) Math.rint(value / strand)))));
    }

    /** By what is adjustable of it: stroke, sag, diameter or the capacity itself. */
    public Varied continuousCapacity() {
        double now = line.accumulator().capacity();
        double needed = HandCalculation.of(line)
                .storage()
                .orElseThrow()
                .toRunThrough()
                .capacity()
                .needed();
        double reference = Math.min(now, needed);
        return new Varied(
                Lever.of(Lever.What.CAPACITY),
                line,
                now,
                false,
                new Scale(
                        Lever.What.CAPACITY.harder(),
                        reference / FAR,
                        FAR * Math.max(now, needed),
                        step(reference, Kind.LENGTH),
                        0),
                value -> line.with(line.accumulator().resizedTo(value)));
    }

    /** No faster than the entry, and no slower than the line bears. */
    public Varied processSpeed() {
        double fastest = line.fastestRatedSpeed();
        double least = Math.max(fastest / FAR, ABOVE * line.ratedSpeedsMustExceed());
        boolean alike =
                line.coils().stream().anyMatch(coil -> coil.processSpeed().isPresent());
        return scaled(
                Lever.What.PROCESS_SPEED,
                Kind.SPEED,
                fastest,
                alike,
                Math.min(least, fastest),
                Math.max(fastest, line.entry().topSpeed()),
                line::withRatedSpeedsTimes);
    }

    private Varied scaled(
            Lever.What what,
            Kind kind,
            double present,
            boolean alike,
            double least,
            double most,
            DoubleFunction<Line> variant) {
        return new Varied(
                Lever.of(what),
                line,
                present,
                alike,
                new Scale(what.harder(), least, most, step(present, kind), 0),
                value -> variant.apply(value / present));
    }

    /** Seconds more on every pass of the join work; those off it are negative. */
    public Varied jointCycleTime() {
        HandCalculation hand = HandCalculation.of(line);
        double now = Math.max(hand.joint().work(), 1e-3);
        double most = FAR * Math.max(now, hand.coilRun());
        double pass = line.change().join().stream().mapToDouble(this::longest).sum();
        return new Varied(
                Lever.of(Lever.What.JOINT_CYCLE_TIME),
                line,
                0,
                false,
                new Scale(Lever.What.JOINT_CYCLE_TIME.harder(), -pass, most, step(now, Kind.TIME), now),
                seconds -> seconds == 0 ? line : line.withEveryPassLongerBy(seconds));
    }

    /** The longest time (s) that {@code element} is worth shortening by. */
    private double longest(WorkElement element) {
        double drawn = element.time().drawn().quantile(HARDLY_EVER);
        return line.coilSource().kinds().stream()
                .mapToDouble(coil -> element.time().duration(drawn, coil.width(), coil.thickness()))
                .max()
                .orElse(0);
    }

    /** Seconds off an element each time it is done; with the most of them it takes no time. */
    public Varied element(Reason.Element element) {
        WorkElement present = Without.element(line.change(), element);
        double most = Math.max(longest(present), 1e-3);
        return new Varied(
                new Lever(Lever.What.ELEMENT, Optional.of(element)),
                line,
                0,
                false,
                new Scale(
                        Lever.What.ELEMENT.harder(),
                        0,
                        most,
                        step(Math.max(HandCalculation.of(line).joint().work(), 1), Kind.TIME),
                        most),
                seconds -> Without.shorter(line, element, seconds >= most ? Double.POSITIVE_INFINITY : seconds));
    }

    /** The chance of a rejected joint; where it is every n-th, n is what comes nearest from above. */
    public Varied rejects() {
        Reject reject = line.change().reject();
        double now = reject instanceof Reject.Chance chance ? chance.p() : reject.meanExtraPasses();
        return new Varied(
                Lever.of(Lever.What.REJECTS),
                line,
                now,
                false,
                new Scale(
                        Lever.What.REJECTS.harder(),
                        0,
                        Math.max(now, MANY_REJECTS),
                        step(Math.max(5 * now, 0.005), Kind.SHARE),
                        now),
                share -> line.with(line.change().withReject(reject(reject, share))));
    }

    private static Reject reject(Reject now, double share) {
        if (share <= 0) {
            return new Reject.Never();
        }
        return now instanceof Reject.Chance
                ? new Reject.Chance(share)
                : new Reject.Every((int) Math.ceil(1 / share - 1e-9));
    }

    public Varied crew() {
        int now = line.change().crew();
        return counted(
                Lever.What.CREW,
                now,
                Math.max(
                        now,
                        line.change().usefulCrew()
                                + line.change()
                                        .shifts()
                                        .map(Shifts::greatestLack)
                                        .orElse(0)),
                people -> line.with(line.change().withCrew(people)));
    }

    public Varied uncoilers() {
        int now = line.entry().uncoilers();
        return counted(
                Lever.What.UNCOILERS,
                now,
                Math.max(SOME_UNCOILERS, now + 1),
                number -> line.with(line.entry().withUncoilers(number)));
    }

    private Varied counted(Lever.What what, int now, int most, IntFunction<Line> variant) {
        return new Varied(
                Lever.of(what),
                line,
                now,
                false,
                new Scale(what.harder(), 1, most, 1, 0),
                value -> variant.apply((int) Math.rint(value)));
    }

    /** No slower than the process. */
    public Varied entryTopSpeed() {
        double now = line.entry().topSpeed();
        return new Varied(
                Lever.of(Lever.What.ENTRY_TOP_SPEED),
                line,
                now,
                false,
                new Scale(
                        Lever.What.ENTRY_TOP_SPEED.harder(),
                        Math.min(now, line.fastestRatedSpeed()),
                        FAR * now,
                        step(now, Kind.SPEED),
                        0),
                speed -> line.with(line.entry().withTopSpeed(speed)));
    }

    public Varied coilLength() {
        double now = meanLength(line.coilSource());
        return scaled(
                Lever.What.COIL_LENGTH,
                Kind.LENGTH,
                now,
                line.coils().size() > 1
                        || line.coils().stream().anyMatch(coil -> !coil.size().isConstant()),
                now / FAR,
                FAR * now,
                factor -> line.with(line.coilSource().withEach(coil -> coil.withLengthTimes(factor))));
    }

    /** Mean length (m) of the coils as they come. */
    private static double meanLength(CoilSource coilSource) {
        if (coilSource instanceof CoilSource.Mix mix) {
            return mix.shares().stream()
                            .mapToDouble(share -> share.weight() * share.coil().meanLength())
                            .sum()
                    / mix.totalWeight();
        }
        return coilSource.kinds().stream()
                .mapToDouble(Coil::meanLength)
                .average()
                .orElseThrow();
    }

    /** The lever of {@code what}; of no element. */
    public Varied of(Lever.What what) {
        return switch (what) {
            case CAPACITY -> capacity();
            case JOINT_CYCLE_TIME -> jointCycleTime();
            case PROCESS_SPEED -> processSpeed();
            case REJECTS -> rejects();
            case CREW -> crew();
            case UNCOILERS -> uncoilers();
            case ENTRY_TOP_SPEED -> entryTopSpeed();
            case COIL_LENGTH -> coilLength();
            case ELEMENT -> throw new IllegalArgumentException("which element?");
        };
    }

    /** Those that have a limit in either direction. */
    public List<Varied> numbers() {
        return List.of(processSpeed(), jointCycleTime(), capacity(), entryTopSpeed(), coilLength());
    }
}
