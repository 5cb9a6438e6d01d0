package runthrough.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.WholeFile;
import runthrough.report.sweep.Merge;

/** Puts the files of a sweep that several machines shared together again. */
@Command(
        name = "merge",
        description =
                "Puts the files of a sweep that was run in shards together, to the bytes that one machine would have"
                        + " written. Refuses what is of another sweep, damaged, doubled or missing; then nothing is written.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            ExitCode.DONE_MEANS,
            ExitCode.INTERNAL_ERROR_MEANS,
            ExitCode.BAD_INPUT_MEANS,
            ExitCode.CASE_FAILED_MEANS
        },
        footerHeading = "%nExamples:%n",
        footer = {"  runthrough merge part-*.jsonl --out all.jsonl", "  runthrough merge part-*.csv > all.csv"})
final class MergeCommand implements Callable<Integer> {
    /** So many problems are shown. */
    private static final int MOST_SHOWN = 20;

    private final Environment environment;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The files that sweep wrote, in any order.")
    private List<Path> files;

    @Option(names = "--out", paramLabel = "FILE", description = "Write to this file instead of standard output.")
    private @Nullable Path out;

    MergeCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        Optional<WholeFile> file =
                Optional.ofNullable(out).map(named -> new WholeFile(named, "--out").apartFrom(files, environment));
        Merge merge = Merge.of(files.stream().map(environment::path).toList());
        List<String> problems = merge.problems();
        if (!problems.isEmpty()) {
            int more = problems.size() - MOST_SHOWN;
            throw new BadInputException(Stream.concat(
                            problems.stream().limit(MOST_SHOWN),
                            more > 0 ? Stream.of("and " + more + " more problems") : Stream.empty())
                    .toList());
        }
        try {
            if (file.isPresent()) {
                file.get().write(merge::writeTo, environment);
            } else {
                merge.writeTo(environment.out());
                environment.out().flush();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return merge.failed() == 0 ? ExitCode.DONE : ExitCode.CASE_FAILED;
    }
}
