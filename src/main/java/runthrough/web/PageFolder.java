package runthrough.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    private final Path root;
    private final Path shipped;
    private final Map<String, Path> kept = new LinkedHashMap<>(16, 0.75f, true);

    private PageFolder(Path root, Path shipped) {
        this.root = root;
        this.shipped = shipped;
    }

    /** A new folder below {@code root}, which goes with it. */
    static PageFolder in(Path root) throws IOException {
        return new PageFolder(root, Files.createDirectory(root.resolve("shipped")));
    }

    /** That of the files that come with the program, and no others. */
    Path shipped() {
        return shipped;
    }

    /** For files that are needed while something is made. */
    Path root() {
        return root;
    }

    /** That of those and {@code files}. */
    synchronized Path with(List<PageRequest.Sent> files) {
        if (files.isEmpty()) {
            return shipped;
        }
        String contents = Fingerprint.of(
                files.stream().map(file -> file.named() + "\n" + file.content()).collect(Collectors.joining("\n\n")));
        Path found = kept.computeIfAbsent(contents, digits -> made(root.resolve(digits), files));
        if (kept.size() > MOST) {
            String oldest = kept.keySet().iterator().next();
            Path gone = kept.remove(oldest);
            if (gone != null) {
                delete(gone);
            }
        }
        return found;
    }

    private Path made(Path place, List<PageRequest.Sent> files) {
        try (Stream<Path> ours = Files.list(shipped)) {
            Files.createDirectory(place);
            for (Path file : ours.toList()) {
                Files.copy(file, place.resolve(file.getFileName()));
            }
            for (PageRequest.Sent file : files) {
                Files.writeString(place.resolve(file.named()), file.content());
            }
            return place;
        } catch (CharacterCodingException e) {
            throw new Refusal(422, "A file holds half of a letter (a single surrogate). Save it anew, in UTF-8.");
        } catch (IOException e) {
            throw new UncheckedIOException("a file of the page cannot be kept", e);
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
    public void close() {
        delete(root);
    }

    private static void delete(Path place) {
        try (Stream<Path> files = Files.walk(place)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            place.toFile().deleteOnExit();
        }
    }
}
