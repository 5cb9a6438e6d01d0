package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PoolTest {

    @Test
    void theMeanIsThatOfTheReplicationsMeans() {
        Pool pool = new Pool();
        pool.add(1);
        pool.add(2);
        pool.add(3);
        pool.endReplication();
        pool.add(10);
        pool.endReplication();

        // Replications give 2 and 10.
        assertThat(pool.mean().mean()).isEqualTo(6);
        assertThat(pool.mean().replications()).isEqualTo(2);
        assertThat(pool.sample().values()).containsExactly(1, 2, 3, 10);
    }

    @Test
    void aReplicationWithoutValuesIsLeftOut() {
        Pool pool = new Pool();
        pool.add(Double.NaN);
        pool.endReplication();
        pool.add(5);
        pool.add(Double.NaN);
        pool.endReplication();

        assertThat(pool.mean().replications()).isEqualTo(1);
        assertThat(pool.count()).isEqualTo(1);
    }

    @Test
    void itGrowsAsFarAsNeeded() {
        Pool pool = new Pool();
        for (int replication = 0; replication < 100; replication++) {
            for (int i = 0; i < 100; i++) {
                pool.add(replication);
            }
            pool.endReplication();
        }

        assertThat(pool.sample().count()).isEqualTo(10_000);
        assertThat(pool.sample().percentile(1)).isEqualTo(99);
        assertThat(pool.mean().mean()).isEqualTo(49.5);
    }

    @Test
    void aSampleTakenEarlierDoesNotHideWhatCameLater() {
        Pool pool = new Pool();
        pool.add(1);
        pool.endReplication();
        assertThat(pool.sample().count()).isEqualTo(1);
        pool.add(2);
        pool.endReplication();

        assertThat(pool.sample().values()).containsExactly(1, 2);
    }

    @Test
    void aSinglePercentileIsThatOfTheSample() {
        Pool pool = new Pool();
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 1001; i++) {
            pool.add(random.nextDouble());
        }
        pool.endReplication();

        for (double p : new double[] {0, 0.005, 0.1, 1 / 3.0, 0.5, 0.995, 1}) {
            assertThat(pool.percentile(p)).isCloseTo(pool.sample().percentile(p), within(1e-15));
        }
    }
}
