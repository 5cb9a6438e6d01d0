package runthrough.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import runthrough.simulation.Detail;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.SimulationException;

/**
 * Two engines written apart give the same numbers for every coil change, every work element and the totals, on the same
 * drawn luck, to 1e-6.
 *
 * <p>To try more random lines, or to find one again: {@code mvn test -Dtest=CrossCheckTest -Dcrosscheck.first=4001
 * -Dcrosscheck.lines=2000}; random line n is the same on every machine.
 */
class CrossCheckTest {
    private static final int LINES = Integer.getInteger("crosscheck.lines", 320);
    private static final long FIRST = Long.getLong("crosscheck.first", 1);

    @BeforeAll
    static void needsTheSecondEngine() {
        assumeTrue(
                SecondEngine.isInstalled(),
                "skipped: /usr/bin/python3 has no SimPy; on Debian: apt-get install python3-simpy3");
    }

    @TestFactory
    Stream<DynamicTest> bothEnginesAgree(@TempDir Path folder) throws IOException, InterruptedException {
        List<Case> cases = Stream.concat(
                        ChosenLines.all().stream(),
                        LongStream.range(FIRST, FIRST + LINES).mapToObj(RandomLines::of))
                .toList();
        List<JsonNode> theirs = new SecondEngine(folder).run(cases);
        return IntStream.range(0, cases.size())
                .mapToObj(i -> DynamicTest.dynamicTest(
                        cases.get(i).name(),
                        () -> assertThat(disagreements(cases.get(i), theirs.get(i)))
                                .as("%s: where the two engines differ", cases.get(i))
                                .isEmpty()));
    }

    private static List<String> disagreements(Case one, JsonNode theirs) {
        String error = theirs.path("error").asText("");
        try {
            Replication ours = new LineSimulator(one.line(), one.plan()).run(0, Detail.ELEMENTS);
            return error.isEmpty() ? Disagreement.between(ours, theirs) : List.of("an error there only: " + error);
        } catch (SimulationException refused) {
            return error.isEmpty() ? List.of("an error here only: " + refused.getMessage()) : List.of();
        }
    }
}
