package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.Replication;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.cause.Reason;
import runthrough.web.job.Refusal;

/** Who may run lines for the page at once. */
class AnswersTest {
    private final Answers answers = new Answers("runthrough test", 1);

    private static SimulationRequest asking(PageScenario draft, int changes) {
        SimulationRequest asked = draft.asked();
        return new SimulationRequest(
                asked.title(),
                asked.notes(),
                asked.line(),
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, 2, 1, 0.9),
                UnitSystem.METRIC);
    }

    /** Waits within its first replication until the test is done with it. */
    private static StudyListener waiting(AtomicInteger begun, CountDownLatch done) {
        return new StudyListener() {
            @Override
            public Runnable seen(Replication replication, List<Optional<Reason>> reasons) {
                begun.incrementAndGet();
                try {
                    done.await(1, TimeUnit.MINUTES);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                return () -> {};
            }
        };
    }

    /** Of three who ask for 120,000 coil changes one is at work, and the others leave the second place free. */
    @Test
    void whoAsksForLittleIsNotHeldUpByThoseWhoAskForMuch() throws IOException, InterruptedException {
        PageScenario draft = PageScenario.of(
                Files.readString(Path.of("scenarios", "tube-line.yaml")), Path.of("scenarios"), UnitSystem.METRIC);
        AtomicInteger begun = new AtomicInteger();
        CountDownLatch done = new CountDownLatch(1);
        ExecutorService pool = Executors.newFixedThreadPool(3);
        try {
            for (int i = 0; i < 3; i++) {
                pool.execute(() -> {
                    try {
                        answers.run(asking(draft, 60_000), draft, StudyOptions.plain(), waiting(begun, done));
                    } catch (Refusal e) {
                        // The test was done with it.
                    }
                });
            }
            while (begun.get() == 0) {
                Thread.sleep(10);
            }

            assertThat(answers.run(asking(draft, 20), draft, StudyOptions.plain())
                            .study()
                            .verdict()
                            .changes()
                            .total())
                    .isEqualTo(40);
            assertThat(begun).hasValue(1);
        } finally {
            done.countDown();
            pool.shutdownNow();
        }
    }
}
