package runthrough.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.simulation.ChangeRecord;
import runthrough.simulation.Replication;
import runthrough.simulation.Totals;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Pool;
import runthrough.study.statistics.Sample;

/** Takes up replications in order of their index and keeps of them what verdict and charts need. */
final class Fold {
    private final boolean oneStrip;
    private final CauseFinder finder;
    private final SpareStrip spare;
    private final CoilOutcomes coils;
    private final List<Totals> totals = new ArrayList<>();
    private final List<Long> waited = new ArrayList<>();
    private final List<Long> stops = new ArrayList<>();
    private final Map<Cause, Long> causes = new EnumMap<>(Cause.class);
    private final Pool jointTime = new Pool();
    private final Pool waiting = new Pool();
    private final Pool margin = new Pool();
    private final Pool stripDrawn = new Pool();
    private final Pool refillTime = new Pool();
    private final Pool spareMetres = new Pool();
    private final Pool spareSeconds = new Pool();
    private final Pool spareSpeed = new Pool();
    private final List<Pool> pools =
            List.of(jointTime, waiting, margin, stripDrawn, refillTime, spareMetres, spareSeconds, spareSpeed);

    private @Nullable Replication first;

    Fold(Line line) {
        this.oneStrip = line.practice().isOneStrip();
        this.finder = new CauseFinder(line);
        this.spare = new SpareStrip(line);
        this.coils = new CoilOutcomes(line);
    }

    /** Takes up the next replication. */
    void add(Replication replication) {
        if (first == null) {
            first = replication;
        }
        totals.add(replication.totals());
        finder.startReplication();
        long haveWaited = 0;
        long haveStopped = 0;
        for (ChangeRecord change : replication.changes()) {
            add(change);
            haveWaited += change.waiting() > 0 ? 1 : 0;
            haveStopped += change.starvedStops();
        }
        waited.add(haveWaited);
        stops.add(haveStopped);
        pools.forEach(Pool::endReplication);
    }

    private void add(ChangeRecord change) {
        Optional<Cause> laidTo = finder.causeOf(change);
        laidTo.ifPresent(cause -> causes.merge(cause, 1L, Long::sum));
        coils.add(change, laidTo);
        jointTime.add(change.jointTime());
        waiting.add(change.waiting());
        if (!oneStrip) {
            margin.add(change.margin());
            stripDrawn.add(change.stripDrawn());
            refillTime.add(change.refillTime());
            spareMetres.add(spare.metres(change));
            spareSeconds.add(spare.seconds(change));
            spareSpeed.add(spare.speed(change));
        }
    }

    List<Totals> totals() {
        return totals;
    }

    /** The first replication taken up. */
    Replication first() {
        return Objects.requireNonNull(first, "no replication yet");
    }

    /** How many coil changes of each replication waited for preparation. */
    long[] waited() {
        return waited.stream().mapToLong(Long::longValue).toArray();
    }

    private long[] stops() {
        return stops.stream().mapToLong(Long::longValue).toArray();
    }

    /** Whether any coil change was completed. */
    boolean hasChanges() {
        return jointTime.count() > 0;
    }

    /** Share of coil changes run through; there must be any. */
    Estimate shareRunThrough() {
        return estimates().shareRunThrough();
    }

    /** What the totals tell. */
    TotalsEstimates estimates() {
        return new TotalsEstimates(totals, stops());
    }

    CoilOutcomes coils() {
        return coils;
    }

    Verdict.Causes causes() {
        return Verdict.Causes.of(causes);
    }

    Pool jointTime() {
        return jointTime;
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

    Pool spareMetres() {
        return spareMetres;
    }

    Pool spareSeconds() {
        return spareSeconds;
    }

    Pool spareSpeed() {
        return spareSpeed;
    }

    /** The coil changes pooled, for charts. */
    StudyResult.Pooled pooled() {
        return new StudyResult.Pooled(
                jointTime.sample(), waiting.sample(), sample(margin), sample(stripDrawn), sample(refillTime));
    }

    private static Optional<Sample> sample(Pool pool) {
        return pool.count() == 0 ? Optional.empty() : Optional.of(pool.sample());
    }
}
