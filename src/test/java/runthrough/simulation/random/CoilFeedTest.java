package runthrough.simulation.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.coil;
import static runthrough.simulation.PlainLine.cropped;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.simulation.EverySource;
import runthrough.simulation.PlainLine;

/** Which coils come, in which order, and how long they are. */
class CoilFeedTest {
    private static final RandomNumbers NUMBERS = new RandomNumbers(7, 0);

    private static CoilFeed feed(PlainLine line) {
        return new CoilFeed(line.build(), NUMBERS);
    }

    @Test
    void scheduleComesInItsOrderAndFromTheTopAgain() {
        // Rule COIL-4.
        CoilFeed feed = feed(new PlainLine().coils(coil(100), coil(200), coil(300)));

        for (int number = 1; number <= 20; number++) {
            assertThat(feed.kind(number)).isEqualTo((number - 1) % 3);
            assertThat(feed.usableLength(number)).isEqualTo(100 * (1 + (number - 1) % 3));
        }
    }

    @Test
    void mixIsDrawnByWeight_whichNeedNotAddUpToOne() {
        // Rule COIL-4.
        CoilFeed feed = feed(new PlainLine()
                .coilSource(new CoilSource.Mix(List.of(
                        new CoilSource.Share(coil(100), 1),
                        new CoilSource.Share(coil(200), 2),
                        new CoilSource.Share(coil(300), 5)))));
        int[] count = new int[3];
        for (int number = 1; number <= 8000; number++) {
            count[feed.kind(number)]++;
        }

        // 1000, 2000, 5000 with standard deviations 30, 39, 43; four of each.
        assertThat((double) count[0]).isCloseTo(1000, within(120.0));
        assertThat((double) count[1]).isCloseTo(2000, within(156.0));
        assertThat((double) count[2]).isCloseTo(5000, within(172.0));
    }

    @Test
    void mixTakesTheKindInWhoseShareTheDrawFalls() {
        // Rule COIL-4.
        CoilFeed feed = feed(new PlainLine()
                .coilSource(new CoilSource.Mix(
                        List.of(new CoilSource.Share(coil(100), 0.5), new CoilSource.Share(coil(200), 1.5)))));
        SourceNumbers draws = NUMBERS.source(SourceNames.COIL_KIND);

        for (int number = 1; number <= 100; number++) {
            assertThat(feed.kind(number)).isEqualTo(draws.uniform(number, 0) < 0.25 ? 0 : 1);
        }
    }

    @Test
    void lengthOfCoilNIsDrawnAtNumberN_andStaysWhatItIs() {
        // Rule COIL-5.
        Distribution distribution = Distribution.uniform(300, 900);
        CoilFeed feed = feed(new PlainLine().coils(coil(distribution)));
        SourceNumbers draws = NUMBERS.source(SourceNames.COIL_LENGTH);

        for (int number = 1; number <= 50; number++) {
            double length = distribution.quantile(draws.uniform(number, 0));
            assertThat(feed.usableLength(number)).isEqualTo(length);
            feed.kind(number + 3);
            assertThat(feed.usableLength(number)).isEqualTo(length);
        }
    }

    @Test
    void usableLengthIsWithoutTheCrops_whichMustLeaveSomething() {
        // Rule COIL-2.
        assertThat(feed(new PlainLine().coils(cropped(600, 2, 3))).usableLength(1))
                .isEqualTo(595);
        assertThatThrownBy(() -> feed(new PlainLine().coils(cropped(5, 2, 3))).usableLength(1))
                .hasMessage("coil 1 ('coil') is 5 m long, no longer than its crops of 2 m and 3 m. "
                        + "Give longer coils or shorter crops");
    }

    @Test
    void coilTooShortIsNamedWithItsDraw() {
        // Rule COIL-2.
        Distribution atMost5 = Distribution.uniform(4, 5);
        Coil coil = new Coil("short", new Coil.Strip(0.001, 1, 7850), new CoilSize.ByLength(atMost5)).withCrops(2, 3);

        assertThatThrownBy(() -> feed(new PlainLine().coils(coil)).usableLength(12))
                .hasMessageStartingWith("coil 12 ('short', draw 12 of 'coil/length') is 4.");
    }

    @Test
    void coilsByMassTakeNumbersOfTheirOwn() {
        // Rule RANDOM-3.
        Distribution mass = Distribution.uniform(5000, 6000);
        SourceNumbers draws = NUMBERS.source(SourceNames.COIL_MASS);
        CoilFeed feed = feed(new PlainLine().coils(EverySource.byMass(mass)));

        for (int number = 1; number <= 20; number++) {
            double kilograms = mass.quantile(draws.uniform(number, 0));
            assertThat(feed.usableLength(number)).isCloseTo(kilograms / 7.85, within(1e-9));
        }
    }

    @Test
    void anyCoilCanBeAskedForAtAnyTime() {
        // Rule COIL-5.
        PlainLine line = new PlainLine()
                .coilSource(new CoilSource.Mix(List.of(
                        new CoilSource.Share(coil(Distribution.uniform(300, 900)), 1),
                        new CoilSource.Share(coil(200), 1))));
        CoilFeed rising = feed(line);
        double[] lengths =
                IntStream.rangeClosed(1, 300).mapToDouble(rising::usableLength).toArray();
        List<Integer> order =
                new ArrayList<>(IntStream.rangeClosed(1, 300).boxed().toList());
        Collections.shuffle(order, new Random(4));
        CoilFeed shuffled = feed(line);

        for (int number : order) {
            assertThat(shuffled.usableLength(number)).isEqualTo(lengths[number - 1]);
            assertThat(shuffled.kind(number)).isEqualTo(rising.kind(number));
            assertThat(shuffled.coil(number)).isEqualTo(rising.coil(number));
        }
    }
}
