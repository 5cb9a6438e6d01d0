package runthrough.report.sweep;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import runthrough.study.sweep.CaseResult;

/** How the cases of a sweep are written. */
public sealed interface SweepLines permits JsonSweep, CsvSweep {

    /** What every file begins with, in ASCII. */
    String start();

    /** The first line of a file; empty where there is none but those of the cases. */
    Optional<String> header();

    /** The line of a case, without line end. */
    String line(CaseResult result);

    /** What {@code line} says of itself; empty where it is damaged. */
    Optional<Stamp> read(String line);

    /**
     * Which case a line is of.
     *
     * @param number of the case, from 1
     * @param of how many cases there are
     * @param sweep what the sweep is known by
     * @param isFailed whether the case could not be run
     */
    record Stamp(int number, int of, String sweep, boolean isFailed) {

        /**
         * What {@code line} says of itself; empty where it is damaged.
         *
         * @param start finds number, how many cases, sweep, and what stands for no failure or begins one
         * @param end finds what is summed, and its check sum
         * @param noFailure what stands for none
         */
        static Optional<Stamp> read(String line, Pattern start, Pattern end, String noFailure) {
            Matcher first = start.matcher(line);
            Matcher last = end.matcher(line);
            return last.matches() && first.matches() && checkSum(last.group(1)).equals(last.group(2))
                    ? Optional.of(new Stamp(
                            Integer.parseInt(first.group(1)),
                            Integer.parseInt(first.group(2)),
                            first.group(3),
                            !first.group(4).equals(noFailure)))
                    : Optional.empty();
        }
    }

    /** CRC-32 of {@code text} in UTF-8, in eight hexadecimal digits. */
    static String checkSum(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return String.format("%08x", sum.getValue());
    }
}
