package runthrough.scenario.source;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A part of a description as one line of YAML, such as {@code {triangular: [60 s, 90 s, 240 s]}}. */
public final class FlowText {
    /** What YAML reads as it stands, in brackets and outside. */
    private static final Pattern PLAIN =
            Pattern.compile("[\\p{L}\\p{N}.+-]([\\p{L}\\p{N} .+/%_()-]*[\\p{L}\\p{N}.%_)])?");

    private FlowText() {}

    /** {@code raw} on one line; read again, it gives the same. */
    public static String of(Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return mapping.entries().stream().map(FlowText::of).collect(Collectors.joining(", ", "{", "}"));
        } else if (raw instanceof Raw.Sequence sequence) {
            return sequence.items().stream().map(FlowText::of).collect(Collectors.joining(", ", "[", "]"));
        }
        return scalar(((Raw.Scalar) raw).text());
    }

    /** A key with its value. */
    static String of(Raw.Entry entry) {
        return scalar(entry.key()) + ": " + of(entry.value());
    }

    /** A value or key as YAML reads it. */
    static String scalar(String text) {
        boolean isMarker = text.startsWith("- ") || text.equals("-") || text.startsWith("---") || text.equals("...");
        return PLAIN.matcher(text).matches() && !isMarker ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\t' -> out.append("\\t");
                default -> {
                    if (Character.isISOControl(c)) {
                        out.append(String.format("\\u%04x", c));
                    } else {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.append('"').toString();
    }
}
