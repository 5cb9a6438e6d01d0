package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
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
    void aSummaryIsThatOfTheValuesPutInOrder() {
        // Rule REPORT-15. 1 to 1001 in any order: a share p lies at 1 + 1000 p, and the standard deviation is
        // sqrt(1001 x 1002 / 12) = 289.108.
        List<Integer> numbers =
                new ArrayList<>(IntStream.rangeClosed(1, 1001).boxed().toList());
        Collections.shuffle(numbers, new Random(11));
        Pool pool = new Pool();
        numbers.forEach(pool::add);
        pool.endReplication();

        Summary summary = pool.summary();
        assertThat(summary.p50()).isEqualTo(501);
        assertThat(summary.p005()).isEqualTo(6);
        assertThat(summary.p95()).isEqualTo(951);
        assertThat(summary.p995()).isEqualTo(996);
        assertThat(summary.least()).isEqualTo(1);
        assertThat(summary.greatest()).isEqualTo(1001);
        assertThat(summary.sd()).isCloseTo(289.108, within(1e-3));
        // Asked for in full afterwards, the order is complete.
        assertThat(pool.sample().percentile(0.25)).isEqualTo(251);
        assertThat(pool.summary()).isEqualTo(summary);
    }

    @Test
    void aWholeNumberOfValuesIsNotLostToRounding() {
        // Rule MARGIN-4. A tenth of ten is one value, though 10 (1 - 0.9) is a little less than 1 to a computer.
        Pool pool = new Pool();
        for (double value : new double[] {7, 2, 9, 4, 1, 8, 3, 10, 6, 5}) {
            pool.add(value);
        }
        pool.endReplication();

        assertThat(10 * (1 - 0.9)).isLessThan(1);
        assertThat(pool.lastOfShare(1 - 0.9)).isEqualTo(2);
        assertThat(pool.lastOfShare(0)).isEqualTo(1);
        assertThat(pool.lastOfShare(1)).isEqualTo(10);
    }

    @Test
    void poolsPutTogetherAreOnePool() {
        Pool one = new Pool();
        Pool first = new Pool(0);
        Pool second = new Pool(2);
        for (double value : new double[] {5, 1, 4}) {
            one.add(value);
            first.add(value);
        }
        one.endReplication();
        first.endReplication();
        for (double value : new double[] {2, 9}) {
            one.add(value);
            second.add(value);
        }
        one.endReplication();
        second.endReplication();
        Pool together = new Pool(0);
        together.join(first);
        together.join(second);

        assertThat(together.count()).isEqualTo(5);
        assertThat(together.mean()).isEqualTo(one.mean());
        assertThat(together.sample().values()).containsExactly(1, 2, 4, 5, 9);
        assertThat(together.summary()).isEqualTo(one.summary());
    }

    @Test
    void aReplicationUnderWayIsNotJoined() {
        Pool open = new Pool();
        open.add(1);

        assertThatThrownBy(() -> new Pool().join(open))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("has not ended");
    }
}
