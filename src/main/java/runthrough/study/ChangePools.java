package runthrough.study;

import runthrough.simulation.records.ChangeRecord;
import runthrough.study.margin.StripMargin;
import runthrough.study.statistics.Pool;

/** The quantities of coil changes that are pooled over all replications. */
final class ChangePools {
    private final Pool jointCycleTime;
    private final Pool waiting;
    private final Pool margin;
    private final Pool stripDrawn;
    private final Pool refillTime;
    private final Pool marginMetres;
    private final Pool marginSeconds;
    private final Pool marginSpeed;

    /** Empty pools, with room for {@code changes} coil changes to begin with. */
    ChangePools(int changes) {
        this.jointCycleTime = new Pool(changes);
        this.waiting = new Pool(changes);
        this.margin = new Pool(changes);
        this.stripDrawn = new Pool(changes);
        this.refillTime = new Pool(changes);
        this.marginMetres = new Pool(changes);
        this.marginSeconds = new Pool(changes);
        this.marginSpeed = new Pool(changes);
    }

    /** Takes up what every line has. */
    void addJoint(ChangeRecord change) {
        jointCycleTime.add(change.jointCycleTime());
        waiting.add(change.waiting());
    }

    /** Takes up what a line with an accumulator has. */
    void addStorage(ChangeRecord change, StripMargin spare) {
        margin.add(change.margin());
        stripDrawn.add(change.stripDrawn());
        refillTime.add(change.refillTime());
        double metres = spare.metres(change);
        marginMetres.add(metres);
        marginSeconds.add(spare.seconds(change, metres));
        marginSpeed.add(spare.speed(change));
    }

    void endReplication() {
        jointCycleTime.endReplication();
        waiting.endReplication();
        margin.endReplication();
        stripDrawn.endReplication();
        refillTime.endReplication();
        marginMetres.endReplication();
        marginSeconds.endReplication();
        marginSpeed.endReplication();
    }

    /** Takes up the replications of {@code later} behind those there are. */
    void join(ChangePools later) {
        jointCycleTime.join(later.jointCycleTime);
        waiting.join(later.waiting);
        margin.join(later.margin);
        stripDrawn.join(later.stripDrawn);
        refillTime.join(later.refillTime);
        marginMetres.join(later.marginMetres);
        marginSeconds.join(later.marginSeconds);
        marginSpeed.join(later.marginSpeed);
    }

    Pool jointCycleTime() {
        return jointCycleTime;
    }

    Pool waiting() {
        return waiting;
    }

    Pool margin() {
        return margin;
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
}
