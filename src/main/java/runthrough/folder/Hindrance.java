package runthrough.folder;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why nothing can be put at a place, in words that follow its name; nothing where only the disk can tell. */
public final class Hindrance {
    private static final String MUST_BE_A_FILE = ", and must be a file";
    private static final String MUST_BE_A_FOLDER = ", and must be a folder";

    /** How Java says it of a file that it opens by its older way: the name, and the reason in brackets. */
    private static final Pattern NAMED = Pattern.compile("(?s).* \\((.*)\\)");

    private static final int MOST_LINKS = 40;

    private Hindrance() {}

    /** What hindered whoever tried, without the name of the place. */
    public static String words(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return "no permission";
        }
        if (failure instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        String message = String.valueOf(failure.getMessage());
        return failure instanceof FileNotFoundException ? NAMED.matcher(message).replaceFirst("$1") : message;
    }

    /** Why no file can be put at {@code place}. */
    public static Optional<String> toFile(Path place) {
        return (Files.isRegularFile(place) && !isOpenStream(place)) || !Files.exists(place)
                ? ofLink(place).or(() -> above(place))
                : Optional.of("it is a " + (Files.isDirectory(place) ? "folder" : "device") + MUST_BE_A_FILE);
    }

    /** Whether {@code place} is a link by which the system names what a program has open, such as its standard output, maybe a file. */
    private static boolean isOpenStream(Path place) {
        Path end = place.toAbsolutePath();
        for (int links = 0; links < MOST_LINKS && Files.isSymbolicLink(end); links++) {
            if (end.startsWith("/dev") || end.startsWith("/proc")) {
                return true;
            }
            try {
                end = end.resolveSibling(Files.readSymbolicLink(end));
            } catch (IOException e) {
                return false;
            }
        }
        return false;
    }

    /** Why no folder can be put at {@code place}. */
    public static Optional<String> toFolder(Path place) {
        return Files.isDirectory(place) || !Files.exists(place)
                ? ofLink(place).or(() -> above(place))
                : Optional.of("it is a " + (Files.isRegularFile(place) ? "file" : "device") + MUST_BE_A_FOLDER);
    }

    /** That {@code place} is a link to what is not there. */
    public static Optional<String> ofLink(Path place) {
        if (!Files.isSymbolicLink(place) || Files.exists(place)) {
            return Optional.empty();
        }
        Path end = place;
        try {
            for (int links = 0; links < MOST_LINKS && Files.isSymbolicLink(end); links++) {
                end = end.resolveSibling(Files.readSymbolicLink(end));
            }
        } catch (IOException e) {
            return Optional.of("it is a link that cannot be followed");
        }
        return Optional.of("it is a link that leads " + (Files.isSymbolicLink(end) ? "back to itself" : "nowhere"));
    }

    /** A file, or a link to what is not there, in the place of one of the folders that lead to {@code place}. */
    private static Optional<String> above(Path place) {
        Path parent = place.getParent();
        while (parent != null && !Files.exists(parent)) {
            Optional<String> astray = ofLink(parent);
            if (astray.isPresent()) {
                return Optional.of(astray.get().replaceFirst("it", Matcher.quoteReplacement(parent.toString())));
            }
            parent = parent.getParent();
        }
        return Optional.ofNullable(parent)
                .filter(there -> !Files.isDirectory(there))
                .map(there -> there + " is " + (Files.isRegularFile(there) ? "a file" : "a device") + MUST_BE_A_FOLDER);
    }
}
