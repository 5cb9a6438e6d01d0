package runthrough.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import runthrough.plant.SimulationRequest;
import runthrough.report.verdict.ReportFolder;
import runthrough.report.write.FolderWriter;
import runthrough.study.StudyOptions;

/** The tables of a report with the scenario that gives them, in one file. */
final class TablesZip {
    /** Any fixed instant, so that the same line gives the same bytes. */
    private static final long NO_TIME = 315_532_800_000L;

    private final Path folder;
    private final Answers answers;

    TablesZip(Path folder, Answers answers) {
        this.folder = folder;
        this.answers = answers;
    }

    byte[] of(PageScenario draft, String text) throws IOException {
        Path place = Files.createTempDirectory(folder, "tables");
        try {
            SimulationRequest request = draft.asked();
            try (ReportFolder report = ReportFolder.open(place, request)) {
                report.complete(answers.run(request, draft, StudyOptions.forReport(), report.listener()));
            }
            Files.writeString(place.resolve("scenario.yaml"), text);
            return zipped(place);
        } finally {
            try (Stream<Path> files = Files.walk(place)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }

    private static byte[] zipped(Path place) throws IOException {
        List<Path> files;
        try (Stream<Path> found = Files.list(place)) {
            files = found.filter(file -> !file.getFileName().toString().equals(FolderWriter.HTML))
                    .sorted()
                    .toList();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Path file : files) {
                ZipEntry entry = new ZipEntry(file.getFileName().toString());
                entry.setTime(NO_TIME);
                zip.putNextEntry(entry);
                Files.copy(file, zip);
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
