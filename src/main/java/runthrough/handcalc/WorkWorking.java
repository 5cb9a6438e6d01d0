package runthrough.handcalc;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.MeanWork;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.quantity.Kind;

/** Works out how long work takes on average: element by element. */
final class WorkWorking {
    private final Sheet sheet;
    private final CoilChange change;
    private final double meanWidth;
    private final Term width;

    WorkWorking(Sheet sheet, CoilChange change, double width) {
        this.sheet = sheet;
        this.change = change;
        this.meanWidth = width;
        this.width = new Term("w", "width of the wider strip", width, Kind.WIDTH);
    }

    /** Writes down the width, where a time depends on it. */
    void givens() {
        boolean isUsed = Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .anyMatch(element -> element.time() instanceof WorkTime.Travel);
        if (isUsed) {
            sheet.given(width.symbol(), width.name(), width.value(), width.kind());
        }
    }

    /** The mean time of a list of work. */
    Term list(String symbol, String name, List<WorkElement> elements) {
        Sum sum = new Sum();
        elements.forEach(element -> add(sum, element, element.occurrence().share()));
        return sheet.step(new Term(symbol, name, MeanWork.total(elements, meanWidth), Kind.TIME), sum);
    }

    /** The mean time of what is done again after rejects. */
    Term redo(JointCycleTime joint) {
        Sum sum = new Sum();
        Stream.of(change.prepare(), change.tail(), change.join())
                .flatMap(List::stream)
                .filter(WorkElement::redo)
                .forEach(element -> add(sum, element, MeanWork.repeats(element.occurrence(), change.reject())));
        return sheet.step(
                new Term("T_redo", "work done again after rejects, on average", joint.redo(), Kind.TIME), sum);
    }

    private void add(Sum sum, WorkElement element, double times) {
        if (times == 0) {
            return;
        }
        Term drawn =
                new Term(element.name(), element.name(), element.time().drawn().mean(), Kind.TIME);
        String factor = times == 1 ? "" : "{} * ";
        Term count = new Term("n", "how often per coil change", times, Kind.SHARE);
        if (element.time() instanceof WorkTime.Travel travel) {
            Term speed = new Term("v_w", "travel speed of " + element.name(), travel.speed(), Kind.TRAVEL_SPEED);
            boolean hasMore = drawn.value() > 0;
            String duration = hasMore ? "({} / {} + {})" : "{} / {}";
            Stream<Term> terms = hasMore ? Stream.of(width, speed, drawn) : Stream.of(width, speed);
            sum.plus(factor + duration, counted(times, count, terms));
        } else {
            sum.plus(factor + "{}", counted(times, count, Stream.of(drawn)));
        }
    }

    private static Term[] counted(double times, Term count, Stream<Term> terms) {
        return (times == 1 ? terms : Stream.concat(Stream.of(count), terms)).toArray(Term[]::new);
    }
}
