package runthrough.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** What {@code pom.xml} says is published: the packages of the Javadoc jar, and the files of the engine's jar. */
public final class PublishedPackages {
    private static final Pattern DOCUMENTED =
            Pattern.compile("<sourceFileInclude>([^<]+)/\\*\\.java</sourceFileInclude>");
    private static final Pattern ENGINE = Pattern.compile("(?s)<id>engine-jar</id>.*?</execution>");
    private static final Pattern IN_JAR = Pattern.compile("<include>([^<]+)</include>");

    private PublishedPackages() {}

    /** Names of the published packages. */
    public static List<String> names() {
        return DOCUMENTED
                .matcher(pom())
                .results()
                .map(found -> found.group(1).replace('/', '.'))
                .toList();
    }

    /** Patterns of the files of the engine's jar, below the folder of classes. */
    static List<String> filesOfTheEngine() {
        String execution =
                ENGINE.matcher(pom()).results().findFirst().orElseThrow().group();
        return IN_JAR.matcher(execution).results().map(found -> found.group(1)).toList();
    }

    private static String pom() {
        try {
            return Files.readString(Path.of("pom.xml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
