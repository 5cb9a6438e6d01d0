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
import java.util.function.Predicate;
import java.util.stream.IntStream;
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
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.Replication;
import runthrough.simulation.records.SimulationException;

/**
 * Two engines written apart give the same numbers for every coil change, every work element and the totals, on the same
 * random numbers, to 1e-6: each engine draws its own, which are a function of what they are for.
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
        List<Case> examples = SecondEngine.exampleLines();
        List<Case> cases = Stream.concat(examples.stream(), SecondEngine.randomLines(FIRST, LINES).stream())
                .toList();
        List<JsonNode> theirs = SecondEngine.run(cases, folder);
        List<Disagreement> all = IntStream.range(0, cases.size())
                .mapToObj(i -> disagreement(cases.get(i), theirs.get(i)))
                .toList();
        return Stream.concat(
                IntStream.range(0, cases.size())
                        .mapToObj(i -> DynamicTest.dynamicTest(
                                cases.get(i).toString(),
                                () -> assertThat(all.get(i).found())
                                        .as("%s: where the two engines differ", cases.get(i))
                                        .isEmpty())),
                Stream.of(DynamicTest.dynamicTest("recorded", () -> {
                    record(book, "A3", "a line for each thing that can be described", all.subList(0, examples.size()));
                    record(book, "A4", "random lines of all kinds", all.subList(examples.size(), all.size()));
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
            Replication ours = one.run();
            return error.isEmpty()
                    ? Disagreement.between(DescribedLine.line(one.document()), ours, theirs)
                    : Disagreement.refused("an error there only: " + error);
        } catch (SimulationException | IllegalArgumentException refused) {
            return Disagreement.refused(error.isEmpty() ? "an error here only: " + refused.getMessage() : "");
        }
    }

    /** That the random lines of the default build meet everything that the engines could see differently. */
    @Test
    void randomLinesMeetEverything() throws IOException, InterruptedException {
        Map<String, Integer> met = new TreeMap<>();
        SecondEngine.randomLines(1, 320).stream()
                .map(one -> DescribedLine.line(one.document()))
                .forEach(line -> features(line).forEach(feature -> met.merge(feature, 1, Integer::sum)));

        assertThat(met.keySet()).containsExactlyInAnyOrderElementsOf(features().keySet());
        assertThat(met)
                .allSatisfy((feature, lines) -> assertThat(lines).as(feature).isGreaterThanOrEqualTo(15));
    }

    private static List<String> features(Line line) {
        return features().entrySet().stream()
                .filter(feature -> feature.getValue().test(line))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Map<String, Predicate<Line>> features() {
        Map<String, Predicate<Line>> all = new TreeMap<>();
        all.put("fill-rate limit", line -> line.accumulator().fillRateLimit() < Double.POSITIVE_INFINITY);
        all.put("creep", line -> line.entry().creep().isPresent());
        all.put("crew of one", line -> line.change().crew() == 1);
        all.put("crew of three or more", line -> line.change().crew() >= 3);
        all.put("shifts", line -> line.change().shifts().isPresent());
        all.put(
                "breaks",
                line -> line.change().shifts().stream()
                        .anyMatch(shifts -> shifts.list().stream()
                                .anyMatch(shift -> !shift.breaks().isEmpty())));
        all.put("elements for two people and more", line -> elements(line).anyMatch(one -> one.people() > 1));
        all.put(
                "preparation that is not put down",
                line -> line.change().prepare().stream().anyMatch(one -> !one.putDown()));
        all.put(
                "elements when something differs",
                line -> elements(line).anyMatch(one -> one.occurrence() instanceof Occurrence.When));
        all.put(
                "weld speed by thickness",
                line -> elements(line)
                        .anyMatch(one -> one.time() instanceof WorkTime.Travel travel
                                && travel.speed() instanceof TravelSpeed.ByThickness));
        all.put("times of a sheet", line -> elements(line).anyMatch(one -> one.time() instanceof WorkTime.FromRows));
        all.put("joint passage", line -> line.process().jointPassage().isPresent());
        all.put("joint break", line -> line.process().jointBreak().isPresent());
        all.put("joined without an accumulator", line -> line.practice() instanceof Practice.JoinWithoutAccumulator);
        all.put("threaded anew", line -> line.practice() instanceof Practice.Rethread);
        all.put("one uncoiler", line -> line.entry().uncoilers() == 1);
        all.put(
                "several uncoilers and a path to the joiner",
                line -> line.entry().uncoilers() > 1 && line.entry().uncoilerPath() > 0);
        all.put("process downtime", line -> line.process().downtime().isPresent());
        all.put("slowing", line -> line.process().slowing().isPresent());
        all.put(
                "speed by coil",
                line -> line.coils().stream()
                        .anyMatch(coil -> coil.processSpeed().isPresent()));
        all.put("scrap per joint", line -> line.process().scrapPerJoint() > 0);
        all.put(
                "work done again after a reject, and work not",
                line -> line.change().reject().meanExtraPasses() > 0
                        && line.change().join().stream().anyMatch(WorkElement::redo)
                        && line.change().join().stream().anyMatch(work -> !work.redo()));
        return all;
    }

    private static Stream<WorkElement> elements(Line line) {
        return Stream.of(
                        line.change().prepare(),
                        line.change().tail(),
                        line.change().join())
                .flatMap(List::stream);
    }
}
