package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rules REPORT-15, MARGIN-4: order statistics of very many values, against the values put in order. */
class BinsTest {
    private static final int MANY = Pool.MOST_EXACT + 10_000;

    @Test
    void anOrderStatisticOfVeryManyIsAtMostAPartOfTwoToTheMinusFourteenTooLow() {
        double[] values = new Random(3).doubles(MANY, -40, 200).toArray();
        Pool pool = pool(values, 1000);
        Arrays.sort(values);
        for (double share : new double[] {0, 1e-5, 0.01, 0.166, 0.5, 0.9, 0.999, 1}) {
            double exact = values[(int) Math.min(MANY - 1, Math.floor(MANY * share + 1e-9))];
            assertThat(pool.lastOfShare(share)).isBetween(exact - 0x1p-14 * Math.abs(exact), exact);
        }
        // The ends are exact, and what comes before the greatest is not taken for it.
        assertThat(pool.sample().get(MANY - 2)).isLessThanOrEqualTo(values[MANY - 2]);
        assertThat(pool.summary().least()).isEqualTo(values[0]);
        assertThat(pool.summary().greatest()).isEqualTo(values[MANY - 1]);
        // Between -40 and 200 evenly: mean 80, standard deviation 240 / sqrt(12) = 69.28, of 270,000 values to 0.13
        // or better.
        assertThat(pool.summary().mean().mean()).isCloseTo(80, within(0.3));
        assertThat(pool.summary().sd()).isCloseTo(69.28, within(0.2));
        // A sixth lie below 0.
        assertThat(pool.sample().shareBelow(0)).isCloseTo(1 / 6.0, within(0.002));
        assertThat(pool.count()).isEqualTo(MANY);
    }

    @Test
    void valuesThatComeAgainAndAgainAreExact() {
        double[] values = new double[MANY];
        Arrays.fill(values, 90.1);
        Arrays.fill(values, 0, 1000, 0.0);
        Arrays.fill(values, 1000, 1500, -0.0);
        Arrays.fill(values, 1500, 1600, -7.3);
        values[1600] = 300;
        Pool pool = pool(values, 700);
        assertThat(pool.sample().get(99)).isEqualTo(-7.3);
        assertThat(pool.sample().get(100)).isZero();
        assertThat(pool.sample().get(1599)).isZero();
        assertThat(pool.sample().get(1600)).isEqualTo(90.1);
        assertThat(pool.sample().get(MANY - 2)).isEqualTo(90.1);
        assertThat(pool.sample().get(MANY - 1)).isEqualTo(300);
        assertThat(pool.sample().percentile(0.5)).isEqualTo(90.1);
        assertThat(pool.sample().values()).hasSize(MANY).contains(-7.3, 90.1);
    }

    @Test
    void howTheyAreDividedMakesNoDifference() {
        double[] values = new Random(5).doubles(MANY, -1, 1).toArray();
        Pool many = pool(values, 1000);
        Pool one = pool(values, MANY);
        Pool joined = new Pool();
        joined.join(pool(Arrays.copyOf(values, 500), 500));
        joined.join(pool(Arrays.copyOfRange(values, 500, MANY), MANY));
        for (double share : new double[] {0, 0.01, 0.5, 0.77, 1}) {
            assertThat(many.sample().percentile(share)).isEqualTo(one.sample().percentile(share));
            assertThat(joined.sample().percentile(share)).isEqualTo(one.sample().percentile(share));
        }
        assertThat(joined.summary().sd()).isCloseTo(one.summary().sd(), within(1e-12));
    }

    @Test
    void upToAMillionAllAreExact() {
        double[] values = new Random(7).doubles(Pool.MOST_EXACT, 1, 2).toArray();
        Pool pool = pool(values, 4096);
        Arrays.sort(values);
        assertThat(pool.lastOfShare(0.3)).isEqualTo(values[(int) (0.3 * values.length)]);
        assertThat(pool.sample().get(12_345)).isEqualTo(values[12_345]);
    }

    /** Joined replication by replication, of so many values each. */
    private static Pool pool(double[] values, int each) {
        Pool all = new Pool();
        for (int from = 0; from < values.length; from += each) {
            Pool replication = new Pool(each);
            Arrays.stream(values, from, Math.min(values.length, from + each)).forEach(replication::add);
            replication.endReplication();
            all.join(replication);
        }
        return all;
    }
}
