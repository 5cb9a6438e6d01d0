package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.LineBuilder.coil;
import static runthrough.simulation.LineBuilder.cropped;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import umontreal.ssj.rng.MRG32k3a;

/** Which coils come, in which order, and how long they are. */
class CoilFeedTest {

    private static CoilFeed feed(LineBuilder line) {
        return new CoilFeed(line.build(), new Streams(7, 0), 3);
    }

    @Test
    void scheduleComesInItsOrderAndFromTheTopAgain() {
        // Rule COIL-4.
        CoilFeed feed = feed(new LineBuilder().coils(coil(100), coil(200), coil(300)));

        for (int number = 1; number <= 20; number++) {
            assertThat(feed.kind(number)).isEqualTo((number - 1) % 3);
            assertThat(feed.usableLength(number)).isEqualTo(100 * (1 + (number - 1) % 3));
        }
    }

    @Test
    void mixIsDrawnByWeight_whichNeedNotAddUpToOne() {
        // Rule COIL-4.
        CoilFeed feed = feed(new LineBuilder()
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
        CoilFeed feed = feed(new LineBuilder()
                .coilSource(new CoilSource.Mix(
                        List.of(new CoilSource.Share(coil(100), 0.5), new CoilSource.Share(coil(200), 1.5)))));
        MRG32k3a draws = new Streams(7, 0).stream(Source.COIL_CHOICE);

        for (int number = 1; number <= 100; number++) {
            assertThat(feed.kind(number)).isEqualTo(draws.nextDouble() < 0.25 ? 0 : 1);
        }
    }

    @Test
    void lengthOfCoilNIsDrawnAtNumberN_andStaysWhatItIs() {
        // Rule COIL-5.
        Distribution distribution = Distribution.uniform(300, 900);
        CoilFeed feed = feed(new LineBuilder().coils(coil(distribution)));
        MRG32k3a draws = new Streams(7, 0).stream(Source.COIL_SIZE);

        for (int number = 1; number <= 50; number++) {
            double length = distribution.quantile(draws.nextDouble());
            assertThat(feed.usableLength(number)).isEqualTo(length);
            feed.kind(number + 3);
            assertThat(feed.usableLength(number)).isEqualTo(length);
        }
    }

    @Test
    void usableLengthIsWithoutTheCrops_whichMustLeaveSomething() {
        // Rule COIL-2.
        assertThat(feed(new LineBuilder().coils(cropped(600, 2, 3))).usableLength(1))
                .isEqualTo(595);
        assertThatThrownBy(() -> feed(new LineBuilder().coils(cropped(5, 2, 3))).usableLength(1))
                .hasMessage(
                        "coil 1 ('coil', draw 1 of the coil stream) is 5.0 m long, no longer than its crops of 2.0 m and 3.0 m. "
                                + "Give longer coils or shorter crops");
    }
}
