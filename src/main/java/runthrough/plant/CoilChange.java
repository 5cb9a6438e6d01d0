package runthrough.plant;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import runthrough.plant.WorkElement.WorkTime;

/**
 * The work of a coil change.
 *
 * <p>Rule CHANGE-1.
 *
 * @param crew how many people, {@code >= 1}; where there are shifts the largest crew that any has
 * @param prepare done on the next coil while the line runs
 * @param tail strip standing; needs only the tail
 * @param join strip standing; needs the tail work done and the next coil prepared
 * @param reject how often a joint is not good
 * @param shifts who is there at which time; without them the crew is always there
 * @param joinShorterBy seconds off every pass of the join work, {@code >= 0}, see {@link #withJoinShorterBy}
 */
public record CoilChange(
        int crew,
        List<WorkElement> prepare,
        List<WorkElement> tail,
        List<WorkElement> join,
        Reject reject,
        Optional<Shifts> shifts,
        double joinShorterBy) {
    /** Name of the element that makes every pass longer. */
    public static final String ADDED = "added";

    public CoilChange {
        Ranges.of("")
                .atLeastOne("crew", crew)
                .notNegative("join shorter by", joinShorterBy, Ranges.Of.TIME)
                .refuse();
        prepare = List.copyOf(prepare);
        tail = List.copyOf(tail);
        join = List.copyOf(join);
        int people = crew;
        shifts.filter(given -> given.largestCrew() != people).ifPresent(given -> {
            throw new IllegalArgumentException(
                    "crew = " + people + "; must be the largest crew of the shifts, " + given.largestCrew());
        });
    }

    /** The work of a crew that is always there. */
    public CoilChange(
            int crew, List<WorkElement> prepare, List<WorkElement> tail, List<WorkElement> join, Reject reject) {
        this(crew, prepare, tail, join, reject, Optional.empty(), 0);
    }

    /**
     * The same with a crew of so many people, {@code >= 1}. Where there are shifts the largest of them has so many, and each of
     * the others as many more or fewer than before as that one, but at least one person: who asks what one more person would bring
     * means one more at all hours. Breaks stay where they are, see {@link Shifts#withLargestCrew}.
     */
    public CoilChange withCrew(int people) {
        return shifts.map(given -> withShifts(given.withLargestCrew(people)))
                .orElseGet(() -> new CoilChange(people, prepare, tail, join, reject, shifts, joinShorterBy));
    }

    /** The same with people by shifts. */
    public CoilChange withShifts(Shifts other) {
        return new CoilChange(other.largestCrew(), prepare, tail, join, reject, Optional.of(other), joinShorterBy);
    }

    /** The same with a crew of so many people, {@code >= 1}, who are there at all hours. */
    public CoilChange withCrewAlwaysThere(int people) {
        return new CoilChange(people, prepare, tail, join, reject, Optional.empty(), joinShorterBy);
    }

    /** The same with other lists of work. */
    public CoilChange withWork(List<WorkElement> toPrepare, List<WorkElement> onTail, List<WorkElement> toJoin) {
        return new CoilChange(crew, toPrepare, onTail, toJoin, reject, shifts, joinShorterBy);
    }

    /** The same with other rejects. */
    public CoilChange withReject(Reject other) {
        return new CoilChange(crew, prepare, tail, join, other, shifts, joinShorterBy);
    }

    /** The same with every element of preparation taking {@code factor} times as long, {@code factor > 0}. */
    public CoilChange withPreparationTimes(double factor) {
        return withWork(times(prepare, factor), tail, join);
    }

    /**
     * The same with {@code seconds} more in every pass of the join work, or fewer where they are negative. What was taken off or
     * added before goes against it, so that back and forth ends where it began. Rule LEVER-4.
     */
    public CoilChange withEveryPassLongerBy(double seconds) {
        double added = added();
        double net = added - joinShorterBy + seconds;
        CoilChange plain = added > 0 ? withWork(prepare, tail, join.subList(0, join.size() - 1)) : this;
        return net > 0 ? plain.withJoinShorterBy(0).withJoinLongerBy(net) : plain.withJoinShorterBy(Math.max(0, -net));
    }

    /** What was added to every pass of the join work (s); 0 where nothing was. */
    public double added() {
        if (join.isEmpty()) {
            return 0;
        }
        WorkElement last = join.get(join.size() - 1);
        double seconds = last.meanDuration(Joint.alike(1, 1));
        return last.name().equals(ADDED) && last.equals(added(seconds)) ? seconds : 0;
    }

    private static WorkElement added(double seconds) {
        return new WorkElement(
                ADDED, new WorkTime.Timed(Distribution.constant(seconds)), new WorkElement.Occurrence.Always(), true);
    }

    /** The same with one more element of {@code seconds}, {@code >= 0}, at the end of every pass of the join work. */
    public CoilChange withJoinLongerBy(double seconds) {
        return withWork(
                prepare,
                tail,
                Stream.concat(join.stream(), Stream.of(added(seconds))).toList());
    }

    /**
     * The same with {@code seconds}, {@code >= 0}, off every pass of the join work: off its first element, and what that does not
     * have off the next; a pass takes no less than 0. Rule LEVER-4.
     */
    public CoilChange withJoinShorterBy(double seconds) {
        return new CoilChange(crew, prepare, tail, join, reject, shifts, seconds);
    }

    /** The same with other work elements in the place of each, one for one. */
    public CoilChange withEach(UnaryOperator<WorkElement> change) {
        return withWork(
                prepare.stream().map(change).toList(),
                tail.stream().map(change).toList(),
                join.stream().map(change).toList());
    }

    private static List<WorkElement> times(List<WorkElement> elements, double factor) {
        return elements.stream().map(element -> element.takingTimes(factor)).toList();
    }

    /** How many people are paid for at a time, whatever they do; where there are shifts on average over all hours. */
    public double paidPeople() {
        return shifts.map(Shifts::paidPeople).orElse((double) crew);
    }

    /** Whether the whole crew suffices for any prepare element beside any element of the joint. */
    public boolean canPrepareDuringJoint() {
        return mostPeople(prepare.stream()) + mostPeople(Stream.concat(tail.stream(), join.stream())) <= crew;
    }

    /**
     * How many people can be at work at the same time, {@code >= 1}: at the largest element of the joint and beside it at the
     * largest of preparation. With rejects what is prepared again is work on the joint, too. Nobody has anything for more to do.
     */
    public int usefulCrew() {
        Stream<WorkElement> again =
                reject.meanExtraPasses() > 0 ? prepare.stream().filter(WorkElement::redo) : Stream.empty();
        int joint = mostPeople(Stream.of(tail.stream(), join.stream(), again).flatMap(Function.identity()));
        return Math.max(1, joint) + mostPeople(prepare.stream());
    }

    private static int mostPeople(Stream<WorkElement> elements) {
        return elements.mapToInt(WorkElement::people).max().orElse(0);
    }

    /** Whether it is random how long the work takes. */
    public boolean isRandom() {
        return reject.isRandom()
                || Stream.of(prepare, tail, join).flatMap(List::stream).anyMatch(WorkElement::isRandom);
    }

    /** How often a joint is rejected after it was made. Rule CHANGE-8. */
    public sealed interface Reject {

        /** Mean number of extra passes at a coil change. */
        double meanExtraPasses();

        /** Share of coil changes with at least {@code rejects} of them, {@code >= 1}. */
        double shareOf(double rejects);

        /** Whether chance decides. */
        default boolean isRandom() {
            return false;
        }

        /** Never. */
        record Never() implements Reject {
            @Override
            public double meanExtraPasses() {
                return 0;
            }

            @Override
            public double shareOf(double rejects) {
                return 0;
            }
        }

        /** Each pass with the chance {@code p}, in [0, 1). */
        record Chance(double p) implements Reject {
            public Chance {
                Ranges.of("reject").shareBelowOne("chance", p).refuse();
            }

            @Override
            public double meanExtraPasses() {
                return p / (1 - p);
            }

            @Override
            public double shareOf(double rejects) {
                return Math.pow(p, rejects);
            }

            @Override
            public boolean isRandom() {
                return p > 0;
            }
        }

        /** Once on coil changes n, 2n, 3n ...; {@code n >= 1}. */
        record Every(int n) implements Reject {
            public Every {
                Ranges.of("reject").atLeastOne("every", n).refuse();
            }

            @Override
            public double meanExtraPasses() {
                return 1.0 / n;
            }

            @Override
            public double shareOf(double rejects) {
                return rejects > 1 ? 0 : meanExtraPasses();
            }
        }
    }
}
