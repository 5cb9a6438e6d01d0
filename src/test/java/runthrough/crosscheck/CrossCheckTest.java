package runthrough.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static runthrough.report.validation.Topic.TWO_WAYS;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.simulation.Detail;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.SimulationException;

/**
 * Two engines written apart give the same numbers for every coil change, every work element and the totals, on the same
 * random draws, to 1e-6.
 *
 * <p>To try more random lines, or to find one again: {@code mvn test -Dtest=CrossCheckTest -Dcrosscheck.first=4001
 * -Dcrosscheck.lines=2000}; random line n is the same on every machine.
 */
@RecordsChecks
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
    Stream<DynamicNode> bothEnginesAgree(@TempDir Path folder, CheckBook book)
            throws IOException, InterruptedException {
        List<Case> chosen = ChosenLines.all();
        List<Case> random =
                LongStream.range(FIRST, FIRST + LINES).mapToObj(RandomLines::of).toList();
        List<Case> cases = Stream.concat(chosen.stream(), random.stream()).toList();
        List<JsonNode> theirs = new SecondEngine(folder).run(cases);
        List<Disagreement> all = IntStream.range(0, cases.size())
                .mapToObj(i -> disagreement(cases.get(i), theirs.get(i)))
                .toList();
        return Stream.concat(
                IntStream.range(0, cases.size())
                        .mapToObj(i -> DynamicTest.dynamicTest(
                                cases.get(i).name(),
                                () -> assertThat(all.get(i).found())
                                        .as("%s: where the two engines differ", cases.get(i))
                                        .isEmpty())),
                Stream.of(DynamicTest.dynamicTest("recorded", () -> {
                    record(book, "A3", "one line for each thing that can be described", all.subList(0, chosen.size()));
                    record(book, "A4", "random lines of all kinds", all.subList(chosen.size(), all.size()));
                })));
    }

    private static void record(CheckBook book, String id, String lines, List<Disagreement> all) {
        book.check(TWO_WAYS, id, "every coil change, work element and total, against a second engine; " + lines)
                .source(Sources.SECOND_ENGINE)
                .within(Disagreement.TOLERANCE, "1e-6 of the value and 1 m or 1 s")
                .errors("line", all.stream().map(Disagreement::greatest).toList());
    }

    private static Disagreement disagreement(Case one, JsonNode theirs) {
        String error = theirs.path("error").asText("");
        try {
            Replication ours = new LineSimulator(one.line(), one.plan()).run(0, Detail.ELEMENTS);
            return error.isEmpty()
                    ? Disagreement.between(ours, theirs)
                    : Disagreement.refused("an error there only: " + error);
        } catch (SimulationException refused) {
            return Disagreement.refused(error.isEmpty() ? "an error here only: " + refused.getMessage() : "");
        }
    }

    /** That the random lines of the default build meet everything that the engines could see differently. */
    @Test
    void randomLinesMeetEverything() {
        Map<String, Integer> met = new TreeMap<>();
        LongStream.range(1, 1 + 320)
                .mapToObj(RandomLines::of)
                .forEach(one -> features(one.line()).forEach(feature -> met.merge(feature, 1, Integer::sum)));

        assertThat(met)
                .containsOnlyKeys(
                        "an accumulator with a fill-rate limit",
                        "creep",
                        "crew of one",
                        "crew of two",
                        "joined without an accumulator",
                        "one uncoiler",
                        "own stops",
                        "rejects",
                        "several uncoilers and a path to the joiner",
                        "slowing",
                        "speed by coil",
                        "threaded anew",
                        "work done again after a reject, and work not")
                .allSatisfy((feature, lines) -> assertThat(lines).as(feature).isGreaterThanOrEqualTo(15));
    }

    private static List<String> features(Line line) {
        Map<String, Boolean> has = new TreeMap<>();
        has.put("an accumulator with a fill-rate limit", line.accumulator().fillRateLimit() < Double.POSITIVE_INFINITY);
        has.put("creep", line.entry().creep().isPresent());
        has.put("crew of one", line.change().crew() == 1);
        has.put("crew of two", line.change().crew() == 2);
        has.put("joined without an accumulator", line.practice() == Practice.JOIN_WITHOUT_ACCUMULATOR);
        has.put("one uncoiler", line.entry().uncoilers() == 1);
        has.put("own stops", line.process().downtime().isPresent());
        boolean rejects = !(line.change().reject() instanceof Reject.Never);
        has.put("rejects", rejects);
        has.put(
                "several uncoilers and a path to the joiner",
                line.entry().uncoilers() > 1 && line.entry().uncoilerPath() > 0);
        has.put("slowing", line.process().slowing().isPresent());
        has.put(
                "speed by coil",
                line.coils().stream().anyMatch(coil -> coil.processSpeed().isPresent()));
        has.put("threaded anew", line.practice() == Practice.RETHREAD);
        has.put(
                "work done again after a reject, and work not",
                rejects
                        && line.change().join().stream().anyMatch(WorkElement::redo)
                        && line.change().join().stream().anyMatch(work -> !work.redo()));
        return has.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .toList();
    }
}
