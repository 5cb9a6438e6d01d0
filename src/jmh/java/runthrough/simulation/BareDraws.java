package runthrough.simulation;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.simulation.random.Source;
import runthrough.simulation.random.Streams;
import runthrough.simulation.records.WorkRecord.WorkList;
import umontreal.ssj.rng.MRG32k3a;

/** The random numbers of one replication, of the same distributions and from the same streams as the engine takes them. */
final class BareDraws {
    private final DistributionShape[] prepare;
    private final DistributionShape[] tail;
    private final DistributionShape[] join;
    private final MRG32k3a reject;

    BareDraws(int replication) {
        Streams streams = new Streams(BenchmarkLine.SEED, replication);
        prepare = distributions(WorkList.PREPARE, BenchmarkLine.PREPARE, streams);
        tail = distributions(WorkList.TAIL, BenchmarkLine.TAIL, streams);
        join = distributions(WorkList.JOIN, BenchmarkLine.JOIN, streams);
        reject = streams.stream(Source.REJECT);
    }

    private static DistributionShape[] distributions(WorkList list, List<Distribution> distributions, Streams streams) {
        return IntStream.range(0, distributions.size())
                .mapToObj(i -> new DistributionShape(distributions.get(i), streams.stream(Source.duration(list, i))))
                .toArray(DistributionShape[]::new);
    }

    double prepare(int element) {
        return prepare[element].next();
    }

    double tail(int element) {
        return tail[element].next();
    }

    double join(int element) {
        return join[element].next();
    }

    boolean isRejected() {
        return reject.nextDouble() < BenchmarkLine.REJECT_CHANCE;
    }

    /** All draws of one coil change, and those of its rejects; their sum. */
    double ofOneChange() {
        double sum = 0;
        for (DistributionShape distribution : prepare) {
            sum += distribution.next();
        }
        do {
            for (DistributionShape distribution : tail) {
                sum += distribution.next();
            }
            for (DistributionShape distribution : join) {
                sum += distribution.next();
            }
        } while (isRejected());
        return sum;
    }

    private record DistributionShape(Distribution distribution, MRG32k3a stream) {
        double next() {
            return distribution.quantile(stream.nextDouble());
        }
    }
}
