package runthrough.study.cause;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Coil;
import runthrough.plant.Joint;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.ChangeFacts;
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

    private final Line line;
    private final StripMargin margins;
    private final double capacity;
    private final double slack;
    private final Element[] prepare;
    private final Element[] tail;
    private final Element[] join;

    /** Causes of coil changes of {@code line}; may be asked on several threads. */
    public CauseFinder(Line line) {
        this.line = line;
        margins = new StripMargin(line);
        capacity = line.accumulator().capacity();
        slack = line.accumulator().levelTolerance();
        prepare = list(WorkList.PREPARE, line.change().prepare());
        tail = list(WorkList.TAIL, line.change().tail());
        join = list(WorkList.JOIN, line.change().join());
    }

    private Element[] list(WorkList list, List<WorkElement> elements) {
        List<String> names = SourceNames.elements(line.practice(), list, elements);
        return IntStream.range(0, elements.size())
                .mapToObj(place -> Element.of(elements.get(place), new Reason.Element(list, place, names.get(place))))
                .toArray(Element[]::new);
    }

    /** Why {@code change} did not run through; empty where it did. */
    public Optional<Reason> reasonOf(ChangeFacts change) {
        if (change.outcome() == Outcome.RAN_THROUGH) {
            return Optional.empty();
        }
        return Optional.of(
                line.practice().isOneStrip()
                        ? Reason.of(Cause.PRACTICE)
                        : find(change, change.work().orElseThrow()));
    }

    private Reason find(ChangeFacts change, WorkDone work) {
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
        return prepare[longest].name;
    }

    private Reason inTheJoint(ChangeFacts change, WorkDone work, double fromFull) {
        Removal removal = new Removal(change, work, fromFull);
        removal.tryIt(Cause.JOINT_MADE_AGAIN, work.afterFirstPass());
        removal.tryOccasional(tail, work.tail());
        removal.tryOccasional(join, work.join());
        Joint joint = Joint.between(coil(change.tailCoil()), coil(change.headCoil()));
        removal.tryRegular(tail, work.tail(), joint);
        removal.tryRegular(join, work.join(), joint);
        removal.tryIt(Cause.BOTH_WAITS, change.waiting());
        return removal.reason();
    }

    private Coil coil(int kind) {
        return line.coils().get(kind);
    }

    /**
     * An element, looked at once for all coil changes.
     *
     * @param work as described
     * @param isRegular whether it is done in every coil change
     * @param median of what is drawn for it (s)
     * @param name that it has as a cause
     */
    private record Element(WorkElement work, boolean isRegular, double median, Reason.Element name) {

        static Element of(WorkElement work, Reason.Element name) {
            return new Element(
                    work,
                    work.occurrence() instanceof Occurrence.Always,
                    work.time().drawn().quantile(0.5),
                    name);
        }
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
        /** That it is named by, if it is. */
        private @Nullable Element element;

        Removal(ChangeFacts change, WorkDone work, double fromFull) {
            speed = change.ratedSpeed();
            this.fromFull = fromFull;
            together = -work.waitedAfterFirstPass();
        }

        void tryIt(Cause tried, double seconds) {
            tryIt(tried, null, seconds);
        }

        private void tryIt(Cause tried, @Nullable Element named, double seconds) {
            together += seconds;
            if (seconds > largest + EQUAL_TIMES && isEnough(fromFull + speed * seconds)) {
                largest = seconds;
                cause = tried;
                element = named;
            }
        }

        void tryOccasional(Element[] list, List<Double> took) {
            for (int i = 0; i < list.length; i++) {
                double seconds = took.get(i);
                if (!list[i].isRegular && !Double.isNaN(seconds)) {
                    tryIt(Cause.OCCASIONAL_ELEMENT, list[i], seconds);
                }
            }
        }

        /** Of a regular element what it took longer than its median. */
        void tryRegular(Element[] list, List<Double> took, Joint joint) {
            for (int i = 0; i < list.length; i++) {
                Element regular = list[i];
                double seconds = took.get(i);
                if (regular.isRegular && !Double.isNaN(seconds)) {
                    double longer = seconds - regular.work.durationWith(regular.median, joint);
                    tryIt(Cause.ELEMENT_TOOK_LONG, regular, Math.max(0, longer));
                }
            }
        }

        Reason reason() {
            if (cause != null) {
                return element == null ? Reason.of(cause) : Reason.of(cause, element.name);
            }
            return Reason.of(
                    isEnough(fromFull + speed * together) ? Cause.SEVERAL_TOGETHER : Cause.USUAL_JOINT_TOO_LONG);
        }
    }
}
