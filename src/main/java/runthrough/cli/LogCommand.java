package runthrough.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.option.WholeNumber;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.linelog.LineLog;
import runthrough.plant.SimulationRequest;
import runthrough.report.log.LogAnswer;
import runthrough.scenario.log.LineLogReader;
import runthrough.scenario.log.LineLogReading;
import runthrough.scenario.source.Problem;
import runthrough.study.logged.LogStudy;

/** Does the model fit the line? */
@Command(
        name = "log",
        description = {
            "Reads the line's own log of events and shows whether the model fits the line: the share of coil changes"
                    + " run through, stops, joint cycle times and coil runs of the log, against simulated logs of the same length.",
            "",
            "The log is a CSV file with a header and the columns time, event and, if there is one, coil. Events are:",
            "  tail stopped     the tail of a coil has come to rest in the joiner",
            "  joint released   the joint is made and let go",
            "  line stopped     the process stands",
            "  line running     the process moves again",
            "Times are seconds, h:mm:ss, or dates like 2026-03-01T06:13:05, in order; a clock that steps back by more"
                    + " than half a day has passed midnight. A column reason with strip or own marks process downtime (own), which"
                    + " is then left out. A coil change that the log holds in part only is left out."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {ExitCode.DONE_MEANS, ExitCode.INTERNAL_ERROR_MEANS, ExitCode.BAD_INPUT_MEANS},
        footerHeading = "%nExamples:%n",
        footer = {
            "  runthrough log scenarios/tube-line.yaml scenarios/tube-line-log.csv",
            "  runthrough log my-line.yaml events.csv --logged-joint-cycle-times"
        })
final class LogCommand extends StudyCommand {
    private final Environment environment;

    @Parameters(index = "1", paramLabel = "LOG", description = "The log of the line, a CSV file.")
    private Path log;

    @Option(
            names = "--logged-joint-cycle-times",
            description =
                    "Give the model the joint cycle times of the log in place of its own work, to test the rest of it.")
    private boolean loggedJointCycleTimes;

    @Option(
            names = "--logs",
            paramLabel = "N",
            converter = Logs.class,
            description = "How many logs to simulate; by default 100 to 1000, fewer for a longer log.")
    private @Nullable Long logs;

    LogCommand(Environment environment) {
        super(environment, "log");
        this.environment = environment;
    }

    @Override
    Study study(Scenario asked, double target) {
        SimulationRequest request = asked.request();
        LineLogReading reading = LineLogReader.read(environment.path(log));
        if (reading instanceof LineLogReading.Refused refused) {
            List<String> lines = new ArrayList<>(
                    refused.problems().stream().map(Problem::toString).toList());
            if (refused.further() > 0) {
                lines.add("and " + refused.further() + " more problems");
            }
            throw new BadInputException(lines);
        }
        LineLogReading.Accepted accepted = (LineLogReading.Accepted) reading;
        List<String> ofLog = accepted.warnings().stream().map(Problem::toString).toList();
        ofLog.stream().map(Scenario::asWarning).forEach(environment.err()::println);
        LineLog line = accepted.log();
        int count = logs == null ? LogStudy.usualLogs(line) : Math.toIntExact(logs);
        LogStudy study = new LogStudy(request, line, loggedJointCycleTimes, count);
        return (threads, listener, warnings, provenance) -> LogAnswer.of(
                study.run(threads, listener),
                Stream.concat(warnings.stream(), ofLog.stream()).toList(),
                provenance);
    }

    static final class Logs extends WholeNumber {
        Logs() {
            super(LogStudy.FEWEST_LOGS, 100_000);
        }
    }
}
