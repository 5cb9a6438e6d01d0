package runthrough.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.WorkRecord;

/**
 * The example lines in {@code src/test/python/examples.jsonl}: what a hand calculation says of each, with the calculation in
 * words beside it. This engine must give the same to 1e-9.
 *
 * <p>Rules CAUSE-1, CAUSE-2, CAUSE-3, CAUSE-4, CAUSE-5, CAUSE-6, CAUSE-7, CAUSE-8: the lines named "cause: ..." and those of
 * people, of which one has waited for people alone and one draws more than a full accumulator gives.
 */
class ExampleLinesTest {

    @TestFactory
    Stream<DynamicTest> asInTheHandCalculation() throws IOException {
        return SecondEngine.exampleLines().stream()
                .filter(one -> one.document().has("expect"))
                .map(one -> DynamicTest.dynamicTest(one.toString(), () -> check(one)));
    }

    private static void check(Case one) {
        Replication run = one.run();
        JsonNode expected = one.document().path("expect");
        List<String> wrong = new ArrayList<>();
        Line line = DescribedLine.line(one.document());
        Judged judged = new Judged(line);
        expected.path("changes").properties().forEach(row -> {
            ChangeRecord change = run.changes().stream()
                    .filter(record -> Integer.toString(record.number()).equals(row.getKey()))
                    .findFirst()
                    .orElseThrow();
            compare("change " + row.getKey(), numbers(change, judged.of(change)), row.getValue(), wrong);
        });
        expected.path("work").properties().forEach(row -> {
            WorkRecord work = run.work().stream()
                    .filter(record -> key(record, line).equals(row.getKey()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(row.getKey() + " was not done: " + run.work()));
            compare(row.getKey(), numbers(work, Map.of()), row.getValue(), wrong);
        });
        compare("totals", numbers(run.totals(), Map.of()), expected.path("totals"), wrong);
        assertThat(wrong).as(one.document().path("why").asText()).isEmpty();
    }

    private static String key(WorkRecord record, Line line) {
        CoilChange work = line.work();
        List<WorkElement> list = switch (record.list()) {
            case PREPARE -> work.prepare();
            case TAIL -> work.tail();
            case JOIN -> work.join();
        };
        return record.list().name().toLowerCase(Locale.ROOT) + "/"
                + list.get(record.element()).name() + " " + record.change() + "." + record.pass();
    }

    /** The components of {@code row} by their names, and {@code more}. */
    private static Map<String, Object> numbers(Record row, Map<String, Object> more) {
        Map<String, Object> numbers = new TreeMap<>(more);
        for (RecordComponent component : row.getClass().getRecordComponents()) {
            numbers.put(component.getName(), Disagreement.valueOf(component, row));
        }
        if (row instanceof ChangeRecord change) {
            numbers.put("waiting", change.waiting());
        }
        if (row instanceof Totals totals) {
            numbers.put("paidSeconds", totals.paidSeconds());
            numbers.put("breaks", totals.jointBreaks());
            numbers.put("breakScrapMetres", totals.processedScrap().breakMetres());
        }
        return numbers;
    }

    private static void compare(String what, Map<String, Object> ours, JsonNode expected, List<String> wrong) {
        expected.properties().forEach(one -> {
            Object number = ours.get(one.getKey());
            if (number == null) {
                wrong.add(what + " has no " + one.getKey());
            } else {
                number(number, one.getValue(), what + ", " + one.getKey() + ": ", wrong);
            }
        });
    }

    private static void number(Object ours, JsonNode expected, String place, List<String> wrong) {
        if (ours instanceof List<?> putDown) {
            List<Double> here = putDown.stream()
                    .map(WorkRecord.PutDown.class::cast)
                    .flatMap(rest -> Stream.of(rest.from(), rest.to()))
                    .toList();
            List<Double> there = StreamSupport.stream(expected.spliterator(), false)
                    .flatMap(rest -> StreamSupport.stream(rest.spliterator(), false))
                    .map(JsonNode::doubleValue)
                    .toList();
            if (here.size() != there.size()) {
                wrong.add(place + here + ", expected " + there);
            }
            for (int i = 0; i < Math.min(here.size(), there.size()); i++) {
                number(here.get(i), there.get(i), place, wrong);
            }
        } else if (ours instanceof Number number) {
            number(number.doubleValue(), expected.doubleValue(), place, wrong);
        } else if (!ours.toString().equals(expected.asText())) {
            wrong.add(place + ours + ", expected " + expected.textValue());
        }
    }

    private static void number(double ours, double expected, String place, List<String> wrong) {
        if (!(Math.abs(ours - expected) <= 1e-9 * Math.max(1, Math.abs(expected)))) {
            wrong.add(place + ours + ", expected " + expected);
        }
    }
}
