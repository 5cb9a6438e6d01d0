package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.chart.verdict.DrawnRuns.LINE;
import static runthrough.chart.verdict.DrawnRuns.chart;
import static runthrough.chart.verdict.DrawnRuns.parsed;
import static runthrough.chart.verdict.DrawnRuns.study;
import static runthrough.chart.verdict.DrawnRuns.texts;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import runthrough.chart.Chart;
import runthrough.chart.Palette;
import runthrough.plant.CoilChange;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;

/** What the charts of a run have in common. */
class ChartsTest {

    @Test
    void studyOfALineWithAccumulatorHasAllCharts() {
        assertThat(Charts.of(study(LINE, UnitSystem.METRIC)))
                .extracting(Chart::id)
                .containsExactly("causes", "level", "close-up", "joint-cycle-time", "margin", "drawn", "run");
    }

    @Test
    void studyWithoutAccumulatorHasNoChartsOfStrip() {
        assertThat(Charts.of(study(rethread(), UnitSystem.METRIC)))
                .extracting(Chart::id)
                .containsExactly("level", "close-up", "joint-cycle-time");
    }

    @Test
    void everyPictureIsWellFormedWithWholeSizesAndAViewBox() throws Exception {
        for (Chart chart : Charts.of(study(LINE, UnitSystem.METRIC))) {
            Document svg = parsed(chart.svg());
            String width = svg.getDocumentElement().getAttribute("width");
            String height = svg.getDocumentElement().getAttribute("height");
            assertThat(width).matches("\\d+");
            assertThat(height).matches("\\d+");
            assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 " + width + " " + height);
        }
    }

    @Test
    void everyPictureNamesAndDescribesItself() throws Exception {
        for (Chart chart : Charts.of(study(LINE, UnitSystem.METRIC))) {
            Document svg = parsed(chart.svg());
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                    .isEqualTo(chart.title());
            assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                    .isEqualTo(chart.alternative())
                    .contains(chart.reading());
        }
    }

    @Test
    void identifiersAreUniqueInADocumentWithAllCharts() {
        List<String> ids = new ArrayList<>();
        for (Chart chart : Charts.of(study(LINE, UnitSystem.METRIC))) {
            Matcher matcher = Pattern.compile(" id=\"([^\"]*)\"").matcher(chart.svg());
            while (matcher.find()) {
                ids.add(matcher.group(1));
            }
        }
        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void coloursAreOpaque() {
        for (Chart chart : Charts.of(study(LINE, UnitSystem.METRIC))) {
            assertThat(chart.svg().replace("-opacity:1;", "")).as(chart.id()).doesNotContain("-opacity:");
        }
    }

    @Test
    void picturesHoldNothingFromElsewhere() {
        for (Chart chart : Charts.of(study(LINE, UnitSystem.METRIC))) {
            assertThat(chart.svg().replace("http://www.w3.org/", ""))
                    .as(chart.id())
                    .doesNotContain("http")
                    .doesNotContain("<image")
                    .doesNotContain("<script");
        }
    }

    @Test
    void sameStudyGivesTheSameBytes() {
        List<String> once = Charts.of(study(LINE, UnitSystem.METRIC)).stream()
                .map(Chart::svg)
                .toList();
        List<String> again = Charts.of(study(LINE, UnitSystem.METRIC)).stream()
                .map(Chart::svg)
                .toList();
        assertThat(again).isEqualTo(once);
    }

    @Test
    void picturesStaySmall() {
        int total = Charts.of(study(LINE, UnitSystem.METRIC)).stream()
                .mapToInt(chart -> chart.svg().length())
                .sum();
        assertThat(total).isLessThan(600_000);
    }

    @Test
    void axesAreInTheUnitsAskedFor() throws Exception {
        assertThat(texts(chart(study(LINE, UnitSystem.US_CUSTOMARY), "level"))).contains("level, ft", "speed, ft/min");
        assertThat(texts(chart(study(LINE, UnitSystem.METRIC), "level"))).contains("level, m", "speed, m/min");
    }

    @Test
    void hostileNameOfAnElementIsText() throws Exception {
        Chart closeUp = chart(study(named("<script>alert(1)</script>"), UnitSystem.METRIC), "close-up");
        assertThat(closeUp.svg()).doesNotContain("<script");
        assertThat(texts(closeUp)).contains("<script>alert(1)</script>");
    }

    @Test
    void longNameOfAnElementIsCutWithAnEllipsis() throws Exception {
        Chart closeUp = chart(study(named("a name that goes on and on and on and on"), UnitSystem.METRIC), "close-up");
        assertThat(texts(closeUp)).contains("a name that goes on and o…");
    }

    @Test
    void pictureIsDrawnAsPixelsToo() {
        BufferedImage image =
                chart(study(LINE, UnitSystem.METRIC), "level").picture().pixels(2);
        assertThat(image.getWidth()).isEqualTo(1800);
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x += 3) {
            for (int y = 0; y < image.getHeight(); y += 3) {
                colours.add(image.getRGB(x, y) & 0xFFFFFF);
            }
        }
        assertThat(colours).contains(Palette.LEVEL.getRGB() & 0xFFFFFF, 0xFFFFFF);
    }

    private static Line rethread() {
        CoilChange change =
                new CoilChange(2, LINE.change().prepare(), List.of(), List.of(), new CoilChange.Reject.Never());
        return new Line(
                LINE.coilSource(),
                LINE.entry(),
                LINE.process(),
                change,
                new Practice.Rethread(Distribution.triangular(300, 400, 900)),
                LINE.bending());
    }

    private static Line named(String name) {
        WorkElement element = new WorkElement(
                name,
                new WorkElement.WorkTime.Timed(Distribution.constant(60)),
                new WorkElement.Occurrence.Always(),
                true);
        CoilChange change = new CoilChange(
                2, LINE.change().prepare(), List.of(element), LINE.change().join(), new CoilChange.Reject.Never());
        return new Line(LINE.coilSource(), LINE.entry(), LINE.process(), change, LINE.practice(), LINE.bending());
    }
}
