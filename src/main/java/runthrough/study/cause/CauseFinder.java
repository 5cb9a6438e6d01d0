package runthrough.study.cause;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
        Removal removal = new Removal(change, work, fromFull);
        removal.tryIt(Cause.JOINT_MADE_AGAIN, work.afterFirstPass());
        removal.tryOccasional(WorkList.TAIL, work.tail());
        removal.tryOccasional(WorkList.JOIN, work.join());
        Joint joint = Joint.between(coil(change.tailCoil()), coil(change.headCoil()));
        removal.tryRegular(WorkList.TAIL, work.tail(), joint);
        removal.tryRegular(WorkList.JOIN, work.join(), joint);
        removal.tryIt(Cause.BOTH_WAITS, change.waiting());
        return removal.reason();
    }

    private Coil coil(int kind) {
        return line.coils().get(kind);
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

    /** Takes out of one joint what can be taken out, one after the other; of equal ones the first counts. */
    private final class Removal {
        private final double speed;
        private final double fromFull;
        /** Of all that can be taken out (s). */
        private double together;
        /** Of the largest that is enough (s). */
        private double largest = Double.NEGATIVE_INFINITY;

        private @Nullable Cause cause;
        private WorkList list = WorkList.JOIN;
        /** Place in its list of the element that it is; -1 for none. */
        private int place;

        Removal(ChangeRecord change, WorkDone work, double fromFull) {
            speed = change.ratedSpeed();
            this.fromFull = fromFull;
            together = -work.waitedAfterFirstPass();
        }

        void tryIt(Cause tried, double seconds) {
            tryIt(tried, WorkList.JOIN, -1, seconds);
        }

        private void tryIt(Cause tried, WorkList ofList, int at, double seconds) {
            together += seconds;
            if (seconds > largest + EQUAL_TIMES && isEnough(fromFull + speed * seconds)) {
                largest = seconds;
                cause = tried;
                list = ofList;
                place = at;
            }
        }

        void tryOccasional(WorkList ofList, List<Double> took) {
            List<WorkElement> elements = elements(ofList);
            for (int i = 0; i < elements.size(); i++) {
                double seconds = took.get(i);
                if (!isRegular(elements.get(i)) && !Double.isNaN(seconds)) {
                    tryIt(Cause.OCCASIONAL_ELEMENT, ofList, i, seconds);
                }
            }
        }

        /** Of a regular element what it took longer than its median. */
        void tryRegular(WorkList ofList, List<Double> took, Joint joint) {
            List<WorkElement> elements = elements(ofList);
            double[] drawn = medians.getOrDefault(ofList, NOTHING);
            for (int i = 0; i < elements.size(); i++) {
                double seconds = took.get(i);
                if (isRegular(elements.get(i)) && !Double.isNaN(seconds)) {
                    double longer = seconds - elements.get(i).durationWith(drawn[i], joint);
                    tryIt(Cause.ELEMENT_TOOK_LONG, ofList, i, Math.max(0, longer));
                }
            }
        }

        Reason reason() {
            if (cause != null) {
                return place < 0 ? Reason.of(cause) : Reason.of(cause, element(list, place));
            }
            return Reason.of(
                    isEnough(fromFull + speed * together) ? Cause.SEVERAL_TOGETHER : Cause.USUAL_JOINT_TOO_LONG);
        }
    }
}
