package runthrough.simulation.work;

import java.util.function.DoubleSupplier;
import runthrough.plant.Line;
import runthrough.simulation.account.Recorder;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.records.WorkDone;

/**
 * The people's side of a coil change: who does what when. Whatever may let something begin calls {@link #giveWork}, where
 * everything begins that can: first the work on the standing strip, for which a preparation is put down where people lack, then
 * preparation.
 *
 * <p>It is long because joint and preparation compete for the same people: whether one may begin depends on the phase of the other,
 * so that what a phase allows stands in one place.
 *
 * <p>Rules CHANGE-2, CHANGE-7, CHANGE-11, CREW-1, CREW-2, CREW-3, CREW-4, CREW-6, CREW-7, CREW-8, CREW-9,
 * CREW-12, CREW-13.
 */
public final class ChangeWork {
    private final JointPasses joint;
    private final EventCalendar calendar;
    private final Events events;
    private final DoubleSupplier coilLasts;
    private final int mostPeopleAtJoint;
    private final int mostPeopleToPrepare;
    private final boolean preparesAgain;

    private final Crew crew;
    private final EventCalendar.Timer crewChanges;
    private final CoilPreparation preparation;
    private final WorkSequence prepare;
    private final WorkSequence prepareAgain;
    private final JointSequence tail;
    private final JointSequence join;
    private final Waiting waiting;

    private int running = 1;
    private Phase phase = Phase.STRIP_RUNS;
    private double firstPassEnded;
    private double waitedInFirstPass;
    private double released;
    private boolean takenOver;
    /** How often the joint is made that {@link #jointEnds} was asked for. */
    private int passes;

    private boolean giving;
    private boolean releasing;

    /** How far a coil change is. */
    private enum Phase {
        STRIP_RUNS,
        /** The joint was rejected: preparation is done again. */
        PREPARING_AGAIN,
        TAIL,
        /** The tail is ready; the next coil may not be. */
        AWAITING_COIL,
        JOIN
    }

    /** What the work brings about. */
    public interface Events {
        /** The joint is good (T2). */
        void jointReleased();

        /** After {@link #jointReleased}, when people have been given work. */
        void afterRelease();
    }

    /**
     * The work of {@code line}.
     *
     * @param lists what there is to do
     * @param joint made by it
     * @param calendar of the run
     * @param recorder shown each element that is done
     * @param coilLasts how long (s) the strip to come of the running coil lasts, see rule CREW-7
     * @param events takes T2
     */
    public ChangeWork(
            Line line,
            WorkLists lists,
            JointPasses joint,
            EventCalendar calendar,
            Recorder recorder,
            DoubleSupplier coilLasts,
            Events events) {
        this.joint = joint;
        this.calendar = calendar;
        this.coilLasts = coilLasts;
        this.events = events;
        mostPeopleAtJoint = Math.max(lists.tail().mostPeople(), lists.join().mostPeople());
        mostPeopleToPrepare = lists.prepare().mostPeople();
        preparesAgain = lists.prepare().hasRedo();
        crew = new Crew(line.change());
        crewChanges = calendar.timer("change of the crew", EventOrder.CREW_CHANGES, this::crewChanges);
        prepare = new WorkSequence(lists.prepare(), calendar, recorder, this::giveWork);
        preparation = new CoilPreparation(prepare, line.entry().uncoilers());
        prepareAgain = new WorkSequence(lists.prepare(), calendar, recorder, this::giveWork);
        tail = new JointSequence(lists.tail(), calendar, recorder, this::giveWork);
        join = new JointSequence(lists.join(), calendar, recorder, this::giveWork);
        waiting = new Waiting(lists.prepare().size());
    }

    /** Number of the running coil, from 1; also that of the coil change that ends it. */
    public int runningCoil() {
        return running;
    }

    /** How long the strip has waited at the latest joint, and for what. */
    public Waiting waiting() {
        return waiting;
    }

    /** What took time at the latest joint, once it is released. */
    public WorkDone done() {
        return WorkDone.of(
                tail.firstPass(),
                join.firstPass(),
                released - firstPassEnded,
                waiting.forPreparation() + waiting.forPeople() - waitedInFirstPass,
                waiting.byElement());
    }

    /** At time 0 the preparation of the coils on the other uncoilers may begin. */
    public void begin() {
        awaitCrewChange();
        giveWork();
    }

    private void awaitCrewChange() {
        crewChanges.stopIfPending();
        double next = crew.nextChange();
        if (next < Double.POSITIVE_INFINITY) {
            crewChanges.start(Math.max(0, next - calendar.now()));
        }
    }

    private void crewChanges() {
        int before = crew.people();
        crew.reach(calendar.now());
        awaitCrewChange();
        if (crew.people() > before) {
            giveWork();
        }
    }

    /** The running coil's tail has left its uncoiler. */
    public void tailLeftUncoiler() {
        if (takenOver) {
            preparation.goOnUntil(calendar.now());
        }
        preparation.coilGone(running);
        giveWork();
    }

    /** The entry has become matched. */
    public void entryMatched() {
        giveWork();
    }

    /** The coil change starts (T0). */
    public void changeStarts() {
        crew.hold();
    }

    /** Index of the shift by the clock, from 0. */
    public int shift() {
        return crew.shift();
    }

    /** The tail has stopped in the joiner (T1). */
    public void tailStopped() {
        preparation.coilGone(running);
        joint.begin(running);
        waiting.begin(calendar.now());
        if (!takenOver) {
            beginTail();
        }
        giveWork();
    }

    private void beginTail() {
        phase = Phase.TAIL;
        tail.begin(running, joint.pass());
    }

