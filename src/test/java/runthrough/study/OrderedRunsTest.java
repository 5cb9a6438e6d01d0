package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderedRunsTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 40})
    void resultsAreHandedOverInOrderOnTheCallersThread(int threads) {
        List<Integer> taken = new ArrayList<>();
        Thread caller = Thread.currentThread();

        new OrderedRuns(threads)
                .run(
                        30,
                        i -> {
                            pause(i % 3);
                            return i * i;
                        },
                        square -> {
                            assertThat(Thread.currentThread()).isSameAs(caller);
                            taken.add(square);
                        },
                        () -> false);

        assertThat(taken)
                .containsExactlyElementsOf(
                        IntStream.range(0, 30).mapToObj(i -> i * i).toList());
    }

    @Test
    void asManyRunAtOnceAsThereAreThreads() {
        // Each piece waits until the other has begun: with one thread this would never end.
        CountDownLatch bothBegun = new CountDownLatch(2);
        List<Integer> taken = new ArrayList<>();

        new OrderedRuns(2)
                .run(
                        2,
                        i -> {
                            bothBegun.countDown();
                            await(bothBegun);
                            return i;
                        },
                        taken::add,
                        () -> false);

        assertThat(taken).containsExactly(0, 1);
    }

    @Test
    void onlyAFewAreBegunAhead_soThatMemoryIsBounded() {
        AtomicInteger begun = new AtomicInteger();
        List<Integer> ahead = new ArrayList<>();

        new OrderedRuns(2)
                .run(
                        500,
                        i -> {
                            begun.incrementAndGet();
                            return i;
                        },
                        i -> {
                            pause(1);
                            ahead.add(begun.get() - i);
                        },
                        () -> false);

        assertThat(ahead).hasSize(500).allMatch(n -> n <= 8);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void theFailureOfTheLowestNumberIsReported_alsoWhenAHigherOneFailsSooner(int threads) {
        List<Integer> taken = new ArrayList<>();

        assertThatThrownBy(() -> new OrderedRuns(threads)
                        .run(
                                10,
                                i -> {
                                    pause(i == 3 ? 50 : 0);
                                    if (i >= 3) {
                                        throw new StudyException("piece " + i);
                                    }
                                    return i;
                                },
                                taken::add,
                                () -> false))
                .isInstanceOf(StudyException.class)
                .hasMessage("piece 3");
        assertThat(taken).containsExactly(0, 1, 2);
    }

    @Test
    void anErrorOfTheMachineIsHandedOnAsItIs() {
        assertThatThrownBy(() -> new OrderedRuns(1)
                        .run(
                                1,
                                i -> {
                                    throw new OutOfMemoryError("hand-made");
                                },
                                i -> {},
                                () -> false))
                .isInstanceOf(OutOfMemoryError.class)
                .hasMessage("hand-made");
    }

    @Test
    void cancelledInBetween_itIsGivenUp() {
        List<Integer> taken = new ArrayList<>();

        assertThatThrownBy(() -> new OrderedRuns(2).run(100, i -> i, taken::add, () -> taken.size() == 7))
                .isInstanceOf(CancellationException.class)
                .hasMessage("given up after 7 of 100 pieces of work");
        assertThat(taken).hasSize(7);
    }

    @Test
    void interruptedInBetween_itIsGivenUp() {
        List<Integer> taken = new ArrayList<>();

        assertThatThrownBy(() -> new OrderedRuns(2)
                        .run(
                                100,
                                i -> i,
                                i -> {
                                    taken.add(i);
                                    if (i == 4) {
                                        Thread.currentThread().interrupt();
                                    }
                                },
                                () -> false))
                .isInstanceOf(CancellationException.class)
                .hasMessage("given up after 5 of 100 pieces of work");
        assertThat(Thread.interrupted()).isTrue();
        assertThat(taken).hasSize(5);
    }

    @Test
    void interruptedWhileWaiting_itIsGivenUpAndTheThreadStaysInterrupted() {
        CountDownLatch never = new CountDownLatch(1);
        Thread caller = Thread.currentThread();

        assertThatThrownBy(() -> new OrderedRuns(1)
                        .run(
                                1,
                                i -> {
                                    caller.interrupt();
                                    await(never);
                                    return i;
                                },
                                i -> {},
                                () -> false))
                .isInstanceOf(CancellationException.class)
                .hasMessageStartingWith("given up");
        // Asking clears the mark, so that the next test does not see it.
        assertThat(Thread.interrupted()).isTrue();
    }

    @Test
    void cancelledWhileAPieceIsUnderWay_thePieceIsInterrupted() throws InterruptedException {
        CountDownLatch never = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch interrupted = new CountDownLatch(1);

        assertThatThrownBy(() -> new OrderedRuns(1)
                        .run(
                                1,
                                i -> {
                                    begun.countDown();
                                    await(never);
                                    interrupted.countDown();
                                    return i;
                                },
                                i -> {},
                                () -> begun.getCount() == 0))
                .isInstanceOf(CancellationException.class)
                .hasMessage("given up after 0 of 1 pieces of work");
        assertThat(interrupted.await(1, java.util.concurrent.TimeUnit.SECONDS)).isTrue();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void pause(int milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
