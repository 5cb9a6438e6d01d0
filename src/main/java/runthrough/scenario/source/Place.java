package runthrough.scenario.source;

/**
 * Where something stands.
 *
 * @param file as the user named it
 * @param line counted from 1; 0 when the file as a whole is meant
 * @param column in characters, counted from 1; 0 when the file as a whole is meant
 */
public record Place(String file, int line, int column) {

    /** The file as a whole. */
    public static Place whole(String file) {
        return new Place(file, 0, 0);
    }

    /** Whether this stands behind {@code other} in the same file. */
    public boolean isBehind(Place other) {
        return line > other.line || (line == other.line && column > other.column);
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
