package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Work elements of the shipped lines, edited one by one. */
class ServedWorkTest extends ServedPage {

    static Stream<String> names() throws IOException {
        return ServedLinesTest.names();
    }

    /** An element of a line: the path of its item, and the element itself. */
    private record Element(String path, JsonNode shown) {
        String name() {
            return shown.get("name").asText();
        }
    }

    /** Those of lists; a rethread is an element by itself, whose name is its key. */
    private static List<Element> elements(JsonNode line) {
        List<Element> elements = new ArrayList<>();
        line.get("work").properties().stream()
                .filter(list -> !list.getKey().equals("rethread"))
                .forEach(list -> {
                    for (int i = 0; i < list.getValue().size(); i++) {
                        elements.add(new Element(
                                "coil-change." + list.getKey() + "[" + (i + 1) + "]",
                                list.getValue().get(i)));
                    }
                });
        return elements;
    }

    private static JsonNode edited(String text, ObjectNode change) throws IOException, InterruptedException {
        ObjectNode body = body(text);
        body.putArray("changes").add(change);
        JsonNode reply = ask("/api/edit", body);
        assertThat(reply.get("line").get("problems")).as("%s", change).isEmpty();
        return reply;
    }

    private static ObjectNode change(String path) {
        return JSON.createObjectNode().put("path", path);
    }

    /** Random numbers go by the names of what they are for; the hand calculation is of mean times, whatever the names. */
    @ParameterizedTest
    @MethodSource("names")
    void anElementGetsAnotherName_andItsTimeStays(String name) throws IOException, InterruptedException {
        String text = shipped(name);
        JsonNode before = ask("/api/answer", body(text).put("effort", 0));
        String now = text;
        for (Element element : elements(ask("/api/line", body(text)))) {
            now = edited(now, change(element.path()).put("name", element.name() + " anew"))
                    .get("text")
                    .asText();
        }

        JsonNode after = ask("/api/answer", body(now).put("effort", 0));

        assertThat(elements(ask("/api/line", body(now))))
                .allMatch(element -> element.name().endsWith(" anew"));
        assertThat(calculated(after)).isNotEmpty().isEqualTo(calculated(before));
        assertThat(now.lines().count()).isEqualTo(text.lines().count());
    }

    private static List<String> calculated(JsonNode answer) {
        List<String> values = new ArrayList<>();
        answer.get("figures").forEach(figure -> {
            if (!figure.get("steps").isEmpty()) {
                values.add(
                        figure.get("name").asText() + " " + figure.get("value").asText());
            }
        });
        return values;
    }

    /** Whatever way its time was given in, an element can be given it in another, and what else is said of it stays. */
    @ParameterizedTest
    @MethodSource("names")
    void anElementGetsAnotherTime_andWhatElseIsSaidOfItStays(String name) throws IOException, InterruptedException {
        String text = shipped(name);
        for (Element element : elements(ask("/api/line", body(text)))) {
            JsonNode reply = edited(
                    text, change(element.path()).put("time", "triangular").put("value", "[7 s, 8 s, 9 s]"));

            Element now = elements(reply.get("line")).stream()
                    .filter(other -> other.path().equals(element.path()))
                    .findFirst()
                    .orElseThrow();
            assertThat(now.shown().get("mean").asDouble()).isEqualTo(8.0);
            assertThat(now.shown().get("values")).extracting(JsonNode::asText).containsExactly("7 s", "8 s", "9 s");
            assertThat(now.shown().get("beside")).isEqualTo(element.shown().get("beside"));
        }
    }

