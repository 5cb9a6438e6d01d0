package runthrough.simulation.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Random numbers beside the simulation. */
class DrawsTest {

    @Test
    void sameSeedNumberAndRepetitionGiveTheSameNumbers() {
        assertThat(new Draws(3, 2, 1).next()).isEqualTo(new Draws(3, 2, 1).next());
    }

    @Test
    void everyNumberAndRepetitionHasItsOwn_andNoneIsThatOfALine() {
        Set<Double> seen = new HashSet<>();
        for (int number = 0; number < 20; number++) {
            for (int repetition = 0; repetition < 20; repetition++) {
                seen.add(new Draws(3, number, repetition).next());
                seen.add(new RandomNumbers(3, repetition).source("reject").uniform(number, 0));
            }
        }

        assertThat(seen).hasSize(2 * 20 * 20);
    }

    /** By src/test/python/random_numbers.py: philox((n, -1, 1, 2), (3, 0)), for n = 0 and 1. */
    @Test
    void numbersAreThoseThatAnotherProgramComputes() {
        Draws draws = new Draws(3, 2, 1);
        assertThat(draws.next()).isEqualTo(0.5419862651753514);
        assertThat(draws.next()).isEqualTo(0.3413768256322588);
    }

    /** 6000 throws of a die: each face 1000 times, with a standard error of 29. */
    @Test
    void wholeNumbersBelowABoundAreEquallyLikely() {
        Draws draws = new Draws(5, 0, 0);
        int[] faces = new int[6];
        for (int i = 0; i < 6000; i++) {
            faces[draws.below(6)]++;
        }

        for (int count : faces) {
            assertThat((double) count).isCloseTo(1000, within(3 * 29.0));
        }
    }
}
