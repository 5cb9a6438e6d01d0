package runthrough.study;

import java.util.Optional;
import runthrough.simulation.records.ChangeFacts;
import runthrough.study.margin.StripMargin;
import runthrough.study.statistics.Pool;

/** The quantities of coil changes that are pooled over all replications. */
final class ChangePools {
    private final Pool jointCycleTime;
    private final Pool waiting;
    private final Pool waitingForPreparation;
    private final Pool waitingForPeople;
    private final Pool stripDrawn;
    private final Pool refillTime;
    private final Pool marginToStop;
    private final MarginPools margin;
    /** Empty where the process cannot slow: then it is the margin. */
    private final MarginPools marginWithoutStop;

    /** Empty pools, with room for {@code changes} coil changes to begin with. */
    ChangePools(int changes) {
        this.jointCycleTime = new Pool(changes);
        this.waiting = new Pool(changes);
        this.waitingForPreparation = new Pool(changes);
        this.waitingForPeople = new Pool(changes);
        this.stripDrawn = new Pool(changes);
        this.refillTime = new Pool(changes);
        this.marginToStop = new Pool(changes);
        this.margin = new MarginPools(changes);
        this.marginWithoutStop = new MarginPools(changes);
    }

    /**
     * Takes up a coil change.
     *
     * @param storage for its margins, where there is an accumulator
     * @param slows whether the process can slow
     */
    void add(ChangeFacts change, Optional<StripMargin> storage, boolean slows) {
        addJoint(change);
        storage.ifPresent(margins -> {
            addStorage(change, margins);
            if (slows) {
                addWithoutStop(change, margins);
            }
        });
    }

    /** Takes up what every line has. */
    private void addJoint(ChangeFacts change) {
        jointCycleTime.add(change.jointCycleTime());
        waiting.add(change.waiting());
        waitingForPreparation.add(change.waitingForPreparation());
        waitingForPeople.add(change.waitingForPeople());
    }

    /** Takes up what a line with an accumulator has. */
    private void addStorage(ChangeFacts change, StripMargin spare) {
        stripDrawn.add(change.stripDrawn());
        refillTime.add(change.refillTime());
        marginToStop.add(spare.toStop(change));
        double metres = spare.metres(change);
        margin.add(metres, spare.seconds(change, metres), spare.speed(change));
    }

    /** Takes up what a line has whose process can slow. */
    private void addWithoutStop(ChangeFacts change, StripMargin margins) {
        double metres = margins.metresWithoutStop(change);
        marginWithoutStop.add(metres, margins.seconds(change, metres), margins.speedWithoutStop(change));
    }

    void endReplication() {
        jointCycleTime.endReplication();
        waiting.endReplication();
        waitingForPreparation.endReplication();
        waitingForPeople.endReplication();
        stripDrawn.endReplication();
        refillTime.endReplication();
        marginToStop.endReplication();
        margin.endReplication();
        marginWithoutStop.endReplication();
    }

    /** Takes up the replications of {@code later} behind those there are. */
    void join(ChangePools later) {
        jointCycleTime.join(later.jointCycleTime);
        waiting.join(later.waiting);
        waitingForPreparation.join(later.waitingForPreparation);
        waitingForPeople.join(later.waitingForPeople);
        stripDrawn.join(later.stripDrawn);
        refillTime.join(later.refillTime);
        marginToStop.join(later.marginToStop);
        margin.join(later.margin);
        marginWithoutStop.join(later.marginWithoutStop);
    }

    /** Forgets everything but the room taken. */
    void clear() {
        jointCycleTime.clear();
        waiting.clear();
        waitingForPreparation.clear();
        waitingForPeople.clear();
        stripDrawn.clear();
        refillTime.clear();
        marginToStop.clear();
        margin.clear();
        marginWithoutStop.clear();
    }

    Pool jointCycleTime() {
        return jointCycleTime;
    }

    Pool waiting() {
        return waiting;
    }

    Pool waitingForPreparation() {
        return waitingForPreparation;
    }

    Pool waitingForPeople() {
        return waitingForPeople;
    }

    Pool stripDrawn() {
        return stripDrawn;
    }

    Pool refillTime() {
        return refillTime;
    }

    /** The margins above the stop level (m), the process at its rated speed. Rule MARGIN-1. */
    Pool marginToStopMetres() {
        return marginToStop;
    }

    /** The margins to running through (m). */
    Pool marginMetres() {
        return margin.metres();
    }

    /** The margins to the target without a stop (m); none where the process cannot slow. */
    Pool marginWithoutStopMetres() {
        return marginWithoutStop.metres();
    }

    /** The margin at a target to run through that lets the share {@code failures} fail. */
    Verdict.Spare marginAt(double failures) {
        return margin.at(failures);
    }

    /** The same of the target without a stop; of a process that cannot slow it is that of running through. */
    Verdict.Spare marginWithoutStopAt(double failures) {
        return (marginWithoutStop.isEmpty() ? margin : marginWithoutStop).at(failures);
    }
}
