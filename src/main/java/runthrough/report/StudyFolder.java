package runthrough.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A folder that gets all files of a study's answer or of a document, or none, as {@link ReportFolder} does for the verdict. */
public final class StudyFolder implements AutoCloseable {
    private final Path folder;
    private final Staging staging;

    private StudyFolder(Path folder, Staging staging) {
        this.folder = folder;
        this.staging = staging;
    }

    /**
     * Makes ready to write into {@code folder}, which need not exist: before a long study, so that it is not run in vain.
     *
     * @throws ReportFolderException when it cannot be written to
     */
    public static StudyFolder open(Path folder) {
        try {
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw new FileAlreadyExistsException(folder.toString());
            }
            Path absolute = folder.toAbsolutePath().normalize();
            return new StudyFolder(absolute, Staging.beside(absolute));
        } catch (IOException e) {
            throw ReportFolder.failed(folder, e);
        }
    }

    /**
     * Writes all files and puts them in place.
     *
     * @throws ReportFolderException when that fails; then nothing has changed in the folder
     */
    public void complete(StudyAnswer answer) {
        Map<String, String> files = new TreeMap<>(answer.csv());
        files.put(ReportFolder.HTML, StudyPage.render(answer));
        files.put(answer.study() + ".json", StudyJson.render(answer));
        completeTexts(files);
    }

    /**
     * The same with the answer of a time-study sheet.
     *
     * @throws ReportFolderException when that fails; then nothing has changed in the folder
     */
    public void complete(TimesAnswer answer) {
        completeTexts(answer.files());
    }

    private void completeTexts(Map<String, String> texts) {
        Map<String, byte[]> bytes = new TreeMap<>();
        texts.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        complete(bytes);
    }

    /**
     * Writes {@code files}, contents by name, and puts them in place.
     *
     * @throws ReportFolderException when that fails; then nothing has changed in the folder
     */
    public void complete(Map<String, byte[]> files) {
        List<String> names = files.keySet().stream().sorted().toList();
        try {
            for (String name : names) {
                Files.write(staging.path().resolve(name), files.getOrDefault(name, new byte[0]));
            }
            staging.moveInto(folder, names);
        } catch (IOException e) {
            throw ReportFolder.failed(folder, e);
        }
    }

    /** Drops whatever has not been put in place. */
    @Override
    public void close() {
        staging.drop();
    }
}
