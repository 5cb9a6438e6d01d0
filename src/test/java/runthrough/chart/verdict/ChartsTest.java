package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.plant.builder.LineBuilder;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.Replication;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;
import runthrough.study.Verdict;
import runthrough.study.statistics.Sample;

class ChartsTest {
    private static final Line LINE = HandMadeRun.line();

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
    void levelChartSaysHowLowTheLevelFellAndWhatWasLeft() {
        // Strip drawn: 0.75 * 60 + 0.75^2 / 0.8 + 0.75^2 / 0.6 = 46.64 m, so 25.36 m are left; stop level 2 + 0.75^2 /
        // 0.5 =
        // 3.125 m.
        Chart chart = LevelChart.of(context(), HandMadeRun.of(50, 60, 55));
        assertThat(chart.reading())
                .isEqualTo(
                        "At coil change 2 the level falls to 25.4 m, 22.2 m above the level at which the process must stop.");
    }

    @Test
    void levelChartOfAStarvedRunSaysHowFarBelowTheStopLevel() {
        // Starved at 3.125 m while the entry stands: the process stops after 0.75^2 / 0.5 = 1.125 m more.
        Chart chart = LevelChart.of(context(), HandMadeRun.of(60, 97));
        assertThat(chart.reading())
                .isEqualTo(
                        "At coil change 2 the level falls to 2 m, 1.13 m below the level at which the process must stop (3.13 m).");
    }

    @Test
    void levelChartShowsTheNeighboursOfTheWorstChange() throws Exception {
        Chart chart = LevelChart.of(context(), HandMadeRun.of(50, 50, 50, 50, 50, 80, 50, 50, 50));
        assertThat(chart.title()).endsWith("coil changes 4 to 8");
        assertThat(texts(chart)).contains("4", "5", "6", "7", "8");
    }

    @Test
    void closeUpIsOfTheCostliestChange() {
        Replication run = HandMadeRun.of(50, 97, 60);
        assertThat(CloseUpChart.of(context(), run).title()).isEqualTo("Coil change 2 in close-up, the costliest");
        assertThat(CloseUpChart.of(context(), HandMadeRun.of(50, 80, 60)).title())
                .isEqualTo("Coil change 2 in close-up, the one closest to the stop level");
    }

    @Test
    void closeUpSaysWhatWasWaitedFor() throws Exception {
        // T0 at 1999 s, T1 at 2001 s; the weld takes two people, and one is away until 2400 s.
        Line line = new LineBuilder()
                .coil("strip", 0.002, 0.25, 8000, Distribution.constant(1000))
                .entry(2, 0.5, 0.5)
                .capacity(600)
                .process(1, 0.5, 0.5)
                .join(new WorkElement(
                                "weld",
                                new WorkElement.WorkTime.Timed(Distribution.constant(20)),
                                new WorkElement.Occurrence.Always(),
                                true)
                        .withPeople(2))
                .shift("day", 1500, 2)
                .shift("night", 1000, 2, new Shifts.Break(450, 450, 1))
                .describe();
        Chart chart = chart(study(line, UnitSystem.METRIC), "close-up");
        assertThat(chart.reading())
                .startsWith("The strip stands at the joiner for 6:59 min, 6:39 min of it waiting for people;");
        assertThat(texts(chart)).contains("waiting for people").doesNotContain("waiting for preparation");
    }

    /** Of a long replication only the beginning is traced; its worst coil change may come long after. */
    @Test
    void ofALongReplicationTheWorstChangeThatWasTracedIsShown() {
        WorkElement once = new WorkElement(
                "a slow day",
                new WorkElement.WorkTime.Timed(Distribution.constant(300)),
                new WorkElement.Occurrence.Every(2500),
                true);
        CoilChange change = new CoilChange(
                2,
                List.of(),
                List.of(),
                java.util.stream.Stream.concat(LINE.change().join().stream(), java.util.stream.Stream.of(once))
                        .toList(),
                new CoilChange.Reject.Never());
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(2600), 0, 1, 7, 0.99);
        StudyResult study = new RunThroughStudy(
                        new SimulationRequest("invented", List.of(), LINE.with(change), plan, UnitSystem.METRIC))
                .run(StudyOptions.forReport(), StudyListener.NONE);