    /**
     * Whether nobody is in anybody's way: there are people enough for the joint and preparation at once. Asked while the strip
     * runs.
     */
    public boolean isOrdinary() {
        return phase == Phase.STRIP_RUNS
                && !prepare.isPutDown()
                && !prepare.isWaiting()
                && crew.people() >= mostPeopleAtJoint + mostPeopleToPrepare;
    }

    /** From now on work needs no event: it is ordinary, and asked when it is done. */
    public void takeOver() {
        takenOver = true;
        prepare.detach();
    }

    /** From now on it needs events again. */
    public void handBack() {
        preparation.goOnUntil(calendar.now());
        takenOver = false;
        prepare.attach();
    }

    /** When the joint will be good (s) at which the tail stops now; NaN where something is in its way. */
    public double jointEnds() {
        preparation.goOnUntil(calendar.now());
        if (!preparation.isPrepared(running + 1)) {
            return Double.NaN;
        }
        double time = calendar.now();
        passes = 0;
        do {
            passes++;
            if (passes > 1 && preparesAgain) {
                return Double.NaN;
            }
            time = join.endsWhenBegunAt(tail.endsWhenBegunAt(time, running, passes), running, passes);
            if (passes == 1) {
                firstPassEnded = time;
            }
        } while (joint.isRejected(running, passes));
        return time;
    }

    /** The joint is good (T2), at the time that {@link #jointEnds} said. */
    public void jointIsMade() {
        joint.made(passes);
        waitedInFirstPass = 0;
        release();
    }

    /** Begins whatever can begin, the joint's work first, until nothing more can. */
    private void giveWork() {
        if (takenOver) {
            preparation.goOnUntil(calendar.now());
            return;
        }
        if (giving) {
            return;
        }
        giving = true;
        waiting.until(calendar.now());
        while (proceedAtJoint() || proceedWithPreparation()) {
            // What has begun or ended may let something else begin.
        }
        waiting.from(calendar.now(), waitsFor(), awaitedElement());
        giving = false;
        if (releasing) {
            releasing = false;
            events.afterRelease();
        }
    }

    private boolean proceedAtJoint() {
        return switch (phase) {
            case STRIP_RUNS -> false;
            case AWAITING_COIL -> beginJoin();
            case PREPARING_AGAIN, TAIL, JOIN -> atJoint().isDone() ? endPhase() : beginAtJoint();
        };
    }

    /** The list that is worked on at the joint. */
    private WorkSequence atJoint() {
        return phase == Phase.TAIL ? tail : phase == Phase.JOIN ? join : prepareAgain;
    }

    private boolean beginJoin() {
        if (!preparation.isPrepared(running + 1)) {
            return false;
        }
        phase = Phase.JOIN;
        join.begin(running, joint.pass());
        return true;
    }

    private boolean endPhase() {
        switch (phase) {
            case PREPARING_AGAIN -> beginTail();
            case TAIL -> phase = Phase.AWAITING_COIL;
            default -> endJoin();
        }
        return true;
    }

    private void endJoin() {
        if (joint.pass() == 1) {
            firstPassEnded = calendar.now();
            waitedInFirstPass = waiting.forPreparation() + waiting.forPeople();
        }
        if (joint.isGoodNow()) {
            release();
            releasing = true;
        } else {
            phase = Phase.PREPARING_AGAIN;
            prepareAgain.begin(running, joint.pass());
        }
    }

    private void release() {
        phase = Phase.STRIP_RUNS;
        running++;
        crew.letGo(calendar.now());
        awaitCrewChange();
        released = calendar.now();
        events.jointReleased();
    }

    /** Begins work at the joint, for which a preparation is put down where that frees enough people. */
    private boolean beginAtJoint() {
        WorkSequence work = atJoint();
        if (!work.isWaiting()) {
            return false;
        }
        int wanted = work.people();
        if (free() < wanted && prepare.isUnderWay() && prepare.mayBePutDown() && free() + prepare.people() >= wanted) {
            prepare.putDown();
        }
        if (free() < wanted) {
            return false;
        }
        work.proceed();
        return true;
    }

    private boolean proceedWithPreparation() {
        if (preparation.comesToNextCoil()) {
            return true;
        }
        if (prepare.isIdle() || prepare.isUnderWay() || free() < prepare.people() || !mayProceed()) {
            return false;
        }
        prepare.proceed();
        return true;
    }

    /**
     * Whether the next element of preparation would be in nobody's way: one that may be put down never is. Of any other the
     * people left over must suffice for the largest element at the joint, or it must be expected to end before the coil does, or
     * be what the joint waits for.
     */
    private boolean mayProceed() {
        if (prepare.mayBePutDown() || crew.people() - prepare.people() >= mostPeopleAtJoint) {
            return true;
        }
        return phase == Phase.STRIP_RUNS
                ? prepare.meanTime() <= coilLasts.getAsDouble()
                : phase == Phase.AWAITING_COIL && prepare.change() == running;
    }

    private int free() {
        int busy = prepare.isUnderWay() ? prepare.people() : 0;
        if (phase != Phase.STRIP_RUNS
                && phase != Phase.AWAITING_COIL
                && atJoint().isUnderWay()) {
            busy += atJoint().people();
        }
        return crew.people() - busy;
    }

    private Waiting.For waitsFor() {
        return switch (phase) {
            case STRIP_RUNS -> Waiting.For.NOTHING;
            case PREPARING_AGAIN, AWAITING_COIL -> Waiting.For.PREPARATION;
            case TAIL, JOIN -> atJoint().isUnderWay() ? Waiting.For.NOTHING : Waiting.For.PEOPLE;
        };
    }

    /** Place of the element of preparation that is waited for, from 0, where one is. */
    private int awaitedElement() {
        return phase == Phase.PREPARING_AGAIN ? prepareAgain.element() : prepare.element();
    }
}
