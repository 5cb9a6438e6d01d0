package runthrough.simulation;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.simulation.WorkRecord.WorkList;
import umontreal.ssj.rng.MRG32k3a;

/** The random numbers of one replication, of the same laws and from the same streams as the engine takes them. */
final class BareDraws {
    private final Law[] prepare;
    private final Law[] tail;
    private final Law[] join;
    private final MRG32k3a reject;

    BareDraws(int replication) {
        Streams streams = new Streams(BenchmarkLine.SEED, replication);
        prepare = laws(WorkList.PREPARE, BenchmarkLine.PREPARE, streams);
        tail = laws(WorkList.TAIL, BenchmarkLine.TAIL, streams);
        join = laws(WorkList.JOIN, BenchmarkLine.JOIN, streams);
        reject = streams.stream(Source.REJECT);
    }

    private static Law[] laws(WorkList list, List<Distribution> laws, Streams streams) {
        return IntStream.range(0, laws.size())
                .mapToObj(i -> new Law(laws.get(i), streams.stream(Source.duration(list, i))))
                .toArray(Law[]::new);
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
        for (Law law : prepare) {
            sum += law.next();
        }
        do {
            for (Law law : tail) {
                sum += law.next();
            }
            for (Law law : join) {
                sum += law.next();
            }
        } while (isRejected());
        return sum;
    }

    private record Law(Distribution law, MRG32k3a stream) {
        double next() {
            return law.quantile(stream.nextDouble());
        }
    }
}
