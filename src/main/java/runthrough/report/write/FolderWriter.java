package runthrough.report.write;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import runthrough.folder.Hindrance;
import runthrough.report.Answer;

/**
 * A folder that gets all files of an answer or of a document, or none. They are written into a folder beside it, and moved
 * when all are whole; a file of the same name from an earlier report is replaced, any other file is left alone. Whatever fails,
 * what was there before is there again.
 *
 * <p>Every method throws {@link ReportFolderException} when it cannot write; then nothing has changed in the folder.
 */
public final class FolderWriter implements Outlet, AutoCloseable {
    /** The report for people. */
    public static final String HTML = "report.html";

    private static final String JSON = ".json";

    private final Path folder;
    private final Staging staging;
    private final Wrapper wrapper;
    private final Set<String> names = new TreeSet<>();

    private FolderWriter(Path folder, Staging staging, Wrapper wrapper) {
        this.folder = folder;
        this.staging = staging;
        this.wrapper = wrapper;
    }

    /** What a stream into a file is led through; tests put failing ones there. */
    @FunctionalInterface
    public interface Wrapper {
        OutputStream wrap(OutputStream file) throws IOException;
    }

    /** Makes ready to write into {@code folder}, which need not exist: before a long study, so that it is not run in vain. */
    public static FolderWriter open(Path folder) {
        return open(folder, file -> file);
    }

    /** The same with all streams led through {@code wrapper}. */
    public static FolderWriter open(Path folder, Wrapper wrapper) {
        try {
            Optional<String> hindrance = Hindrance.toFolder(folder);
            if (hindrance.isPresent()) {
                throw new IOException(hindrance.get());
            }
            Path absolute = folder.toAbsolutePath().normalize();
            Staging.refuseFolder(absolute.resolve(HTML));
            return new FolderWriter(absolute, Staging.beside(absolute), wrapper);
        } catch (IOException e) {
            throw failed(folder, e);
        }
    }

    /** A stream into a new file of this name, to be written while a study runs and closed before {@link #complete}. */
    @Override
    public OutputStream stream(String name) throws IOException {
        names.add(name);
        return wrapper.wrap(Files.newOutputStream(staging.path().resolve(name)));
    }

    /**
     * Writes all files of {@code answer} and puts them in place, with those that were streamed before.
     *
     * @return the report for people
     */
    public Path complete(Answer answer) {
        return complete(() -> {
            Map<String, byte[]> files = new TreeMap<>();
            texts(answer).forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
            return files;
        });
    }

    /**
     * The same for files that {@code made} draws: on a thread that nobody interrupts, for Java breaks a font that it reads on one
     * that is, and forgets the interrupt.
     */
    public Path complete(Supplier<Map<String, byte[]>> made) {
        return complete(Beside.begin(made).result());
    }

    /** Where {@link #complete(Answer)} puts the files of {@code answer}. */
    public List<Path> places(Answer answer) {
        return Stream.of(
                        answer.body().files().keySet().stream(),
                        answer.tables().stream().flatMap(table -> table.file().stream()),
                        Stream.of(HTML, answer.study() + JSON))
                .flatMap(files -> files)
                .map(folder::resolve)
                .toList();
    }

    private static Map<String, String> texts(Answer answer) {
        // Beside the pages, of which the pictures take long.
        Beside<String> json = Beside.begin(() -> JsonWriter.render(answer));
        Map<String, String> files = new TreeMap<>(answer.body().files());
        answer.tables().forEach(table -> table.file().ifPresent(name -> files.put(name, CsvWriter.render(table))));
        files.put(HTML, HtmlWriter.render(answer));
        files.put(answer.study() + JSON, json.result());
        return files;
    }

    /** Writes {@code files}, contents by name, and puts them in place, with those that were streamed before. */
    public Path complete(Map<String, byte[]> files) {
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                try (OutputStream out = stream(file.getKey())) {
                    out.write(file.getValue());
                }
            }
            staging.moveInto(folder, names.stream().toList());
            return folder.resolve(HTML);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Drops whatever has not been put in place. */
    @Override
    public void close() {
        staging.drop();
    }

    /** What to say to the user of a {@code failure} to write into this folder. */
    public ReportFolderException failed(Exception failure) {
        return failed(folder, failure);
    }

    private static ReportFolderException failed(Path folder, Exception failure) {
        Throwable cause = failure;
        if (failure instanceof UncheckedIOException && failure.getCause() != null) {
            cause = failure.getCause();
        }
        return new ReportFolderException(
                folder + " cannot take the report; " + reason(cause)
                        + " Nothing was written there. Choose another folder.",
                cause);
    }

    private static String reason(Throwable cause) {
        if (cause instanceof AccessDeniedException denied) {
            return "no permission to write to " + denied.getFile() + ".";
        } else if (cause instanceof FileSystemException system) {
            return system.getFile() + ": "
                    + Optional.ofNullable(system.getReason()).orElse("it cannot be made") + ".";
        }
        return Optional.ofNullable(cause.getMessage()).orElse(cause.toString()) + ".";
    }
}
