package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Lines of plain text, at most as wide as a terminal. Text of the user loses its control characters here. */
public final class TextLines {
    /** Columns of a terminal. */
    public static final int WIDTH = 80;

    /** Columns of a table with many of them. */
    public static final int WIDEST = 100;

    /** Begins each line of a name after its first. */
    private static final String CONTINUED = "  ";

    private final List<String> lines = new ArrayList<>();

    /** An empty line. */
    public void gap() {
        lines.add("");
    }

    /** A single line, cut to the width. */
    public void line(String text) {
        line(text, WIDTH);
    }

    /** A row of a table, which may be wider than the rest. */
    public void wideLine(String text) {
        line(text, WIDEST);
    }

    private void line(String text, int width) {
        String plain = plain(text);
        lines.add(plain.length() <= width ? plain : plain.substring(0, width - 3) + "...");
    }

    /** A paragraph, broken between words; lines after the first begin with {@code indent} spaces. */
    public void paragraph(String text, int indent) {
        hang("", text, indent);
    }

    /** A label and, from {@code column} on, its value, broken between words. */
    public void row(String label, String value, int column) {
        hang(label + " ".repeat(Math.max(1, column - label.length())), value, column);
    }

    private void hang(String start, String text, int indent) {
        StringBuilder line = new StringBuilder(start);
        boolean empty = true;
        for (String word : plain(text).split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
            while (line.length() > WIDTH) {
                lines.add(line.substring(0, WIDTH));
                line = new StringBuilder(" ".repeat(indent)).append(line.substring(WIDTH));
            }
        }
        lines.add(line.toString());
    }

    /** A name in lines of up to {@code width}, broken between words or behind the points and hyphens of a path. */
    public static List<String> broken(String name, int width) {
        List<String> parts = new ArrayList<>();
        String rest = name;
        String start = "";
        while (start.length() + rest.length() > width) {
            int end = end(rest, width - start.length());
            parts.add(start + rest.substring(0, end).stripTrailing());
            rest = rest.substring(end).stripLeading();
            start = CONTINUED;
        }
        parts.add(start + rest);
        return parts;
    }

    private static int end(String text, int most) {
        for (int end = most; end > 0; end--) {
            if (text.charAt(end) == ' ' || ".-".indexOf(text.charAt(end - 1)) >= 0) {
                return end;
            }
        }
        return most;
    }

    /** All lines so far as one text, each ended by a line feed. */
    public String text() {
        return lines.stream().map(line -> line.stripTrailing() + "\n").collect(Collectors.joining());
    }

    /** All lines so far. */
    public List<String> lines() {
        return List.copyOf(lines);
    }

    /** Without what a terminal could take for a command. */
    public static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
