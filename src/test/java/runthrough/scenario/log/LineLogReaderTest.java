package runthrough.scenario.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.linelog.LineLog;

class LineLogReaderTest {
    private static final String HEADER = "time,event,coil\n";

    @TempDir
    private Path folder;

    private LineLogReading read(String text) {
        try {
            Path file = folder.resolve("log.csv");
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
            return LineLogReader.read(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private LineLog log(String text) {
        LineLogReading reading = read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(LineLogReading.Accepted.class);
        return ((LineLogReading.Accepted) reading).log();
    }

    private List<String> warnings(String text) {
        return shown(((LineLogReading.Accepted) read(text)).warnings());
    }

    private List<String> refusal(String text) {
        LineLogReading reading = read(text);
        assertThat(reading).isInstanceOf(LineLogReading.Refused.class);
        return shown(((LineLogReading.Refused) reading).problems());
    }

    private List<String> shown(List<runthrough.scenario.source.Problem> problems) {
        return problems.stream()
                .map(problem -> problem.toString().replace(folder + java.io.File.separator, ""))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "100|160.5|1000",
                "0:01:40|0:02:40.5|0:16:40",
                "23:59:00|0:00:00.5|0:14:00",
                "2026-03-01T23:59:00|2026-03-02T00:00:00.5|2026-03-02T00:14:00",
                "2026-03-01 23:59|2026-03-02 00:00:00.5|2026-03-02 00:14:00",
                "2026-03-01T23:59:00+01:00|2026-03-01T23:00:00.5Z|2026-03-02T00:14:00+01:00"
            })
    void timeIsReadInAnyOfItsForms(String times) {
        List<String> time = Pattern.compile("\\|").splitAsStream(times).toList();

        LineLog log = log(HEADER + time.get(0) + ",tail stopped,A\n" + time.get(1) + ",joint released,A\n" + time.get(2)
                + ",tail stopped,B\n");

        assertThat(log.jointCycleTimes()).containsExactly(60.5);
        assertThat(log.changes().get(0).coilRun()).isEqualTo(839.5);
    }

    @Test
    void columnsInAnyOrderSemicolonsDecimalCommasAndOtherSpellingsDoNoHarm() {
        LineLog log = log("""
                \uFEFFremark;Event;TIME
                x;Tail-Stopped;1,5
                ;joint_released;61,75
                ;LINE STOPPED;70
                ;line running;80
                ;tail stopped;900
                """);

        assertThat(log.jointCycleTimes()).containsExactly(60.25);
        assertThat(log.stops()).hasSize(1);
    }

    @Test
    void theProcesssDowntimeIsLeftOutWhereTheLogSaysIt() {
        LineLog log = log("""
                time,event,reason
                0,tail stopped,
                60,joint released,
                70,line stopped,own
                90,line running,
                100,line stopped,strip
                110,line running,
                900,tail stopped,
                """);

        assertThat(log.saysWhy()).isTrue();
        assertThat(log.stops()).containsExactly(new LineLog.Stop(100, 110));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        50,joint released,A        | log.csv:4:1 time = 50; is earlier than the row before. Mend the row, or put it where it belongs.
        0:02:50,joint released,A   | log.csv:4:1 time = 0:02:50; is written as h:mm:ss, the rows before as seconds. Mend the row, or put it where it belongs.
        soon,joint released,A      | log.csv:4:1 time = soon; is not a time; write seconds, h:mm:ss or a date like 2026-03-01T06:13:05. Mend the row, or put it where it belongs.
        2026-03-02,joint released,A| log.csv:4:1 time = 2026-03-02; is not a time; write seconds, h:mm:ss or a date like 2026-03-01T06:13:05. Mend the row, or put it where it belongs.
        1 500,joint released,A     | log.csv:4:1 time = 1 500; a number has no blanks between its digits. Write 1500.
        150,joint relaesed,A       | log.csv:4:5 event = joint relaesed; is not a known event. Did you mean joint released?
        150,lunch,A                | log.csv:4:5 event = lunch; is not a known event. Known events are: tail stopped, joint released, line stopped, line running.
        150,tail stopped,A         | log.csv:4:5 event = tail stopped; the same came before, on line 3, without joint released between. Add what is missing, or take out the row that is one too many.
        """)
    void aBadRowIsSaidWithItsPlaceAndHowToMendIt(String row, String message) {
        assertThat(refusal(HEADER + "10,line running,\n100,tail stopped,A\n" + row + "\n"))
                .contains(message);
    }

    /** Lines end with LF, with CR and LF, or with CR alone. */
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void placesAreTheSameWhateverEndsALine(String end) {
        String log = "# a\n" + HEADER + "10,line running,\n\n100,\"tail\nstopped\",A\n150,joint relaesed,A\n";

        assertThat(refusal(log.replace("\n", end)))
                .anyMatch(text -> text.contains("log.csv:7:5 event = joint relaesed"));
    }

    /** What follows a row that cannot be read is not wrong for that. */
    @ParameterizedTest
    @ValueSource(strings = {"soon,joint released,A", "150,joint relaesed,A", "150,joint released,A;lunch"})
    void aBadRowMakesNoOtherWrong(String row) {
        String header = row.endsWith("lunch") ? "time,event,coil,reason\n" : HEADER;

        assertThat(refusal(header + "10,line running,\n100,tail stopped,A\n" + row.replace(';', ',')
                        + "\n800,tail stopped,B\n860,joint released,B\n900,tail stopped,C\n"))
                .hasSize(1);
    }

    @Test
    void anEndWithoutItsBeginningIsRefusedOnceTheLogIsUnderWay() {
        assertThat(refusal(HEADER + "0,tail stopped,A\n60,joint released,A\n70,joint released,A\n80,line stopped,\n"
                        + "90,line running,\n95,line running,\n900,tail stopped,B\n"))
                .containsExactly(
                        "log.csv:4:4 event = joint released; no tail stopped comes before it. "
                                + "Add what is missing, or take out the row that is one too many.",
                        "log.csv:7:4 event = line running; no line stopped comes before it. "
                                + "Add what is missing, or take out the row that is one too many.");
    }

    @Test
    void whatTheLogBeginsOrEndsInTheMidstOfIsLeftOutWithAWarning() {
        assertThat(warnings(HEADER
                        + "60,joint released,A\n900,tail stopped,B\n950,joint released,B\n1800,tail stopped,C\n"))
                .containsExactly(
                        "log.csv:2:4 event = joint released; the log begins in the midst of a joint. It is left out.",
                        "log.csv:5:6 tail stopped; the log ends before its joint is released. It is left out.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        time,coil               | the column event is missing. Add it.
        time,event,evnt         | is not a known column. Did you mean event?
        time,event,time         | a second column of this name. Keep only one.
        time,event,colour       | is not a known column. Allowed columns are: time, event, coil, reason, remark.
        """)
    void aBadHeaderIsRefused(String header, String message) {
        assertThat(refusal(header + "\n1,tail stopped,\n"))
                .singleElement()
                .asString()
                .contains(message);
    }

    @Test
    void aLogWithoutAWholeCoilChangeIsRefused() {
        assertThat(refusal(HEADER + "0,tail stopped,A\n60,joint released,A\n"))
                .containsExactly("log.csv: has no whole coil change: a joint, and the tail that stops next. "
                        + "Give a longer log.");
        assertThat(refusal("")).containsExactly("log.csv: is empty. Give a header and one row for each event.");
    }

    @Test
    void aReasonMustBeOneOfTwo() {
        assertThat(refusal("time,event,reason\n0,line stopped,weather\n"))
                .anyMatch(problem -> problem.startsWith("log.csv:2:16 reason = weather; must be strip, own or blank."));
    }
}
