package runthrough.study.sensitivity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.RandomSource;
import runthrough.simulation.records.Detail;
import runthrough.study.Evaluator;
import runthrough.study.StudyException;

/**
 * Which sources of randomness carry the variance of what a line gives. Replication j meets its own random numbers (sample A), that of
 * replication N + j (sample B), and its own with one source exchanged, see {@link RandomNumbers}. The random numbers of a source are
 * exchanged over the whole run, for a coil change depends on what those before it left behind.
 */
final class RandomnessStudy {
    /** About so many coil changes are run in all unless given otherwise: a second or two. */
    private static final double USUAL_WORK = 8e5;

    /** Longer replications say little more, and fewer of them fit in. */
    private static final int MOST_CHANGES = 1000;

    private static final double TIMES_THE_PLAN = 20;
    private static final int FEWEST_SAMPLES = 30;
    private static final int MOST_SAMPLES = 5000;

    /** A run of given time has as many coil changes as the shortest of so many replications. */
    private static final int PROBES = 10;

    private final Line line;
    private final RunPlan plan;
    private final int samples;
    private final List<RandomSource> sources;
    private final List<ChangeMeasure> measures;

    /**
     * A study of {@code line} as it would be run under {@code plan}.
     *
     * @param samples how many replications of each kind; 0 for the usual number
     */
    RandomnessStudy(Line line, RunPlan plan, int samples) {
        this.line = line;
        this.plan = byChanges(line, plan);
        this.sources = RandomSource.of(line);
        this.samples = samples == 0 ? usualSamples(plan) : samples;
        this.measures = ChangeMeasure.of(line);
    }

    /**
     * How many samples are usual: as many as take a second or two, but no more than some times what was asked for, for who asks
     * for little wants it soon.
     */
    private int usualSamples(RunPlan asked) {
        int changes = ((Extent.Changes) plan.extent()).changes();
        int given = asked.extent() instanceof Extent.Changes extent ? extent.changes() : changes;
        double most = USUAL_WORK / changes / (sources.size() + 2);
        double timesAsked = TIMES_THE_PLAN * asked.replications() * given / changes;
        return (int) Math.max(FEWEST_SAMPLES, Math.min(MOST_SAMPLES, Math.min(most, timesAsked)));
    }

    private static RunPlan byChanges(Line line, RunPlan plan) {
        int least = plan.leaveOut() + MOST_CHANGES;
        if (plan.extent() instanceof Extent.Changes given) {
            least = Math.min(least, given.changes());
        } else {
            LineSimulator simulator = LineSimulator.of(line, plan);
            for (int i = 0; i < PROBES; i++) {
                List<?> changes = Evaluator.run(i, index -> simulator.run(index, Detail.CHANGES))
                        .changes();
                least = Math.min(least, plan.leaveOut() + changes.size());
            }
        }
        if (least <= plan.leaveOut()) {
            throw new StudyException("no coil change is left to look at beyond the " + plan.leaveOut()
                    + " left out; give a longer run, or fewer coil changes to leave out");
        }
        return plan.withExtent(new Extent.Changes(least));
    }

    /** Coil changes looked at in each replication. */
    int changes() {
        return ((Extent.Changes) plan.extent()).changes() - plan.leaveOut();
    }

    /** How many samples are run. */
    int samples() {
        return samples;
    }

    /** Runs it; calls {@code step} after each sample. */
    List<VarianceShares> run(Evaluator evaluator, Runnable step) {
        Map<ChangeMeasure, List<ExchangedSamples>> seen = new EnumMap<>(ChangeMeasure.class);
        measures.forEach(measure -> seen.put(measure, new ArrayList<>()));
        LineSimulator simulator = new LineSimulator(evaluator.checked(line), plan);
        IntFunction<List<ExchangedSamples>> sample = index -> sample(simulator, index);
        evaluator.inOrder(samples, sample, exchanges -> {
            for (int m = 0; m < exchanges.size(); m++) {
                seen.computeIfAbsent(measures.get(m), none -> new ArrayList<>()).add(exchanges.get(m));
            }
            step.run();
        });
        return measures.stream()
                .map(measure -> VarianceShares.of(measure, sources, seen.getOrDefault(measure, List.of())))
                .toList();
    }

    /** Sample {@code index}: one exchange for each measure. */
    private List<ExchangedSamples> sample(LineSimulator simulator, int index) {
        MeasureReader gauge = new MeasureReader(line);
        RandomNumbers own = new RandomNumbers(plan.seed(), index);
        RandomNumbers other = new RandomNumbers(plan.seed(), samples + index);
        double[][] a = read(gauge, run(simulator, own));
        double[][] b = read(gauge, run(simulator, other));
        double[][][] exchanged = new double[measures.size()][sources.size()][];
        for (int i = 0; i < sources.size(); i++) {
            double[][] values = read(gauge, run(simulator, own.exchanging(sources.get(i), other.replication())));
            for (int m = 0; m < values.length; m++) {
                exchanged[m][i] = values[m];
            }
        }
        List<ExchangedSamples> exchanges = new ArrayList<>();
        for (int m = 0; m < measures.size(); m++) {
            exchanges.add(new ExchangedSamples(a[m], b[m], exchanged[m]));
        }
        return exchanges;
    }

    private static Replication run(LineSimulator simulator, RandomNumbers randomNumbers) {
        return Evaluator.run(randomNumbers.replication(), index -> simulator.run(randomNumbers));
    }

    private double[][] read(MeasureReader gauge, Replication replication) {
        return measures.stream()
                .map(measure -> gauge.read(measure, replication))
                .toArray(double[][]::new);
    }
}
