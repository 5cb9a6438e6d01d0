package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import runthrough.chart.Chart;
import runthrough.chart.verdict.Charts;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.report.Provenance;
import runthrough.report.write.HtmlWriter;

class VerdictPageTest {
    private static final Line RISKY = Invented.line(Distribution.lognormal(36, 9));
    private static final String HOSTILE = "<script>alert('x')</script>\"&";

    @Test
    void isWellFormedSoThatItCanBeMadeIntoOtherEditions() throws Exception {
        assertThat(parsed(html(Invented.result(RISKY))).getDocumentElement().getNodeName())
                .isEqualTo("html");
    }

    @Test
    void needsNothingFromElsewhereAndNoScript() {
        String html = html(Invented.result(RISKY));
        assertThat(html.replace("http://www.w3.org/", ""))
                .doesNotContain("http:")
                .doesNotContain("https:")
                .doesNotContain("<script")
                .doesNotContain("<link")
                .doesNotContain("@import");
        assertThat(found("(?:src|href)=\"([^\"]*)\"", html)).allMatch(link -> link.startsWith("#"));
        assertThat(found("url\\(([^)]*)\\)", html))
                .allMatch(url -> url.startsWith("data:font/woff2;base64,") || url.startsWith("#"));
    }

    @Test
    void saysTheVerdictInAWordAndASentence() throws Exception {
        RunThroughResult result = Invented.result(RISKY);
        String text = text(result);
        assertThat(text).contains("✗ STOPS").contains(VerdictHeadline.of(result).sentence());
    }

    @Test
    void everyChartStandsInItWithItsReading() throws Exception {
        RunThroughResult result = Invented.result(RISKY);
        Document page = parsed(html(result));
        List<String> captions = texts(page, "figcaption");
        List<String> readings =
                Charts.of(result.study()).stream().map(Chart::reading).toList();
        assertThat(captions).hasSameSizeAs(readings);
        for (int i = 0; i < readings.size(); i++) {
            assertThat(captions.get(i).replace('\u00a0', ' ')).isEqualTo("Figure " + (i + 1) + ". " + readings.get(i));
        }
    }

    @Test
    void headingsGoDownOneLevelAtATime() throws Exception {
        List<Integer> levels = found("<h([1-6])[ >]", html(Invented.result(RISKY))).stream()
                .map(Integer::valueOf)
                .toList();
        assertThat(levels).startsWith(1, 2);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).isBetween(2, levels.get(i - 1) + 1);
        }
    }

    @Test
    void everyTableHasACaptionAndHeadings() throws Exception {
        NodeList tables = parsed(html(Invented.result(RISKY))).getElementsByTagName("table");
        assertThat(tables.getLength()).isGreaterThan(8);
        for (int i = 0; i < tables.getLength(); i++) {
            Element table = (Element) tables.item(i);
            assertThat(table.getElementsByTagName("caption").item(0).getTextContent())
                    .isNotBlank();
            assertThat(table.getElementsByTagName("th").getLength()).isPositive();
        }
    }

    @Test
    void linksOfTheContentsLeadSomewhere() {
        String html = html(Invented.result(RISKY));
        List<String> ids = found(" id=\"([^\"]*)\"", html);
        assertThat(found("href=\"#([^\"]*)\"", html)).isNotEmpty().allMatch(ids::contains);
        assertThat(ids).doesNotHaveDuplicates();
    }

    @Test
    void textOfTheUserIsTextWhereverItStands() throws Exception {
        Line line = Invented.line(HOSTILE, HOSTILE, Distribution.lognormal(36, 9), new Reject.Chance(0.1));
        SimulationRequest request = new SimulationRequest(
                HOSTILE, List.of(HOSTILE), line, Invented.request(line).run(), UnitSystem.METRIC);
        RunThroughResult result = RunThroughResult.of(
                Invented.study(request),
                List.of(HOSTILE),
                new Provenance("runthrough", Optional.empty(), Optional.of(HOSTILE)));
        String html = html(result);
        assertThat(html).doesNotContain("<script");
        assertThat(texts(parsed(html), "h1")).containsExactly(HOSTILE);
        assertThat(text(result)).contains(HOSTILE);
    }

    @Test
    void noDateStandsInItUnlessGiven() {
        assertThat(html(Invented.result(RISKY))).doesNotContain("class=\"date\"");
        RunThroughResult dated = RunThroughResult.of(
                Invented.study(Invented.request(RISKY)),
                List.of(),
                new Provenance("runthrough", Optional.empty(), Optional.of("3 March 2031")));
        assertThat(html(dated)).contains("<p class=\"date\">3 March 2031</p>");
    }

    @Test
    void sameResultGivesTheSameBytes() {
        assertThat(html(Invented.result(RISKY))).isEqualTo(html(Invented.result(RISKY)));
    }

    @Test
    void staysSmallEnoughToSend() {
        assertThat(html(Invented.result(RISKY))).hasSizeLessThan(2_000_000);
    }

    @Test
    void handCalculationStandsLineByLineWithItsNumbers() throws Exception {
        String text = text(Invented.result(Invented.line(Distribution.constant(25))));
        assertThat(text)
                .contains("D = V · T + V2 / (2 · de) + V2 / (2 · ae)")
                .contains("= 0.75 · 73 + 0.752 / (2 · 0.4) + 0.752 / (2 · 0.3)")
                .contains("56.3906 m")
                .contains("0.4 m/s²");
    }

    @Test
    void cautionsNameTheStandards() throws Exception {
        assertThat(text(Invented.result(Invented.rethread())))
                .contains(
                        "EN 15061",
                        "ISO 12100",
                        "ISO 13849-1",
                        "ISO 14118",
                        "OSHA 29 CFR 1910.147",
                        "licensed practice")
                .contains("stored energy", "strip whip", "shears", "fume", "unexpected start-up");
    }

    @Test
    void lineWithoutChanceClaimsNoStatistics() throws Exception {
        assertThat(text(Invented.result(Invented.line(Distribution.constant(25)))))
                .contains("Nothing in this line is random")
                .doesNotContain("Student");
    }

    @Test
    void unitsAreThoseAskedFor() throws Exception {
        String text = text(Invented.result(Invented.request("x", RISKY, UnitSystem.US_CUSTOMARY, 0.99)));
        assertThat(text).contains("ft/min", "ft/h", "short ton/h", "lb").doesNotContain("m/min,");
    }

    @Test
    void numbersStayWithTheirUnits() {
        assertThat(HtmlWriter.kept("21 coil changes of 41.4 s, 2 m/min, 97 %; 3 minutes"))
                .isEqualTo("21 coil changes of 41.4\u00a0s, 2\u00a0m/min, 97\u00a0%; 3 minutes");
    }

    private static String html(RunThroughResult result) {
        return HtmlWriter.render(VerdictAnswer.of(result));
    }

    private static String text(RunThroughResult result) throws Exception {
        return parsed(html(result)).getDocumentElement().getTextContent().replaceAll("[\\s\u00a0]+", " ");
    }

    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>", ""))));
    }

    private static List<String> texts(Document page, String tag) {
        NodeList nodes = page.getElementsByTagName(tag);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }

    private static List<String> found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        List<String> found = new ArrayList<>();
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
