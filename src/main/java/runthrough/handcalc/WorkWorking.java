package runthrough.handcalc;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Joint;
import runthrough.plant.Joints;
import runthrough.plant.MeanWork;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.Kind;

/** Works out how long work takes on average: element by element. */
final class WorkWorking {
    private final Sheet sheet;
    private final CoilChange change;
    private final Joints joints;
    private final Term width;

    WorkWorking(Sheet sheet, CoilChange change, Joints joints) {
        this.sheet = sheet;
        this.change = change;
        this.joints = joints;
        this.width = new Term("w", "width of the wider strip", joints.mean(Joint::width), Kind.WIDTH);
    }

    /** Writes down the width, where a time depends on it. */
    void givens() {
        boolean isUsed = Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .anyMatch(this::isWorkedOutByWidth);
        if (isUsed) {
            sheet.given(width.symbol(), width.name(), width.value(), width.kind());
        }
    }

    /** The mean time of a list of work. */
    Term list(String symbol, String name, List<WorkElement> elements) {
        Sum sum = new Sum();
        elements.forEach(element -> add(sum, element, joints.mean(element.occurrence()::share)));
        return sheet.step(new Term(symbol, name, MeanWork.total(elements, joints), Kind.TIME), sum);
    }

    /** The mean time of the work on tail and joint that is done again after rejects. */
    Term redo(JointCycleTime work) {
        List<WorkElement> standing =
                Stream.concat(change.tail().stream(), change.join().stream()).toList();
        return again("T_redo", "work done again after rejects, on average", work.redo(), standing);
    }

    /** The mean time of what is prepared again after rejects, for which the joint waits. */
    Term preparedAgain(JointCycleTime work) {
        return again(
                "T_again",
                "waiting for what is prepared again after rejects, on average",
                work.waiting(),
                change.prepare());
    }

    private Term again(String symbol, String name, double value, List<WorkElement> elements) {
        Sum sum = new Sum();
        elements.stream()
                .filter(WorkElement::redo)
                .forEach(element -> add(
                        sum,
                        element,
                        joints.mean(joint -> MeanWork.repeats(element.occurrence(), change.reject(), joint))));
        return sheet.step(new Term(symbol, name, value, Kind.TIME), sum);
    }

    private void add(Sum sum, WorkElement element, double times) {
        if (times == 0) {
            return;
        }
        Term drawn =
                new Term(element.name(), element.name(), element.time().drawn().mean(), Kind.TIME);
        String factor = times == 1 ? "" : "{} * ";
        Term count = new Term("n", "how often per coil change", times, Kind.SHARE);
        if (isWorkedOutByWidth(element) && element.time() instanceof WorkTime.Travel travel) {
            double thickness = joints.mean(Joint::thickness);
            Term speed = new Term(
                    "v_w", "travel speed of " + element.name(), travel.speed().at(thickness), Kind.TRAVEL_SPEED);
            boolean hasMore = drawn.value() > 0;
            String duration = hasMore ? "({} / {} + {})" : "{} / {}";
            Stream<Term> terms = hasMore ? Stream.of(width, speed, drawn) : Stream.of(width, speed);
            sum.plus(factor + duration, counted(times, count, terms));
        } else {
            // Where width, thickness and what is done hang together, the mean of each by itself is not that of the
            // time.
            double mean = joints.mean(element::meanTime) / joints.mean(element.occurrence()::share);
            Term time = new Term(element.name(), element.name(), mean, Kind.TIME);
            sum.plus(factor + "{}", counted(times, count, Stream.of(time)));
        }
    }

    /** Whether its mean time is that of the mean joint. */
    private boolean isWorkedOutByWidth(WorkElement element) {
        return element.off() == 0
                && element.time() instanceof WorkTime.Travel travel
                && (joints.isOne()
                        || (travel.speed() instanceof TravelSpeed.Constant
                                && !(element.occurrence() instanceof Occurrence.When)));
    }

    private static Term[] counted(double times, Term count, Stream<Term> terms) {
        return (times == 1 ? terms : Stream.concat(Stream.of(count), terms)).toArray(Term[]::new);
    }
}
