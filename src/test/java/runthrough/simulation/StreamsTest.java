package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import umontreal.ssj.rng.MRG32k3a;

/**
 * The random streams against P. L'Ecuyer, R. Simard, E. J. Chen, W. D. Kelton, "An object-oriented random-number package with
 * many long streams and substreams", Operations Research 50(6), 2002, and the reference output of the authors' package (file
 * test2RngStream.res). Seed 0 is the published default state, source i the published stream i + 1.
 */
class StreamsTest {
    private static final Offset<Double> PRINTED = within(1e-13);

    private static MRG32k3a published(int stream) {
        return new Streams(0, 0).stream(stream - 1);
    }

    @Test
    void firstFiveNumbersOfStream1() {
        // Recomputed from the recurrences of P. L'Ecuyer, Operations Research 47(1), 1999, by an independent integer
        // program.
        double[] expected = {
            0.1270111220465771, 0.3185275653967945, 0.3091860155832701, 0.8258468629271135, 0.2216299157820229
        };
        MRG32k3a stream = published(1);

        for (double value : expected) {
            assertThat(stream.nextDouble()).isCloseTo(value, PRINTED);
        }
    }

    @Test
    void startsOfStreams2And3() {
        assertThat(published(2).getState())
                .containsExactly(3692455944L, 1366884236L, 2968912127L, 335948734L, 4161675175L, 475798818L);
        assertThat(published(3).getState())
                .containsExactly(1015873554L, 1310354410L, 2249465273L, 994084013L, 2912484720L, 3876682925L);
    }

    @Test
    void stateAndNextNumberOfStream1After35Draws() {
        MRG32k3a stream = published(1);
        int sum = 0;
        for (int i = 0; i < 35; i++) {
            sum += 1 + (int) (10 * stream.nextDouble());
        }

        assertThat(sum).isEqualTo(186);
        assertThat(stream.getState())
                .containsExactly(1040577685L, 3747037609L, 277208355L, 1712706441L, 627445683L, 2408037141L);
        assertThat(stream.nextDouble()).isCloseTo(0.07941673614985, PRINTED);
    }

    @Test
    void firstFiveNumbersOfStream3() {
        double[] expected = {0.7285097861965, 0.9655872822837, 0.9961841304801, 0.1149884161813, 0.9731454191297};
        MRG32k3a stream = published(3);

        for (double value : expected) {
            assertThat(stream.nextDouble()).isCloseTo(value, PRINTED);
        }
    }

    @Test
    void replicationsStartWhereTheLibrarySubstreamsDo() {
        // SSJ's own substreams lie 2^76 steps apart too.
        MRG32k3a substreams = published(2);
        for (int replication = 1; replication <= 5; replication++) {
            substreams.resetNextSubstream();

            assertThat(new Streams(0, replication).stream(1).getState()).containsExactly(substreams.getState());
        }
    }

    @Test
    void everySourceReplicationAndSeedHasItsOwnNumbers() {
        Set<Double> seen = new HashSet<>();
        for (long seed = -2; seed <= 4; seed++) {
            for (int replication = 0; replication < 20; replication++) {
                Streams streams = new Streams(seed, replication);
                for (int source = 0; source < 40; source++) {
                    seen.add(streams.stream(source).nextDouble());
                }
            }
        }

        // A number has 32 bits: among 5600 some 0.004 pairs are alike by chance.
        assertThat(seen).hasSize(7 * 20 * 40);
    }

    @Test
    void sourcesDoNotShareAStream() {
        Set<Integer> numbers = new HashSet<>(Set.of(
                Source.COIL_CHOICE,
                Source.COIL_SIZE,
                Source.REJECT,
                Source.RESTART_DELAY,
                Source.OWN_RUNNING,
                Source.OWN_STANDING,
                Source.RETHREAD));
        for (WorkRecord.WorkList list : WorkRecord.WorkList.values()) {
            for (int element = 0; element < 50; element++) {
                numbers.add(Source.duration(list, element));
                numbers.add(Source.chance(list, element));
            }
        }

        assertThat(numbers).hasSize(7 + 3 * 50 * 2);
    }
}
