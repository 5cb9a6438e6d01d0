package runthrough.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import runthrough.cli.terminal.BadInputException;
import runthrough.report.Fingerprint;
import runthrough.scenario.source.Problem;
import runthrough.scenario.times.TimeSheetReader;
import runthrough.scenario.times.TimeSheetReading;
import runthrough.timestudy.TimeSheet;

/**
 * A time-study sheet that can be used, and what to warn of.
 *
 * @param sheet as read
 * @param warnings one line each
 * @param fingerprint SHA-256 of the file's bytes, in hexadecimal
 */
record MeasuredTimes(TimeSheet sheet, List<String> warnings, String fingerprint) {

    MeasuredTimes {
        warnings = List.copyOf(warnings);
    }

    /**
     * Reads {@code file}.
     *
     * @param name as the user gave it
     * @throws BadInputException with everything that is wrong with it
     */
    static MeasuredTimes read(Path file, String name) {
        TimeSheetReading reading = TimeSheetReader.read(file, name);
        if (reading instanceof TimeSheetReading.Accepted accepted) {
            return new MeasuredTimes(
                    accepted.sheet(), texts(accepted.warnings()).toList(), fingerprint(file, name));
        }
        TimeSheetReading.Refused refused = (TimeSheetReading.Refused) reading;
        List<String> lines = new ArrayList<>(texts(refused.problems()).toList());
        if (refused.further() > 0) {
            lines.add("and " + refused.further() + " more problems");
        }
        texts(refused.warnings()).map(Scenario::asWarning).forEach(lines::add);
        throw new BadInputException(lines);
    }

    private static Stream<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::toString);
    }

    private static String fingerprint(Path file, String name) {
        try {
            return Fingerprint.of(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new BadInputException(name + ": cannot be read (" + e.getMessage() + "). Check the disk.");
        }
    }
}