    /** A key that YAML does not take would be written into the text. */
    @ParameterizedTest
    @ValueSource(strings = {"", " ", "two\nlines", "half \uD83E"})
    void aNameThatIsNoneIsRefused_andTheTextStays(String name) throws IOException, InterruptedException {
        String text = shipped("tube-line");
        for (String wrong : List.of(name, name + "w".repeat(1030))) {
            ObjectNode body = body(text);
            body.putArray("changes").add(change("coil-change.join[1]").put("name", wrong));

            JsonNode reply = ask("/api/edit", body);

            assertThat(reply.get("text").asText()).isEqualTo(text);
            assertThat(reply.toString())
                    .contains("the name of a work element must have 1 to 200 letters in one line, without tabs");
        }
    }

    @Test
    void aNewNameIsCarriedToOriginsAndAlternatives() throws IOException, InterruptedException {
        String tube = edited(shipped("tube-line"), change("coil-change.join[2]").put("name", "flash weld"))
                .get("text")
                .asText();
        String slitter = edited(
                        shipped("slitter-widths"), change("coil-change.join[1]").put("name", "swap heads"))
                .get("text")
                .asText();

        assertThat(tube).contains("coil-change.join.flash weld: \"measured, n = 40\"");
        assertThat(slitter).contains("one width: {\"coil-change.join[1].swap heads\": 0 s}");
    }

    /** Strip of 240 mm at 600 mm/min takes 24 s, and 6 s are added. */
    @Test
    void theMeanOfATravelIsThatOfThePass() throws IOException, InterruptedException {
        JsonNode weld = elements(ask("/api/line", body(shipped("tube-line")))).stream()
                .filter(element -> element.name().equals("weld"))
                .findFirst()
                .orElseThrow()
                .shown();

        assertThat(weld.get("mean").asDouble()).isCloseTo(30, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(weld.get("values")).extracting(JsonNode::asText).containsExactly("600 mm/min", "6 s");
    }

    @ParameterizedTest
    @MethodSource("names")
    void sliderEndsAreValuesThatTheLineRunsWith(String name) throws IOException, InterruptedException {
        String text = shipped(name);
        JsonNode line = ask("/api/line", body(text));

        JsonNode sliders = ask("/api/sliders", body(text));

        assertThat(sliders).isNotEmpty();
        for (JsonNode field : line.get("fields")) {
            JsonNode ends = sliders.get(field.get("path").asText());
            if (ends == null) {
                continue;
            }
            assertThat(field.get("si").asDouble())
                    .isBetween(ends.get(0).asDouble(), ends.get(1).asDouble());
            for (JsonNode end : ends) {
                String value = String.format(
                        java.util.Locale.ROOT,
                        field.get("whole").asBoolean() ? "%.0f %s" : "%.3g %s",
                        end.asDouble() * field.get("per").asDouble(),
                        field.get("symbol").asText());
                edited(text, change(field.get("path").asText()).put("value", value));
            }
        }
    }

    /** Process and entry go on at full speed from 160 m on: 30 strands of 16/3 m hold that, of 5.3333333 m they do not. */
    @Test
    void aCapacityThatJustDoesIsWrittenWithTheDigitsItTakes() throws IOException, InterruptedException {
        JsonNode reply =
                edited(shipped("galvanising-line"), change("usable-capacity").put("value", "160 m"));

        assertThat(reply.get("text").asText()).contains("stroke: 5.33333333333333 m");
        JsonNode other =
                edited(shipped("galvanising-line"), change("usable-capacity").put("value", "170 m"));
        assertThat(other.get("text").asText()).contains("stroke: 5.6666667 m");
    }

    /** Each number opens what leads to it, and no two of them the same. */
    @ParameterizedTest
    @MethodSource("names")
    void eachNumberOpensItsOwnCalculation(String name) throws IOException, InterruptedException {
        JsonNode answer = ask("/api/answer", body(shipped(name)).put("effort", 0));

        List<JsonNode> steps = new ArrayList<>();
        answer.get("figures").forEach(figure -> {
            if (!figure.get("steps").isEmpty()) {
                steps.add(figure.get("steps"));
            }
        });

        assertThat(steps).hasSizeGreaterThan(2).doesNotHaveDuplicates();
    }
}
