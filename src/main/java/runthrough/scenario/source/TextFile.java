package runthrough.scenario.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A text file read with care: an ordinary file of bounded size in UTF-8, with or without a byte order mark.
 *
 * @param name as the user gave it, for messages
 * @param text without byte order mark
 */
public record TextFile(String name, String text) {

    /** As many as the system follows from one to the next. */
    private static final int MOST_LINKS = 40;

    /** What some programs put before a text. */
    static final char BYTE_ORDER_MARK = '\uFEFF';

    /** What the bytes of a zip file begin with. */
    private static final String ARCHIVE = "504b0304";

    /**
     * Reads {@code path}, or adds to {@code problems} why not.
     *
     * @param name as the user gave it, for messages
     * @param what the file is, such as "scenario"
     * @param largest size that is read (bytes)
     */
    public static Optional<TextFile> read(Path path, String name, String what, int largest, Problems problems) {
        if (!canBeRead(path, name, what, largest, problems)) {
            return Optional.empty();
        }
        try {
            return of(firstBytes(path, largest + 1), name, what, largest, problems);
        } catch (AccessDeniedException e) {
            problems.error(Place.whole(name), "", "", "may not be read", "Ask for permission to read it.");
        } catch (IOException e) {
            tell(name, unreadable(e), problems);
        }
        return Optional.empty();
    }

    /**
     * The same from bytes that are there already.
     *
     * @param what they are, such as "scenario"
     * @param largest how many there may be
     */
    public static Optional<TextFile> of(byte[] bytes, String name, String what, int largest, Problems problems) {
        if (bytes.length > largest) {
            tell(name, tooLarge(what, largest), problems);
            return Optional.empty();
        }
        return decode(bytes, name, problems);
    }

    /**
     * Whether {@code path} is an ordinary file of at most {@code largest} bytes; if not, {@code problems} takes it.
     *
     * @param name as the user gave it, for messages
     * @param what the file is, such as "scenario"
     */
    static boolean canBeRead(Path path, String name, String what, long largest, Problems problems) {
        Optional<Hindrance> found = hindrance(path, what, largest);
        found.ifPresent(hindrance -> tell(name, hindrance, problems));
        return found.isEmpty();
    }

    private static void tell(String name, Hindrance hindrance, Problems problems) {
        problems.error(Place.whole(name), "", "", hindrance.rule(), hindrance.remedy());
    }

    /**
     * Why a file cannot be read.
     *
     * @param rule what is wrong with it
     * @param remedy how to mend it
     */
    public record Hindrance(String rule, String remedy) {}

    /**
     * Why {@code path} is no ordinary file of at most {@code largest} bytes that can be read; empty when it is one.
     *
     * @param what the file is, such as "scenario"
     */
    public static Optional<Hindrance> hindrance(Path path, String what, long largest) {
        String itself = "Give the " + what + " file itself.";
        try {
            if (!Files.exists(path)) {
                return Optional.of(isHidden(path) ? unasked() : missing(path, what));
            } else if (Files.isDirectory(path)) {
                return Optional.of(new Hindrance("is a directory", itself));
            } else if (!Files.isRegularFile(path)) {
                return Optional.of(new Hindrance("is not an ordinary file", itself));
            } else if (!Files.isReadable(path)) {
                return Optional.of(unasked());
            } else if (Files.size(path) > largest) {
                return Optional.of(tooLarge(what, largest));
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(unreadable(e));
        }
    }

    private static Hindrance unasked() {
        return new Hindrance("may not be read", "Ask for permission to read it.");
    }

    /** Whether {@code path} lies in a folder that may not be entered, so that nobody knows whether it exists. */
    private static boolean isHidden(Path path) {
        try {
            Files.readAttributes(path, BasicFileAttributes.class);
            return false;
        } catch (AccessDeniedException e) {
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static Hindrance missing(Path path, String what) throws IOException {
        if (!Files.isSymbolicLink(path)) {
            return new Hindrance("there is no such file", remedyForMissing(path, what));
        }
        Path end = path;
        for (int links = 0; links < MOST_LINKS && Files.isSymbolicLink(end); links++) {
            end = end.resolveSibling(Files.readSymbolicLink(end));
        }
        return new Hindrance(
                "is a link that leads " + (Files.isSymbolicLink(end) ? "back to itself" : "nowhere"),
                "Give the " + what + " file itself.");
    }

    private static Hindrance tooLarge(String what, long largest) {
        return new Hindrance(
                "is larger than a " + what + " may be, " + largest / 1_000_000 + " MB",
                "Give another file, or leave out what is not needed.");
    }

    private static Hindrance unreadable(IOException e) {
        return new Hindrance("cannot be read (" + e.getMessage() + ")", "Check the disk or the connection.");
    }

    /** The file may grow, or have no honest size; what is read is bounded all the same. */
    private static byte[] firstBytes(Path path, int count) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(count);
        }
    }

    private static Optional<TextFile> decode(byte[] bytes, String name, Problems problems) {
        Optional<Hindrance> other = noText(bytes);
        if (other.isPresent()) {
            problems.error(
                    new Place(name, 1, 1),
                    "",
                    "",
                    other.get().rule(),
                    other.get().remedy());
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), out, true);
        out.flip();
        String text = out.toString();
        if (result.isError()) {
            problems.error(
                    placeAfter(text, name),
                    "",
                    "",
                    "the text is not UTF-8; it looks like the older encoding of a spreadsheet (Windows-1252, Latin-1)",
                    "Save the file with the encoding UTF-8.");
            return Optional.empty();
        }
        String plain = withoutMark(text);
        int strange = firstStrange(plain);
        if (strange >= 0) {
            problems.error(
                    placeAfter(plain.substring(0, strange), name),
                    "",
                    "",
                    strange(plain.charAt(strange)),
                    "Give a plain text file in UTF-8.");
            return Optional.empty();
        }
        return Optional.of(new TextFile(name, plain));
    }

