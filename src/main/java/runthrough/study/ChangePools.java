package runthrough.study;

import runthrough.simulation.records.ChangeRecord;
import runthrough.study.margin.StripMargin;
import runthrough.study.statistics.Pool;

/** The quantities of coil changes that are pooled over all replications. */
final class ChangePools {
    private final Pool jointCycleTime;
    private final Pool waiting;
    private final Pool stripDrawn;
    private final Pool refillTime;
    private final Pool marginMetres;
    private final Pool marginSeconds;
    private final Pool marginSpeed;
    private final Pool withoutStopMetres;
    private final Pool withoutStopSeconds;
    private final Pool withoutStopSpeed;

    /** Empty pools, with room for {@code changes} coil changes to begin with. */
    ChangePools(int changes) {
        this.jointCycleTime = new Pool(changes);
        this.waiting = new Pool(changes);
        this.stripDrawn = new Pool(changes);
        this.refillTime = new Pool(changes);
        this.marginMetres = new Pool(changes);
        this.marginSeconds = new Pool(changes);
        this.marginSpeed = new Pool(changes);
        this.withoutStopMetres = new Pool(changes);
        this.withoutStopSeconds = new Pool(changes);
        this.withoutStopSpeed = new Pool(changes);
    }

    /** Takes up what every line has. */
    void addJoint(ChangeRecord change) {
        jointCycleTime.add(change.jointCycleTime());
        waiting.add(change.waiting());
    }

    /** Takes up what a line with an accumulator has. */
    void addStorage(ChangeRecord change, StripMargin spare) {
        stripDrawn.add(change.stripDrawn());
        refillTime.add(change.refillTime());
        double metres = spare.metres(change);
        marginMetres.add(metres);
        marginSeconds.add(spare.seconds(change, metres));
        marginSpeed.add(spare.speed(change));
    }

    /** Takes up what a line has whose process can slow. */
    void addWithoutStop(ChangeRecord change, StripMargin margins) {
        double metres = margins.metresWithoutStop(change);
        withoutStopMetres.add(metres);
        withoutStopSeconds.add(margins.seconds(change, metres));
        withoutStopSpeed.add(margins.speedWithoutStop(change));
    }

    void endReplication() {
        jointCycleTime.endReplication();
        waiting.endReplication();
        stripDrawn.endReplication();
        refillTime.endReplication();
        marginMetres.endReplication();
        marginSeconds.endReplication();
        marginSpeed.endReplication();
        withoutStopMetres.endReplication();
        withoutStopSeconds.endReplication();
        withoutStopSpeed.endReplication();
    }

    /** Takes up the replications of {@code later} behind those there are. */
    void join(ChangePools later) {
        jointCycleTime.join(later.jointCycleTime);
        waiting.join(later.waiting);
        stripDrawn.join(later.stripDrawn);
        refillTime.join(later.refillTime);
        marginMetres.join(later.marginMetres);
        marginSeconds.join(later.marginSeconds);
        marginSpeed.join(later.marginSpeed);
        withoutStopMetres.join(later.withoutStopMetres);
        withoutStopSeconds.join(later.withoutStopSeconds);
        withoutStopSpeed.join(later.withoutStopSpeed);
    }

    Pool jointCycleTime() {
        return jointCycleTime;
    }

    Pool waiting() {
        return waiting;
    }

    Pool stripDrawn() {
        return stripDrawn;
    }

    Pool refillTime() {
        return refillTime;
    }

    Pool marginMetres() {
        return marginMetres;
    }

    Pool marginSeconds() {
        return marginSeconds;
    }

    Pool marginSpeed() {
        return marginSpeed;
    }

    /** The margin at a target that lets the share {@code failures} fail. */
    Verdict.Spare marginAt(double failures) {
        return new Verdict.Spare(
                marginMetres.lastOfShare(failures),
                marginSeconds.lastOfShare(failures),
                marginSpeed.lastOfShare(failures));
    }

    /** The same of the target without a stop; of a process that cannot slow it is that of running through. */
    Verdict.Spare marginWithoutStopAt(double failures) {
        return withoutStopMetres.count() == 0
                ? marginAt(failures)
                : new Verdict.Spare(
                        withoutStopMetres.lastOfShare(failures),
                        withoutStopSeconds.lastOfShare(failures),
                        withoutStopSpeed.lastOfShare(failures));
    }
}
