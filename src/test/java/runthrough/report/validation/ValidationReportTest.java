package runthrough.report.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.report.validation.CheckFolderTest.BOOK;
import static runthrough.report.validation.CheckFolderTest.number;

import java.io.StringReader;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class ValidationReportTest {
    private static final Reference MEMORY = new Reference("Another book, <1950>", Standing.FROM_MEMORY);

    private static final List<Recorded> RECORDS = List.of(
            new Recorded.OfNumber(
                    Topic.TWO_MACHINES,
                    "F01",
                    "throughput",
                    MEMORY,
                    "m/s",
                    0.79891515,
                    0.79934321,
                    0.0024,
                    "3 standard errors, at least 0.3 %",
                    0.0005),
            number(Topic.KINEMATICS, "K01", 140.0625, 140.06250000000003),
            new Recorded.OfErrors(
                    Topic.TWO_WAYS,
                    "A1",
                    "level",
                    BOOK,
                    "line",
                    1e-9,
                    "1e-9 of the value",
                    List.of(0.0, 3e-13, 2e-12)));

    private static ValidationReport report(Recorded... more) {
        return new ValidationReport(
                Stream.concat(RECORDS.stream(), Stream.of(more)).toList());
    }

    /** What the page shows: the rest is fonts and styles. */
    private static String body(ValidationReport report) {
        String html = report.html();
        return html.substring(html.indexOf("<body>"));
    }

    @Test
    void textHasCheckSourceStandingExpectedGotToleranceAndError() {
        assertThat(report().text()).contains("""
                          F01   throughput
                                expected 0.7989 m/s, got 0.7993 m/s; off 0.0004, 0.86 standard errors,
                                allowed 0.0024 (3 standard errors, at least 0.3 %) [1]

                          [1] Another book, <1950>. from memory.
                        """).contains("""
                          K01   length
                                expected 140.0625 m, got 140.0625 m; off below 1e-7, allowed 1e-6
                                (digits printed) [1]
                        """);
        assertThat(report().text().replaceAll("\\s+", " "))
                .contains("One difference for each line, 3 of them: 1 are none, the greatest is below 1e-11");
    }

    @Test
    void textEndsWithTheCountsAndTheAnswer() {
        assertThat(report().text())
                .contains("     2  read: the source, or a public copy of it, was read\n")
                .contains("     1  from memory: quoted from memory; the source was not seen\n")
                .doesNotContain("common practice: ")
                .endsWith("All 3 checks agree with their outside values within their tolerances.\n");
    }

    @Test
    void noLineIsWiderThanATerminal() {
        assertThat(report().text().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aCheckThatDoesNotAgreeIsSeenAtOnce() {
        ValidationReport report = report(number(Topic.WORK, "W1", 1, 2));

        assertThat(report.passed()).isFalse();
        assertThat(report.text())
                .contains("DOES NOT AGREE: expected 1 m, got 2 m; off 1, allowed 1e-6")
                .endsWith("1 of 4 checks do not agree with their outside values.\n");
        assertThat(body(report))
                .contains("Does not agree")
                .contains("<tr class=\"fails\">")
                .contains("<td>NO</td>");
        assertThat(body(report())).doesNotContain("<td>NO</td>").contains("All 3 checks agree");
    }

    @Test
    void pageSaysWhatIsNotCheckedYet() {
        for (NotYet later : NotYet.values()) {
            assertThat(body(report())).contains(later.what());
            assertThat(report().text().replaceAll("\\s+", " "))
                    .contains(later.what() + ". Comes with " + later.comesWith() + ".");
        }
    }

    @Test
    void whatIsCheckedIsNoLongerCalledNotYet() {
        ValidationReport all = report(
                number(Topic.FITS, "C2", 1, 1),
                number(Topic.FITS, "M4", 1, 1),
                number(Topic.WORK, "T1", 1, 1),
                number(Topic.ECONOMICS, "E4", 1, 1));

        assertThat(body(report(number(Topic.FITS, "C2", 1, 1))))
                .doesNotContain(NotYet.GOODNESS_OF_FIT.what())
                .contains(NotYet.MAXIMUM_LIKELIHOOD.what());
        assertThat(body(all)).doesNotContain("Not yet");
        assertThat(all.text()).doesNotContain("NOT YET");
    }

    @Test
    void pageSaysWhatIsLeftOutAndWhy() {
        for (LeftOut values : LeftOut.values()) {
            assertThat(body(report()).replace("&#39;", "'")).contains(values.what() + ": " + values.why() + ".");
            assertThat(report().text().replaceAll("\\s+", " ")).contains(values.why());
        }
    }

    @Test
    void pageIsWellFormedAndNeedsNothingFromElsewhere() throws Exception {
        String html = report().html();
        // Everything but the void elements of the head is XML.
        String xml = html.replace("<!DOCTYPE html>", "").replaceAll("<(meta[^>]*|br)>", "<$1/>");
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));

        assertThat(document.getElementsByTagName("figure").getLength()).isEqualTo(2);
        assertThat(body(report()))
                .contains("Another book, &lt;1950&gt;")
                .doesNotContain("<script", "src=", "href=\"http");
    }

    @Test
    void sameRecordsGiveTheSameBytes() {
        assertThat(report().html().equals(report().html())).isTrue();
    }

    @Test
    void lastBitsOfWhatWasGotMakeNoDifference() {
        Recorded.OfNumber one = number(Topic.KINEMATICS, "K01", 140.0625, 140.0625);
        Recorded.OfNumber other = number(Topic.KINEMATICS, "K01", 140.0625, Math.nextUp(140.0625));
        Recorded.OfNumber off = number(Topic.KINEMATICS, "K01", 140.0625, 140.0625 + 3e-7);

        assertThat(body(new ValidationReport(List.of(one)))).isNotEqualTo(body(new ValidationReport(List.of(off))));
        assertThat(body(new ValidationReport(List.of(one)))).isEqualTo(body(new ValidationReport(List.of(other))));
    }
}
