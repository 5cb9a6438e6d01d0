package runthrough.report;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.Replication;
import runthrough.study.StudyListener;

/**
 * A folder that gets all files of a report, or none. They are written into a folder beside it, and moved when all are whole;
 * a file of the same name from an earlier report is replaced, any other file is left alone. Whatever fails, what was there
 * before is there again.
 *
 * <pre>{@code
 * try (ReportFolder folder = ReportFolder.open(path, request)) {
 *     StudyResult study = new RunThroughStudy(request).run(StudyOptions.forReport(), folder.listener());
 *     folder.complete(RunThroughResult.of(study, warnings, provenance));
 * }
 * }</pre>
 */
public final class ReportFolder implements AutoCloseable {
    /** The report for people. */
    public static final String HTML = "report.html";
    /** The verdict for machines. */
    public static final String JSON = "verdict.json";

    private static final List<String> FILES = List.of(
            HTML,
            JSON,
            CsvFiles.CHANGES,
            CsvFiles.ELEMENTS,
            CsvFiles.REPLICATIONS,
            CoilFiles.PRODUCTS,
            CoilFiles.COILS);

    private final Path folder;
    private final Staging staging;
    private final Outlet outlet;
    private final CsvFiles csv;

    private ReportFolder(Path folder, SimulationRequest request, Wrapper wrapper) throws IOException {
        this.folder = folder;
        this.staging = Staging.beside(folder);
        this.outlet = name -> wrapper.wrap(Files.newOutputStream(staging.path().resolve(name)));
        try {
            this.csv = new CsvFiles(request, outlet);
        } catch (IOException | RuntimeException e) {
            staging.drop();
            throw e;
        }
    }

    /** What a stream into a file is led through; tests put failing ones there. */
    interface Wrapper {
        OutputStream wrap(OutputStream file) throws IOException;
    }

    /**
     * Makes ready to write a report into {@code folder}, which need not exist.
     *
     * @throws ReportFolderException when it cannot be written to
     */
    public static ReportFolder open(Path folder, SimulationRequest request) {
        return open(folder, request, file -> file);
    }

    static ReportFolder open(Path folder, SimulationRequest request, Wrapper wrapper) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw failed(folder, new FileAlreadyExistsException(folder.toString()));
        }
        try {
            return new ReportFolder(folder.toAbsolutePath().normalize(), request, wrapper);
        } catch (IOException e) {
            throw failed(folder, e);
        }
    }

    /**
     * Writes the rows of the CSV files while the study runs.
     *
     * <p>Its {@link StudyListener#replication} throws {@link ReportFolderException} when it cannot.
     */
    public StudyListener listener() {
        return new StudyListener() {
            @Override
            public void replication(Replication replication) {
                try {
                    csv.replication(replication);
                } catch (UncheckedIOException e) {
                    throw failed(folder, e);
                }
            }
        };
    }

    /**
     * Writes the rest and puts all files in place.
     *
     * @return the report for people
     * @throws ReportFolderException when that fails; then nothing has changed in the folder
     */
    public Path complete(RunThroughResult result) {
        try {
            csv.close();
            write(HTML, HtmlReport.render(result));
            write(JSON, JsonReport.render(result));
            CoilFiles.write(result, outlet);
            staging.moveInto(folder, FILES);
            return folder.resolve(HTML);
        } catch (IOException | UncheckedIOException e) {
            throw failed(folder, e);
        }
    }

    private void write(String name, String text) throws IOException {
        try (OutputStream out = outlet.open(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Drops whatever has not been put in place. */
    @Override
    public void close() {
        try {
            csv.close();
        } catch (IOException e) {
            // What could not be written is dropped with the rest.
        }
        staging.drop();
    }

    /** What to tell the user of {@code failure} to write into {@code folder}. */
    static ReportFolderException failed(Path folder, Exception failure) {
        Throwable cause = failure;
        if (failure instanceof UncheckedIOException && failure.getCause() != null) {
            cause = failure.getCause();
        }
        return new ReportFolderException(
                folder + " cannot take the report; " + reason(cause) + " Nothing was written. Choose another folder.",
                cause);
    }

    private static String reason(Throwable cause) {
        if (cause instanceof FileAlreadyExistsException) {
            return "it is a file, and must be a folder.";
        } else if (cause instanceof AccessDeniedException denied) {
            return "no permission to write to " + denied.getFile() + ".";
        } else if (cause instanceof FileSystemException system && system.getReason() != null) {
            return system.getFile() + ": " + system.getReason() + ".";
        }
        return Optional.ofNullable(cause.getMessage()).orElse(cause.toString()) + ".";
    }
}
