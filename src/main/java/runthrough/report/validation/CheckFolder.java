package runthrough.report.validation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder of records, one file for each class of tests, one line of JSON for each check. */
public final class CheckFolder {
    private static final String ENDING = ".jsonl";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final Path folder;

    public CheckFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes what the tests of one class recorded, whatever order they ran in, in place of what it recorded before.
     *
     * @param testClass name of the class
     */
    public void write(String testClass, List<Recorded> records) throws IOException {
        StringBuilder lines = new StringBuilder();
        for (Recorded recorded : inOrder(records)) {
            lines.append(MAPPER.writeValueAsString(recorded)).append('\n');
        }
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(testClass + ENDING), lines, StandardCharsets.UTF_8);
    }

    /**
     * All records, in the order of the page.
     *
     * @throws CheckFolderException when there are none, or one cannot be read
     */
    public List<Recorded> read() {
        List<Recorded> records = new ArrayList<>();
        for (Path file : files()) {
            try {
                List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
                for (int i = 0; i < lines.size(); i++) {
                    records.add(line(file, i + 1, lines.get(i)));
                }
            } catch (IOException e) {
                throw new CheckFolderException(file + " cannot be read: " + e.getMessage(), e);
            }
        }
        return inOrder(records);
    }

    private static Recorded line(Path file, int number, String line) {
        try {
            return MAPPER.readValue(line, Recorded.class);
        } catch (JsonProcessingException e) {
            throw new CheckFolderException(
                    file + ":" + number + " is not the record of a check: " + e.getOriginalMessage()
                            + ". Delete the folder and run mvn verify.",
                    e);
        }
    }

    private List<Path> files() {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files = all.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
            if (files.isEmpty()) {
                throw new CheckFolderException(none("holds no records of checks"), null);
            }
            return files;
        } catch (NoSuchFileException e) {
            throw new CheckFolderException(none("does not exist"), e);
        } catch (IOException e) {
            throw new CheckFolderException(folder + " cannot be read: " + e.getMessage(), e);
        }
    }

    private String none(String what) {
        return folder + " " + what
                + ". The tests write it: run mvn verify in the sources first, or name another folder.";
    }

    private static List<Recorded> inOrder(List<Recorded> records) {
        return records.stream()
                .sorted(Comparator.comparing(Recorded::topic)
                        .thenComparing(recorded -> CheckId.of(recorded.id()))
                        .thenComparing(Recorded::what))
                .toList();
    }
}
