package runthrough.simulation;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.random.SourceNumbers;

/** The random numbers of one replication: the same distributions, coil changes and passes as the engine draws. */
final class BareDraws {
    private final Sampler[] prepare;
    private final Sampler[] tail;
    private final Sampler[] join;
    private final SourceNumbers reject;

    BareDraws(int replication) {
        RandomNumbers numbers = new RandomNumbers(BenchmarkLine.SEED, replication);
        prepare = samplers("prepare", BenchmarkLine.PREPARE, numbers);
        tail = samplers("tail", BenchmarkLine.TAIL, numbers);
        join = samplers("join", BenchmarkLine.JOIN, numbers);
        reject = numbers.source(SourceNames.REJECT);
    }

    private static Sampler[] samplers(String list, List<Distribution> distributions, RandomNumbers numbers) {
        return IntStream.range(0, distributions.size())
                .mapToObj(i -> new Sampler(distributions.get(i), numbers.source(list + "/" + named(i) + "/time")))
                .toArray(Sampler[]::new);
    }

    /** The elements of a list all have one name; of names that come again the second is #2 (RANDOM-3). */
    private static String named(int place) {
        return place == 0 ? "work" : "work#" + (place + 1);
    }

    double prepare(int element, int change) {
        return prepare[element].draw(change, 0);
    }

    double tail(int element, int change, int repeat) {
        return tail[element].draw(change, repeat);
    }

    double join(int element, int change, int repeat) {
        return join[element].draw(change, repeat);
    }

    boolean isRejected(int change, int repeat) {
        return reject.happens(BenchmarkLine.REJECT_CHANCE, change, repeat);
    }

    /** All draws of coil change {@code change}, and those of its rejects; their sum. */
    double ofChange(int change) {
        double sum = 0;
        for (Sampler times : prepare) {
            sum += times.draw(change, 0);
        }
        int repeat = -1;
        do {
            repeat++;
            for (Sampler times : tail) {
                sum += times.draw(change, repeat);
            }
            for (Sampler times : join) {
                sum += times.draw(change, repeat);
            }
        } while (isRejected(change, repeat));
        return sum;
    }
}
