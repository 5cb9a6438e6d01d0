package runthrough.scenario.coil;

import java.util.AbstractList;
import java.util.Arrays;
import runthrough.scenario.source.Place;

/** Where the rows of a table stand, of which there may be a million: only their lines are kept. */
final class RowPlaces extends AbstractList<Place> {
    private final String file;
    private int[] lines = new int[64];
    private int size;

    RowPlaces(String file) {
        this.file = file;
    }

    void add(int line) {
        if (size == lines.length) {
            lines = Arrays.copyOf(lines, size + size / 2);
        }
        lines[size++] = line;
    }

    @Override
    public Place get(int index) {
        return new Place(file, lines[java.util.Objects.checkIndex(index, size)], 1);
    }

    @Override
    public int size() {
        return size;
    }
}
