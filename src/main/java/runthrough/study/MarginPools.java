package runthrough.study;

import runthrough.study.statistics.Pool;

/** The margins of coil changes to one target: as metres, as time and as speed. */
final class MarginPools {
    private final Pool metres;
    private final Pool seconds;
    private final Pool speed;

    /** Empty pools, with room for {@code changes} coil changes to begin with. */
    MarginPools(int changes) {
        metres = new Pool(changes);
        seconds = new Pool(changes);
        speed = new Pool(changes);
    }

    /** Takes up a margin of so many metres, which are so many seconds of joint cycle time or so much speed (m/s). */
    void add(double ofMetres, double ofSeconds, double ofSpeed) {
        metres.add(ofMetres);
        seconds.add(ofSeconds);
        speed.add(ofSpeed);
    }

    void endReplication() {
        metres.endReplication();
        seconds.endReplication();
        speed.endReplication();
    }

    /** Takes up the replications of {@code later} behind those there are. */
    void join(MarginPools later) {
        metres.join(later.metres);
        seconds.join(later.seconds);
        speed.join(later.speed);
    }

    void clear() {
        metres.clear();
        seconds.clear();
        speed.clear();
    }

    Pool metres() {
        return metres;
    }

    boolean isEmpty() {
        return metres.count() == 0;
    }

    /** The margin at a target that lets the share {@code failures} fail. */
    Verdict.Spare at(double failures) {
        return new Verdict.Spare(
                metres.lastOfShare(failures), seconds.lastOfShare(failures), speed.lastOfShare(failures));
    }
}
