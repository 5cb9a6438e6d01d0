package runthrough.simulation.work;

import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.random.CoilFeed;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.random.SourceNumbers;
import runthrough.simulation.records.SimulationException;

/**
 * The joint of the latest coil change: how often it is made until it is good, and what that costs in crops.
 *
 * <p>Rules CHANGE-8, CHANGE-10, COIL-3.
 */
public final class JointPasses {
    private final CoilFeed feed;
    private final RunStatistics statistics;
    private final Reject reject;
    private final SourceNumbers rejects;

    private int change;
    private int pass;

    /** Joints of {@code line} between the coils of {@code feed}; their crops go to {@code statistics}. */
    public JointPasses(Line line, CoilFeed feed, RunStatistics statistics, RandomNumbers numbers) {
        this.feed = feed;
        this.statistics = statistics;
        reject = line.work().reject();
        rejects = numbers.source(SourceNames.REJECT);
    }

    /** Begins the joint of coil change {@code number}. */
    void begin(int number) {
        change = number;
        pass = 1;
    }

    /** Which pass is under way, or was the last; from 1. */
    public int pass() {
        return pass;
    }

    /** A pass of the work is done: scraps its crops, and says whether the joint is good; if not the next pass begins. */
    boolean isGoodNow() {
        statistics.jointMade(feed.coil(change), feed.coil(change + 1));
        if (!isRejected(change, pass)) {
            return true;
        }
        pass++;
        return false;
    }

    /** The joint is made in {@code passes} passes, {@code >= 1}, the last of which is good: scraps the crops of all. */
    void made(int passes) {
        for (pass = 1; pass < passes; pass++) {
            statistics.jointMade(feed.coil(change), feed.coil(change + 1));
        }
        statistics.jointMade(feed.coil(change), feed.coil(change + 1));
    }

    /** Whether the joint of coil change {@code number} is rejected after pass {@code ofJoint}, from 1. */
    boolean isRejected(int number, int ofJoint) {
        if (reject instanceof Reject.Chance chance) {
            return rejects.happens(chance.p(), number, ofJoint - 1);
        }
        return reject instanceof Reject.Every every && ofJoint == 1 && number % every.n() == 0;
    }

    /**
     * What is left to run of the coil behind the joint (m): its usable length less what rejects have cost it.
     *
     * @throws SimulationException when nothing is left
     */
    public double usableLength() {
        int next = change + 1;
        double usable = feed.usableLength(next);
        double perReject = feed.coil(change).tailCrop() + feed.coil(next).headCrop();
        double cut = (pass - 1) * perReject;
        if (!(usable > cut)) {
            throw new SimulationException(
                    "coil " + next + " ('" + feed.coil(next).name() + "') has " + SimulationException.text(usable)
                            + " m of usable strip, used up by " + (pass - 1) + " rejected joints of "
                            + SimulationException.text(perReject)
                            + " m each. Give longer coils, shorter crops or fewer rejects");
        }
        return usable - cut;
    }
}
