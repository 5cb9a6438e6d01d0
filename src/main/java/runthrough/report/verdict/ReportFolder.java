package runthrough.report.verdict;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import runthrough.plant.SimulationRequest;
import runthrough.report.write.FolderWriter;
import runthrough.simulation.Replication;
import runthrough.study.StudyListener;
import runthrough.study.cause.Reason;

/**
 * The folder of a verdict's report: the rows of its large CSV files are written while the study runs, so that nothing is kept.
 *
 * <pre>{@code
 * try (ReportFolder folder = ReportFolder.open(path, request)) {
 *     StudyResult study = new RunThroughStudy(request).run(StudyOptions.forReport(), folder.listener());
 *     folder.complete(RunThroughResult.of(study, warnings, provenance));
 * }
 * }</pre>
 */
public final class ReportFolder implements AutoCloseable {
    private final FolderWriter folder;
    private final CsvFiles csv;

    private ReportFolder(FolderWriter folder, CsvFiles csv) {
        this.folder = folder;
        this.csv = csv;
    }

    /**
     * Makes ready to write a report into {@code folder}, which need not exist.
     *
     * @throws runthrough.report.write.ReportFolderException when it cannot be written to
     */
    public static ReportFolder open(Path folder, SimulationRequest request) {
        return open(FolderWriter.open(folder), request);
    }

    static ReportFolder open(FolderWriter folder, SimulationRequest request) {
        try {
            return new ReportFolder(folder, new CsvFiles(request, folder));
        } catch (IOException e) {
            folder.close();
            throw folder.failed(e);
        }
    }

    /**
     * Writes the rows of the CSV files while the study runs.
     *
     * <p>Its {@link StudyListener#seen} gives what throws {@link runthrough.report.write.ReportFolderException} when it cannot.
     */
    public StudyListener listener() {
        return new StudyListener() {
            @Override
            public Runnable seen(Replication replication, List<Optional<Reason>> reasons) {
                Runnable rows = csv.seen(replication, reasons);
                return () -> {
                    try {
                        rows.run();
                    } catch (UncheckedIOException e) {
                        throw folder.failed(e);
                    }
                };
            }
        };
    }

    /**
     * Writes the rest and puts all files in place.
     *
     * @return the report for people
     * @throws runthrough.report.write.ReportFolderException when that fails; then nothing has changed in the folder
     */
    public Path complete(RunThroughResult result) {
        try {
            csv.close();
            CoilFiles.write(result, folder);
        } catch (IOException | UncheckedIOException e) {
            throw folder.failed(e);
        }
        return folder.complete(VerdictAnswer.of(result));
    }

    /** Drops whatever has not been put in place. */
    @Override
    public void close() {
        try {
            csv.close();
        } catch (IOException e) {
            // What could not be written is dropped with the rest.
        }
        folder.close();
    }
}
