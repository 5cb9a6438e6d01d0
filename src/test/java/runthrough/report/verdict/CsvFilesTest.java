package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.report.write.CsvWriter;
import runthrough.report.write.Outlet;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;
import runthrough.study.margin.StripMargin;

class CsvFilesTest {
    private static final Line LINE = Invented.line(Distribution.lognormal(30, 6));

    private final Map<String, ByteArrayOutputStream> files = new TreeMap<>();

    @Test
    void everyCoilChangeOfEveryReplicationHasARow() throws IOException {
        StudyResult study = run(Invented.request(LINE));
        List<CSVRecord> rows = rows("coil-changes.csv");
        assertThat(rows).hasSize(200);
        ChangeRecord third = study.first().changes().get(2);
        CSVRecord row = rows.get(2);
        assertThat(row.get("replication")).isEqualTo("1");
        assertThat(row.get("coil change")).isEqualTo("3");
        assertThat(row.get("next coil")).isEqualTo("2.0 x 240");
        assertThat(Double.parseDouble(row.get("joint cycle time (s)"))).isEqualTo(third.jointCycleTime());
        assertThat(Double.parseDouble(row.get("margin (m)"))).isEqualTo(new StripMargin(LINE).metres(third));
        assertThat(row.get("outcome")).isEqualTo(third.lowestAboveStopLevel() < 0 ? "stopped" : "ran through");
    }

    @Test
    void lengthsAreInTheUnitsThatTheHeaderNames() throws IOException {
        StudyResult study = run(Invented.request("x", LINE, UnitSystem.US_CUSTOMARY, 0.99));
        double feet = Double.parseDouble(rows("coil-changes.csv").get(0).get("level at start (ft)"));
        assertThat(feet * 0.3048).isCloseTo(study.first().changes().get(0).levelAtStart(), within(1e-9));
        assertThat(rows("replications.csv").get(0).isMapped("processed mass (lb)"))
                .isTrue();
    }

    @Test
    void everyWorkElementHasARowWithItsName() throws IOException {
        StudyResult study = run(Invented.request(LINE));
        List<CSVRecord> rows = rows("work-elements.csv");
        WorkRecord first = study.first().work().get(0);
        assertThat(rows).hasSizeGreaterThan(5 * 40 * 3);
        assertThat(rows.get(0).get("work")).isEqualTo("prepare");
        assertThat(rows.get(0).get("element")).isEqualTo("load and open");
        assertThat(Double.parseDouble(rows.get(0).get("time (s)"))).isEqualTo(first.end() - first.start());
        assertThat(rows).extracting(row -> row.get("element")).contains("shear tail", "fit up", "weld and inspect");
    }

    @Test
    void aPreparationThatWasPutDownSaysWhen_andItsTimeIsThatOfTheWork() throws IOException {
        // Rule REPORT-1. One person, two uncoilers, 1 m/s, ramps 0.5 m/s2: T0 of coil 1 at 999, T1 at 1001, weld until
        // 1101 s. Its
        // tail leaves the uncoiler, 10 m before the joiner, at 990 s: 300 s of loading begin there, are put down from
        // 1001 to
        // 1101 s and end at 1390 s.
        run(Invented.request(new runthrough.plant.builder.LineBuilder()
                .coil("strip", 0.002, 0.25, 8000, Distribution.constant(1000))
                .entry(2, 0.5, 0.5)
                .uncoilers(2)
                .uncoilerPath(10)
                .capacity(600)
                .process(1, 0.5, 0.5)
                .crew(1)
                .prepare("load", Distribution.constant(300))
                .join("weld", Distribution.constant(100))
                .describe()));
        CSVRecord row = rows("work-elements.csv").stream()
                .filter(work -> work.get("element").equals("load")
                        && work.get("coil change").equals("2"))
                .findFirst()
                .orElseThrow();
        assertThat(Double.parseDouble(row.get("start (s)"))).isCloseTo(990, within(1e-9));
        assertThat(Double.parseDouble(row.get("put down at (s)"))).isCloseTo(1001, within(1e-9));
        assertThat(Double.parseDouble(row.get("taken up again at (s)"))).isCloseTo(1101, within(1e-9));
        assertThat(Double.parseDouble(row.get("put down (s)"))).isCloseTo(100, within(1e-9));
        assertThat(Double.parseDouble(row.get("time (s)"))).isCloseTo(300, within(1e-9));
        assertThat(Double.parseDouble(row.get("end (s)"))).isCloseTo(1390, within(1e-9));
    }