        Chart closeUp = Charts.of(study).stream()
                .filter(chart -> chart.id().equals("close-up"))
                .findFirst()
                .orElseThrow();

        assertThat(closeUp.title()).doesNotContain("Coil change 2500 ");
    }

    @Test
    void closeUpSaysHowLongTheJointTookAndTheRefill() {
        // Refill as drawn: to V + u = 1.5 m/s in 5 s, hold, and back to 0.75 m/s in 1.875 s.
        Replication run = HandMadeRun.of(60);
        double refill = run.changes().get(0).refillTime();
        assertThat(CloseUpChart.of(context(), run).reading())
                .isEqualTo("The strip stands at the joiner for 60 s; the accumulator is full again "
                        + Numbers.text(refill, 3) + " s after release.");
    }

    @Test
    void jointCycleTimeChartSaysWhatTheStorageBridges() {
        // Of 0, 1 .. 100 s the median is 50 s, the 95th percentile 95 s; 20 of 101 are longer than 80 s.
        double[] times = IntStream.rangeClosed(0, 100).asDoubleStream().toArray();
        Chart chart = JointCycleTimeChart.of(context(), Sample.of(times), OptionalDouble.of(80));
        assertThat(chart.reading())
                .isEqualTo(
                        "Half of the joints take at most 50 s, 95 % at most 1:35 min; a full accumulator bridges 80 s, and "
                                + "19.8 % take longer.");
    }

    @Test
    void withCoilsOfDifferentSpeedsTheLimitIsThatOfTheFastest() {
        // At 0.75 m/s (72 - 2)/0.75 - 0.75 (1/0.8 + 1/0.6 + 1/0.5) = 89.65 s; at 1 m/s 70 - 4.917 = 65.08 s.
        Coil coil = LINE.coils().get(0);
        Coil fast =
                new Coil("fast", coil.strip(), coil.size()).withCrops(0.4, 0.3).withProcessSpeed(1);
        Line mixed = new Line(
                new CoilSource.Schedule(List.of(coil, fast)),
                LINE.entry(),
                LINE.process(),
                LINE.change(),
                LINE.practice(),
                LINE.bending());
        assertThat(chart(study(mixed, UnitSystem.METRIC), "joint-cycle-time").reading())
                .contains("; a full accumulator bridges 65.1 s at the fastest process speed, and ");
        assertThat(chart(study(LINE, UnitSystem.METRIC), "joint-cycle-time").reading())
                .contains("; a full accumulator bridges 89.6 s, and ");
    }

    @Test
    void jointCycleTimeChartOfEqualTimesSaysSo() {
        Chart chart = JointCycleTimeChart.of(context(), Sample.of(95, 95), OptionalDouble.of(90.5));
        assertThat(chart.reading())
                .isEqualTo(
                        "Each of the joints takes 1:35 min; a full accumulator bridges 1:31 min, and all take longer.");
    }

    @Test
    void jointCycleTimeChartWithoutRoomForAnyJointSaysSo() {
        Chart chart = JointCycleTimeChart.of(context(), Sample.of(95, 95), OptionalDouble.of(-3));
        assertThat(chart.reading()).endsWith("; at this speed the accumulator bridges no joint at all.");
    }

    @Test
    void marginChartMarksTheRegionOfRunningOut() throws Exception {
        Chart chart = MarginChart.of(context(), Sample.of(-2, 1, 5, 7, 8, 9, 10, 12), new Verdict.Changes(8, 7, 0, 1));
        assertThat(chart.reading())
                .isEqualTo("The least margin is -2 m; 12.5 % of the coil changes stopped the process.");
        assertThat(texts(chart))
                .contains(
                        "stop level",
                        "too little strip at the rated speed",
                        "margin to the stop level, the process kept at its rated speed, m");
        assertThat(chart.svg()).contains(rgb(Palette.SHORT)).contains(rgb(Palette.RUN_OUT));
    }

    @Test
    void marginChartOfASafeRunHasNothingInTheColourOfRunningOut() {
        Chart chart = MarginChart.of(context(), Sample.of(61, 62, 63, 64, 65), new Verdict.Changes(5, 5, 0, 0));
        assertThat(chart.reading())
                .isEqualTo("The least margin is 61 m; no coil change slowed or stopped the process.");
        assertThat(chart.svg()).doesNotContain(rgb(Palette.SHORT)).doesNotContain(rgb(Palette.RUN_OUT));
    }

    @Test
    void drawnChartHoldsTheMostDrawnAgainstWhatAFullAccumulatorGives() {
        // 46.64 m as above; 72 - 3.125 = 68.875 m may be drawn.
        Chart chart = DrawnChart.of(context(), HandMadeRun.of(50, 60, 55).changes());
        assertThat(chart.reading())
                .isEqualTo(
                        "The most strip drawn at a coil change is 46.6 m; a full accumulator gives 68.9 m before the process "
                                + "must stop.");
    }

    @Test
    void runChartCountsWhatDidNotRunThrough() {
        Chart chart = RunChart.of(context(), HandMadeRun.of(50, 97, 60, 99).changes());
        assertThat(chart.reading())
                .isEqualTo(
                        "2 of 4 coil changes do not run through; the level comes closest to the stop level at coil change 2,"
                                + " 1.13 m below it.");
    }

    @Test
    void marginChartOfAProcessThatSlows_namesTheMarginToSlowing_andWhatReallyHappened() throws Exception {
        // Rule MARGIN-2. Below zero the process slows; only one of the two that did came to a stop.
        Line slows = new Line(
                LINE.coilSource(),
                LINE.entry(),
                LINE.process().withSlowing(Optional.of(new ProcessSection.Slowing(0.4, 20, 30))),
                LINE.change(),
                LINE.practice(),
                Optional.empty());
        ChartContext context = new ChartContext(new ChartStyle(), slows, ChartUnits.of(UnitSystem.METRIC), 1);
        Chart chart = MarginChart.of(context, Sample.of(-40, -3, 5, 9), new Verdict.Changes(4, 2, 1, 1));
        assertThat(chart.reading())
                .isEqualTo(
                        "The least margin is -40 m; 25 % of the coil changes stopped the process, 25 % only slowed it.");
        assertThat(texts(chart)).contains("slowing level", "margin to slowing, the process kept at its rated speed, m");
    }

    @Test
    void runChartPutsManyChangesIntoOneBarWithoutLosingTheLowest() {
        double[] joints = new double[1000];
        Arrays.fill(joints, 50);
        joints[777] = 85;
        Replication run = HandMadeRun.of(joints);
        Chart chart = RunChart.of(context(), run.changes());
        XYIntervalSeriesCollection bars =
                (XYIntervalSeriesCollection) chart.picture().chart().getXYPlot().getDataset(1);
        assertThat(bars.getItemCount(0)).isLessThanOrEqualTo(RunChart.MOST_BARS);
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bars.getItemCount(0); i++) {
            lowest = Math.min(lowest, bars.getStartYValue(0, i));
        }
        // More than have room stand lowest first, as heights above the stop level.
        assertThat(lowest).isEqualTo(run.changes().get(777).lowestAboveStopLevel());
        assertThat(bars.getStartYValue(0, 0)).isEqualTo(lowest);
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

    private static ChartContext context() {
        return new ChartContext(new ChartStyle(), LINE, ChartUnits.of(UnitSystem.METRIC), 1);
    }

    private static StudyResult study(Line line, UnitSystem system) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(12), 0, 3, 7, 0.99);
        return new RunThroughStudy(new SimulationRequest("invented", List.of(), line, plan, system))
                .run(StudyOptions.forReport(), StudyListener.NONE);
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

    private static Chart chart(StudyResult result, String id) {
        return Charts.of(result).stream()
                .filter(chart -> chart.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Chart chart) throws Exception {
        NodeList nodes = parsed(chart.svg()).getElementsByTagName("text");
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent().strip());
        }
        return texts;
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static String rgb(Color colour) {
        return "rgb(" + colour.getRed() + "," + colour.getGreen() + "," + colour.getBlue() + ")";
    }
}
