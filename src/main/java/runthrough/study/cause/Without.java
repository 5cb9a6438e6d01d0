package runthrough.study.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import runthrough.plant.Accumulator;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.Shortening;

/**
 * A line without the cause of its stops, all else as it is.
 *
 * <p>Rule WORTH-2.
 */
public final class Without {
    /** So many times its top speed an entry needs to have refilled the accumulator in next to no time. */
    private static final double MUCH_FASTER = 20;

    private Without() {}

    /** {@code line} without what {@code reason} names; empty where that is nothing that could be taken out. */
    public static Optional<Line> of(Line line, Reason reason) {
        CoilChange change = line.change();
        return switch (reason.cause()) {
            case PRACTICE, NOT_THE_JOINT, USUAL_JOINT_TOO_LONG -> Optional.empty();
            case WAITING_FOR_PREPARATION -> Optional.of(line.with(alwaysPrepared(change)));
            case WAITING_FOR_PEOPLE -> Optional.of(line.with(enoughPeople(change)));
            case BOTH_WAITS -> Optional.of(line.with(enoughPeople(alwaysPrepared(change))));
            case ACCUMULATOR_NOT_FULL -> Optional.of(refilledAtOnce(line));
            case JOINT_MADE_AGAIN -> Optional.of(line.with(change.withReject(new Reject.Never())));
            case OCCASIONAL_ELEMENT ->
                Optional.of(shorter(line, reason.element().orElseThrow(), Double.POSITIVE_INFINITY));
            case ELEMENT_TOOK_LONG ->
                Optional.of(with(
                        line,
                        reason.element().orElseThrow(),
                        element -> element.with(new Shortening.ToMedian(element.off()))));
            case SEVERAL_TOGETHER ->
                Optional.of(
                        line.with(enoughPeople(alwaysPrepared(usual(change))).withReject(new Reject.Never())));
        };
    }

    /** The element of {@code change} that {@code element} names. */
    public static WorkElement element(CoilChange change, Reason.Element element) {
        return list(change, element).get(element.place());
    }

    /** {@code line} with {@code seconds} off an element each time that it is done, infinitely many for all of it. */
    public static Line shorter(Line line, Reason.Element element, double seconds) {
        return with(line, element, one -> one.with(new Shortening.By(one.off() + seconds)));
    }

    private static Line with(Line line, Reason.Element element, UnaryOperator<WorkElement> change) {
        List<WorkElement> list = new ArrayList<>(list(line.change(), element));
        list.set(element.place(), change.apply(list.get(element.place())));
        CoilChange work = line.change();
        return line.with(
                switch (element.list()) {
                    case PREPARE -> work.withWork(list, work.tail(), work.join());
                    case TAIL -> work.withWork(work.prepare(), list, work.join());
                    case JOIN -> work.withWork(work.prepare(), work.tail(), list);
                });
    }

    private static List<WorkElement> list(CoilChange change, Reason.Element element) {
        return switch (element.list()) {
            case PREPARE -> change.prepare();
            case TAIL -> change.tail();
            case JOIN -> change.join();
        };
    }

    private static CoilChange alwaysPrepared(CoilChange change) {
        return change.withWork(List.of(), change.tail(), change.join());
    }

    private static CoilChange enoughPeople(CoilChange change) {
        return change.withCrewAlwaysThere(Math.max(change.crew(), change.usefulCrew()));
    }

    /** No occasional element takes time, and no other longer than its median. */
    private static CoilChange usual(CoilChange change) {
        return change.withWork(
                change.prepare(),
                change.tail().stream().map(Without::usual).toList(),
                change.join().stream().map(Without::usual).toList());
    }

    private static WorkElement usual(WorkElement element) {
        return element.with(
                element.occurrence() instanceof Occurrence.Always
                        ? new Shortening.ToMedian(element.off())
                        : new Shortening.By(Double.POSITIVE_INFINITY));
    }

    private static Line refilledAtOnce(Line line) {
        Accumulator now = line.accumulator();
        StorageForm form = now.form();
        Accumulator unlimited = new Accumulator(
                form.fillingTimesAsFast(Double.POSITIVE_INFINITY),
                Double.POSITIVE_INFINITY,
                now.reserve(),
                now.overtravelAllowance());
        return line.with(unlimited).with(line.entry().withTopSpeed(line.entry().topSpeed() * MUCH_FASTER));
    }
}
