package runthrough.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.InterruptedStudyException;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.report.document.DocumentFiles;
import runthrough.report.document.Paper;
import runthrough.report.document.SampleIndex;
import runthrough.report.verdict.VerdictAnswer;
import runthrough.report.write.FolderWriter;
import runthrough.report.write.HtmlWriter;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;

/** Makes the sample documents that are shipped, or says which of them are out of date. */
@Command(
        name = "samples",
        description =
                "Makes the sample reports and documents of shipped lines and their index page, for those who change the program.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            ExitCode.DONE_MEANS,
            ExitCode.INTERNAL_ERROR_MEANS,
            ExitCode.BAD_INPUT_MEANS,
            "4:with --check: a sample is out of date"
        },
        footerHeading = "%nExamples:%n",
        footer = {"  runthrough samples", "  runthrough samples --check"})
final class SamplesCommand implements Callable<Integer> {
    private static final List<String> LINES = List.of("tube-line", "coating-line", "slitter");

    /** The line of which the README shows a picture. */
    private static final String SHOWN = "tube-line";

    private final Environment environment;

    @Option(
            names = "--from",
            paramLabel = "FOLDER",
            defaultValue = "scenarios",
            description = "Where the shipped scenarios are; ${DEFAULT-VALUE} by default.")
    private Path from;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            defaultValue = "reports",
            description = "Where the samples are; ${DEFAULT-VALUE} by default.")
    private Path out;

    @Option(names = "--check", description = "Write nothing; say which samples are not what this program makes.")
    private boolean check;

    @Spec
    private CommandSpec spec;

    SamplesCommand(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        try {
            return made();
        } catch (CancellationException e) {
            throw new InterruptedStudyException(
                    check ? "nothing was written" : "each file is whole, as it was or made anew");
        }
    }

    private int made() {
        List<Path> stale = new ArrayList<>();
        List<SampleIndex.Sample> samples = new ArrayList<>();
        for (String line : LINES) {
            Scenario asked = Scenario.read(from.resolve(line + ".yaml"), environment);
            DocumentRun.Made made =
                    DocumentRun.of(asked, new RunOverrides()).run(StudyOptions.forReport(), StudyListener.NONE, null);
            stale.addAll(put(out.resolve(line), files(made, asked)));
            if (line.equals(SHOWN)) {
                stale.addAll(put(out, shown(made)));
            }
            samples.add(new SampleIndex.Sample(line, asked.request().title()));
        }
        stale.addAll(put(out, Map.of(SampleIndex.FILE, utf8(SampleIndex.render(samples)))));
        stale.forEach(file -> spec.commandLine()
                .getErr()
                .println(file + " is not what this program makes of the scenario."
                        + " Make the samples anew with: java -jar target/runthrough.jar samples"));
        environment
                .out()
                .println(check ? stale.size() + " samples out of date" : "Samples: " + out.resolve(SampleIndex.FILE));
        return stale.isEmpty() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }

    private static Map<String, byte[]> files(DocumentRun.Made made, Scenario asked) {
        Map<String, byte[]> files = new TreeMap<>(DocumentFiles.of(
                made.document(), Paper.usualWith(asked.request().resultsIn()), ProgramVersion.text()));
        files.put(FolderWriter.HTML, utf8(HtmlWriter.render(VerdictAnswer.of(made.result()))));
        return files;
    }

    /** The picture that the README shows. */
    private static Map<String, byte[]> shown(DocumentRun.Made made) {
        return made.document().report().body().charts().stream()
                .filter(chart -> chart.id().equals("level"))
                .collect(Collectors.toMap(chart -> SHOWN + ".svg", chart -> utf8(chart.svg())));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Puts the files in place, or with {@code --check} gives those that are not there as they should be. */
    private List<Path> put(Path folder, Map<String, byte[]> files) {
        if (check) {
            return files.entrySet().stream()
                    .filter(file -> !isThere(folder.resolve(file.getKey()), file.getValue()))
                    .map(file -> folder.resolve(file.getKey()))
                    .toList();
        }
        try (FolderWriter place = FolderWriter.open(environment.path(folder))) {
            place.complete(files);
        }
        return List.of();
    }

    private boolean isThere(Path file, byte[] content) {
        try {
            return Arrays.equals(Files.readAllBytes(environment.path(file)), content);
        } catch (IOException e) {
            return false;
        }
    }
}