    /** {@code text} without a byte order mark before it. */
    public static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    /** What a file that begins with {@code bytes} is instead of a text in UTF-8, where that can be seen. */
    static Optional<Hindrance> noText(byte[] bytes) {
        String start = HexFormat.of().formatHex(bytes, 0, Math.min(bytes.length, ARCHIVE.length() / 2));
        if (start.equals(ARCHIVE)) {
            return Optional.of(new Hindrance(
                    "is a workbook, or another archive, and not a text", "Save its sheet as CSV in UTF-8."));
        }
        return start.startsWith("fffe") || start.startsWith("feff")
                ? Optional.of(
                        new Hindrance("the text is not UTF-8 but UTF-16", "Save the file with the encoding UTF-8."))
                : Optional.empty();
    }

    /** What is wrong with {@code text} where it holds a letter that cannot be shown, as by an escape in YAML. */
    static Optional<String> strange(String text) {
        int at = firstStrange(text);
        return at < 0 ? Optional.empty() : Optional.of(strange(text.charAt(at)));
    }

    static String strange(char c) {
        String what = Character.isSurrogate(c) ? "half of a letter" : "a control character";
        return String.format("holds %s (U+%04X)", what, (int) c);
    }

    private static int firstStrange(String text) {
        return IntStream.range(0, text.length())
                .filter(i -> isStrange(text.charAt(i)) || isHalf(text, i))
                .findFirst()
                .orElse(-1);
    }

    /** Whether {@code c} is a control character that is no layout, or none at all. */
    static boolean isStrange(char c) {
        return (Character.isISOControl(c) && !isLayout(c)) || c >= 0xFFFE;
    }

    /** Whether nothing of {@code text} can be seen: it is made of blanks, of any width, layout and controls. */
    public static boolean isBlank(String text) {
        return text.codePoints()
                .allMatch(c -> Character.isWhitespace(c)
                        || Character.isSpaceChar(c)
                        || Character.isISOControl(c)
                        || Character.getType(c) == Character.FORMAT);
    }

    /** Whether {@code text} stands in one line, without tabs. */
    public static boolean isOneLine(String text) {
        return text.chars().noneMatch(TextFile::isLayout);
    }

    private static boolean isLayout(int c) {
        return c == '\n' || c == '\r' || c == '\t';
    }

    /** Whether there is half a letter at {@code i}, without its other half. */
    private static boolean isHalf(String text, int i) {
        return Character.isSurrogate(text.charAt(i))
                && !(i + 1 < text.length() && Character.isSurrogatePair(text.charAt(i), text.charAt(i + 1)))
                && !(i > 0 && Character.isSurrogatePair(text.charAt(i - 1), text.charAt(i)));
    }

    /** The place right behind {@code before}. */
    private static Place placeAfter(String before, String name) {
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        return new Place(name, line, before.length() - before.lastIndexOf('\n'));
    }

    private static String remedyForMissing(Path path, String what) {
        Path folder = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
        if (!Files.isDirectory(folder)) {
            return "There is no folder " + folder.getFileName() + " either.";
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
            return Nearest.to(String.valueOf(path.getFileName()), names)
                    .map(nearest -> "Did you mean " + nearest + "?")
                    .orElse("Give the name of a " + what + " file.");
        } catch (IOException e) {
            return "Give the name of a " + what + " file.";
        }
    }
}
