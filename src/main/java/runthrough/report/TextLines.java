package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Lines of plain text, at most as wide as a terminal. Text of the user loses its control characters here. */
public final class TextLines {
    /** Columns of a terminal. */
    public static final int WIDTH = 80;

    /** Blanks between a label and its value, at least. */
    private static final int GAP = 2;

    /** Begins each line of a name after its first. */
    private static final String CONTINUED = "  ";

    private final List<String> lines = new ArrayList<>();

    /** An empty line. */
    public void gap() {
        lines.add("");
    }

    /** A single line, cut to the width. */
    public void line(String text) {
        String plain = plain(text);
        lines.add(plain.length() <= WIDTH ? plain : plain.substring(0, WIDTH - 3) + "...");
    }

    /** A paragraph, broken between words; lines after the first begin with {@code indent} spaces. */
    public void paragraph(String text, int indent) {
        List<String> parts = wrapped(text, WIDTH, WIDTH - indent);
        lines.add(parts.get(0));
        parts.stream().skip(1).forEach(part -> lines.add(" ".repeat(indent) + part));
    }

    /** A label and, from {@code column} on, its value, both in as many lines as they take. */
    public void row(String label, String value, int column) {
        List<String> names = label.length() < column ? List.of(label) : broken(label, column - GAP);
        List<String> values = wrapped(value, WIDTH - column, WIDTH - column);
        for (int i = 0; i < Math.max(names.size(), values.size()); i++) {
            String name = i < names.size() ? names.get(i) : "";
            lines.add(name + " ".repeat(column - name.length()) + (i < values.size() ? values.get(i) : ""));
        }
    }

    /** A text in lines of up to {@code first} and then {@code further} characters, broken between words. */
    private static List<String> wrapped(String text, int first, int further) {
        List<String> parts = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int width = first;
        boolean empty = true;
        for (String word : KeptTogether.in(plain(text)).split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > width) {
                parts.add(line.toString());
                line = new StringBuilder();
                width = further;
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
            while (line.length() > width) {
                parts.add(line.substring(0, width));
                line = new StringBuilder(line.substring(width));
                width = further;
            }
        }
        parts.add(line.toString());
        return parts.stream().map(KeptTogether::plain).toList();
    }

    /** A name in lines of up to {@code width}, broken between words or behind the points and hyphens of a path. */
    public static List<String> broken(String name, int width) {
        return broken(name, width, CONTINUED);
    }

    /** A text in lines of up to {@code width}; all after the first begin with {@code further}. */
    public static List<String> broken(String text, int width, String further) {
        List<String> parts = new ArrayList<>();
        String rest = KeptTogether.in(text);
        String start = "";
        while (start.length() + rest.length() > width) {
            int end = end(rest, width - start.length());
            parts.add(start + KeptTogether.plain(rest.substring(0, end).stripTrailing()));
            rest = rest.substring(end).stripLeading();
            start = further;
        }
        parts.add(start + KeptTogether.plain(rest));
        return parts;
    }

    private static int end(String text, int most) {
        for (int end = most; end > 0; end--) {
            boolean isPath = ".-".indexOf(text.charAt(end - 1)) >= 0 && Character.isLetter(text.charAt(end));
            if (text.charAt(end) == ' ' || isPath) {
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
