package runthrough.web;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.folder.TemporaryFolder;
import runthrough.folder.TemporaryFolderException;
import runthrough.report.Fingerprint;
import runthrough.scenario.source.Problem;
import runthrough.web.job.Refusal;

/**
 * Where the files lie that scenarios on the page may name: those that come with the program, and beside them those that a request
 * brings. What requests bring is kept a while under its contents, so that the next request with the same finds it.
 */
final class PageFolder implements AutoCloseable {
    /** Sets of files that are kept, each as large as a request may be. */
    private static final int MOST = 32;

    private static final String NAME = "runthrough-page";

    private final Map<String, String> ours;
    private final Set<String> kept = new LinkedHashSet<>();
    private TemporaryFolder root = TemporaryFolder.named(NAME);
    private boolean isClosed;

    /**
     * A new folder, in which {@code ours} lie beside all others: the text of each by its name. What servers that were killed have
     * left is removed.
     */
    PageFolder(Map<String, String> ours) {
        this.ours = Map.copyOf(ours);
    }

    /** For files that are needed while something is made. Systems clear their temporary folders: what is gone is made again. */
    synchronized Path root() {
        if (isClosed) {
            // As by a request that goes on while the program ends: nobody would remove what is made again.
            throw new Refusal(503, "The program is ending.");
        }
        if (!root.isThere()) {
            root.close();
            kept.clear();
            root = TemporaryFolder.named(NAME);
        }
        return root.path();
    }

    /** That of the files that come with the program, and no others. */
    synchronized Path shipped() {
        return whole(root().resolve("shipped"), Map.of());
    }

    /** That of those and {@code files}. */
    synchronized Path with(List<PageRequest.Sent> files) {
        if (files.isEmpty()) {
            return shipped();
        }
        Map<String, String> texts = new LinkedHashMap<>();
        files.forEach(file -> texts.put(file.named(), file.content()));
        String contents = Fingerprint.of(texts.entrySet().stream()
                .map(file -> file.getKey() + "\n" + file.getValue())
                .collect(Collectors.joining("\n\n")));
        Path found = whole(root().resolve(contents), texts);
        // It is the newest now.
        kept.remove(contents);
        kept.add(contents);
        if (kept.size() > MOST) {
            String oldest = kept.iterator().next();
            kept.remove(oldest);
            TemporaryFolder.delete(root().resolve(oldest));
        }
        return found;
    }

    /** {@code place} with our files and {@code texts} by their names; made where anything of it is missing, or not at all. */
    private Path whole(Path place, Map<String, String> texts) {
        if (Stream.concat(ours.keySet().stream(), texts.keySet().stream())
                .allMatch(name -> Files.exists(place.resolve(name)))) {
            return place;
        }
        TemporaryFolder.delete(place);
        try {
            Files.createDirectory(place);
            write(ours, place);
            write(texts, place);
            return place;
        } catch (CharacterCodingException e) {
            TemporaryFolder.delete(place);
            throw new Refusal(422, "A file holds half of a letter (a single surrogate). Save it anew, in UTF-8.");
        } catch (IOException e) {
            TemporaryFolder.delete(place);
            throw new TemporaryFolderException(e);
        }
    }

    private static void write(Map<String, String> texts, Path place) throws IOException {
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Files.writeString(place.resolve(text.getKey()), text.getValue());
        }
    }

    /** {@code problem} of a file in the folder of {@code file}, as the commands say it, without the folder. */
    static String said(Problem problem, Path file) {
        return problem.toString().replace(file.resolveSibling("") + "/", "");
    }

    /** All {@code problems} and how many there are {@code further}, a line each. */
    static String said(List<Problem> problems, int further, Path file) {
        return Stream.concat(
                        problems.stream().map(problem -> said(problem, file)),
                        further > 0 ? Stream.of("and " + further + " more problems") : Stream.of())
                .collect(Collectors.joining("\n"));
    }

    @Override
    public synchronized void close() {
        isClosed = true;
        root.close();
    }
}
