package runthrough.study.cause;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.plant.Coil;
import runthrough.plant.Joint;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkDone;
import runthrough.simulation.records.WorkRecord.WorkList;
import runthrough.study.margin.StripMargin;

/**
 * Finds why a coil change did not run through: the first thing whose removal from the time that the strip stood would have left a
 * margin. SI units.
 *
 * <p>Rules CAUSE-1, CAUSE-2, CAUSE-3, CAUSE-4, CAUSE-5, CAUSE-6, CAUSE-7, CAUSE-8.
 */
public final class CauseFinder {
    /** Times closer than this (s) are equal: of equal ones the first in the order of the lists is named. */
    private static final double EQUAL_TIMES = 1e-9;

    private static final double[] NOTHING = {};

    private final Line line;
    private final StripMargin margins;
    private final double capacity;
    private final double slack;
    private final Map<WorkList, List<String>> names = new EnumMap<>(WorkList.class);
    /** Of each element the median of what is drawn for it (s). */
    private final Map<WorkList, double[]> medians = new EnumMap<>(WorkList.class);

    /** Causes of coil changes of {@code line}; may be asked on several threads. */
    public CauseFinder(Line line) {
        this.line = line;
        margins = new StripMargin(line);
        capacity = line.accumulator().capacity();
        slack = line.accumulator().levelTolerance();
        for (WorkList list : WorkList.values()) {
            names.put(list, SourceNames.elements(line.practice(), list, elements(list)));
            medians.put(
                    list,
                    elements(list).stream()
                            .mapToDouble(element -> element.time().drawn().quantile(0.5))
                            .toArray());
        }
    }

    /** Why {@code change} did not run through; empty where it did. */
    public Optional<Reason> reasonOf(ChangeRecord change) {
        if (change.outcome() == Outcome.RAN_THROUGH) {
            return Optional.empty();
        }
        return Optional.of(
                line.practice().isOneStrip()
                        ? Reason.of(Cause.PRACTICE)
                        : find(change, change.work().orElseThrow()));
    }

    private Reason find(ChangeRecord change, WorkDone work) {
        double margin = margins.metres(change);
        double speed = change.ratedSpeed();
        double fromFull = margin + capacity - change.levelAtStart();
        if (!isEnough(margin)) {
            if (isEnough(margin + speed * change.waitingForPreparation())) {
                return Reason.of(Cause.WAITING_FOR_PREPARATION, longestAwaited(work));
            }
            if (isEnough(margin + speed * change.waitingForPeople())) {
                return Reason.of(Cause.WAITING_FOR_PEOPLE);
            }
            if (change.levelAtStart() < capacity && isEnough(fromFull)) {
                return Reason.of(Cause.ACCUMULATOR_NOT_FULL);
            }
        }
        if (isEnough(fromFull)) {
            return Reason.of(Cause.NOT_THE_JOINT);
        }
        return inTheJoint(change, work, fromFull);
    }

    private boolean isEnough(double metres) {
        return metres >= -slack;
    }

    private Reason.Element longestAwaited(WorkDone work) {
        List<Double> waited = work.waitingByElement();
        int longest = 0;
        for (int i = 1; i < waited.size(); i++) {
            if (waited.get(i) > waited.get(longest) + EQUAL_TIMES) {
                longest = i;
            }
        }
        return element(WorkList.PREPARE, longest);
    }

    private Reason inTheJoint(ChangeRecord change, WorkDone work, double fromFull) {
        List<Item> items = removable(change, work);
        Optional<Item> largest = Optional.empty();
        double together = -work.waitedAfterFirstPass();
        for (Item item : items) {
            together += item.seconds;
            boolean isLarger = item.seconds
                    > largest.map(other -> other.seconds + EQUAL_TIMES).orElse(Double.NEGATIVE_INFINITY);
            if (isLarger && isEnough(fromFull + change.ratedSpeed() * item.seconds)) {
                largest = Optional.of(item);
            }
        }
        boolean isTogether = isEnough(fromFull + change.ratedSpeed() * together);
        return largest.map(Item::reason)
                .orElse(Reason.of(isTogether ? Cause.SEVERAL_TOGETHER : Cause.USUAL_JOINT_TOO_LONG));
    }

    /** What could be taken out of the joint, in the order in which equal ones are named. */
    private List<Item> removable(ChangeRecord change, WorkDone work) {
        Joint joint = Joint.between(coil(change.tailCoil()), coil(change.headCoil()));
        List<Item> items = new ArrayList<>();
        items.add(new Item(Reason.of(Cause.JOINT_MADE_AGAIN), work.afterFirstPass()));
        occasional(WorkList.TAIL, work.tail(), items);
        occasional(WorkList.JOIN, work.join(), items);
        regular(WorkList.TAIL, work.tail(), joint, items);
        regular(WorkList.JOIN, work.join(), joint, items);
        items.add(new Item(Reason.of(Cause.BOTH_WAITS), change.waiting()));
        return items;
    }

    private Coil coil(int kind) {
        return line.coils().get(kind);
    }

    private void occasional(WorkList list, List<Double> took, List<Item> items) {
        List<WorkElement> elements = elements(list);
        for (int i = 0; i < elements.size(); i++) {
            if (!isRegular(elements.get(i)) && !took.get(i).isNaN()) {
                items.add(new Item(Reason.of(Cause.OCCASIONAL_ELEMENT, element(list, i)), took.get(i)));
            }
        }
    }

    private void regular(WorkList list, List<Double> took, Joint joint, List<Item> items) {
        List<WorkElement> elements = elements(list);
        double[] drawn = medians.getOrDefault(list, NOTHING);
        for (int i = 0; i < elements.size(); i++) {
            if (isRegular(elements.get(i)) && !took.get(i).isNaN()) {
                double longer = took.get(i) - elements.get(i).durationWith(drawn[i], joint);
                items.add(new Item(Reason.of(Cause.ELEMENT_TOOK_LONG, element(list, i)), Math.max(0, longer)));
            }
        }
    }

    private Reason.Element element(WorkList list, int place) {
        return new Reason.Element(
                list, place, names.getOrDefault(list, List.of()).get(place));
    }

    private List<WorkElement> elements(WorkList list) {
        return switch (list) {
            case PREPARE -> line.change().prepare();
            case TAIL -> line.change().tail();
            case JOIN -> line.change().join();
        };
    }

    private static boolean isRegular(WorkElement element) {
        return element.occurrence() instanceof Occurrence.Always;
    }

    /** Something that took so many seconds (s) of the joint. */
    private record Item(Reason reason, double seconds) {}
}
