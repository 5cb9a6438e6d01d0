package runthrough.simulation;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.random.SourceNumbers;

/** The random numbers of one replication, of the same distributions as the engine takes them, one after the other. */
final class BareDraws {
    private final InTurn[] prepare;
    private final InTurn[] tail;
    private final InTurn[] join;
    private final SourceNumbers reject;
    private int joints;

    BareDraws(int replication) {
        RandomNumbers numbers = new RandomNumbers(BenchmarkLine.SEED, replication);
        prepare = inTurn("prepare", BenchmarkLine.PREPARE, numbers);
        tail = inTurn("tail", BenchmarkLine.TAIL, numbers);
        join = inTurn("join", BenchmarkLine.JOIN, numbers);
        reject = numbers.source(SourceNames.REJECT);
    }

    private static InTurn[] inTurn(String list, List<Distribution> distributions, RandomNumbers numbers) {
        return IntStream.range(0, distributions.size())
                .mapToObj(i -> new InTurn(
                        new Sampler(distributions.get(i), numbers.source(list + "/work#" + (i + 1) + "/time"))))
                .toArray(InTurn[]::new);
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
        return reject.happens(BenchmarkLine.REJECT_CHANCE, ++joints, 0);
    }

    /** All draws of one coil change, and those of its rejects; their sum. */
    double ofOneChange() {
        double sum = 0;
        for (InTurn times : prepare) {
            sum += times.next();
        }
        do {
            for (InTurn times : tail) {
                sum += times.next();
            }
            for (InTurn times : join) {
                sum += times.next();
            }
        } while (isRejected());
        return sum;
    }

    private static final class InTurn {
        private final Sampler times;
        private int drawn;

        InTurn(Sampler times) {
            this.times = times;
        }

        double next() {
            return times.draw(++drawn, 0);
        }
    }
}
