package runthrough.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import runthrough.folder.TemporaryFolder;
import runthrough.plant.SimulationRequest;
import runthrough.report.verdict.ReportFolder;
import runthrough.report.write.FolderWriter;
import runthrough.study.StudyOptions;

/** The tables of a report with the scenario that gives them, in one file. */
final class TablesZip {
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
            TemporaryFolder.delete(place);
        }
    }

    private static byte[] zipped(Path place) throws IOException {
        SortedMap<String, byte[]> tables = new TreeMap<>();
        try (Stream<Path> files = Files.list(place)) {
            for (Path file : files.toList()) {
                tables.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        tables.remove(FolderWriter.HTML);
        return Zip.of(tables);
    }
}