    @Test
    void whereTheProcessSlowsTheThreeMarginsStandApart() throws IOException {
        // Rules MARGIN-1, MARGIN-2, MARGIN-3. The first joint takes 20 s: 600 - 20 - 2 less the stop level of 1 m is
        // 577 m; to the 100 m at which it slows it is 478 m. It does not slow, so that 577 m are left without a stop.
        run(Invented.request(Invented.inShifts()));
        CSVRecord row = rows("coil-changes.csv").get(0);
        assertThat(Double.parseDouble(row.get("margin (m)"))).isCloseTo(577, within(1e-9));
        assertThat(Double.parseDouble(row.get("margin to slowing (m)"))).isCloseTo(478, within(1e-9));
        assertThat(Double.parseDouble(row.get("margin without a stop (m)"))).isCloseTo(577, within(1e-9));
        assertThat(row.get("shift name")).isEqualTo("day");
    }

    @Test
    void everyReplicationHasARowOfItsTotals() throws IOException {
        StudyResult study = run(Invented.request(LINE));
        List<CSVRecord> rows = rows("replications.csv");
        assertThat(rows).hasSize(5);
        assertThat(Double.parseDouble(rows.get(3).get("processed (m)")))
                .isEqualTo(study.totals().get(3).processedMetres());
        assertThat(rows.get(3).get("ran through"))
                .isEqualTo(Integer.toString(study.totals().get(3).ranThrough()));
    }

    @Test
    void whatDoesNotApplyIsEmpty() throws IOException {
        run(Invented.request(Invented.rethread()));
        CSVRecord row = rows("coil-changes.csv").get(0);
        assertThat(row.get("margin (m)")).isEmpty();
        assertThat(row.get("refill time (s)")).isEmpty();
        assertThat(rows("work-elements.csv"))
                .extracting(work -> work.get("element"))
                .contains("rethread");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=cmd()", "+1", "-1", "@sum", "\tx", "\rx"})
    void textThatLooksLikeAFormulaIsText(String name) throws IOException {
        run(Invented.request(Invented.line(name, name, Distribution.lognormal(30, 6), new Reject.Never())));
        assertThat(rows("coil-changes.csv").get(0).get("next coil")).isEqualTo("'" + name);
        assertThat(rows("work-elements.csv"))
                .extracting(row -> row.get("element"))
                .contains("'" + name);
    }

    @Test
    void negativeNumbersStayNumbers() {
        assertThat(CsvWriter.number(-1.25)).isEqualTo("-1.25");
        assertThat(CsvWriter.number(Double.NaN)).isEmpty();
        assertThat(CsvWriter.number(1e-7)).isEqualTo("0.0000001");
        assertThat(CsvWriter.text("plain")).isEqualTo("plain");
        assertThat(CsvWriter.text("")).isEmpty();
    }

    private StudyResult run(SimulationRequest request) throws IOException {
        Outlet outlet = name -> {
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            files.put(name, file);
            return file;
        };
        try (CsvFiles csv = new CsvFiles(request, outlet)) {
            return new RunThroughStudy(request).run(StudyOptions.forReport(), csv);
        }
    }

    private List<CSVRecord> rows(String name) throws IOException {
        String text = files.getOrDefault(name, new ByteArrayOutputStream()).toString(StandardCharsets.UTF_8);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            return parser.getRecords();
        }
    }
}
