package runthrough.report.map;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.report.Fingerprint;
import runthrough.report.write.ExclusiveFile;
import runthrough.report.write.ReportFolderException;
import runthrough.study.map.MapPoint;
import runthrough.study.map.MapStore;

/**
 * The points of a map that are done, in a file of their own beside the report: one line for each, written as soon as it is
 * done. A map that was interrupted, even by a power cut, goes on from there. The name of the file depends on all that a point
 * depends on, so that no map takes up another's points.
 */
public final class MapProgress implements MapStore, AutoCloseable {
    private static final String HEAD = "runthrough map in progress, shape 1, of ";

    private final Path file;
    private final RandomAccessFile open;
    private final Map<Long, MapPoint> known;
    private final int damaged;

    private MapProgress(Path file, RandomAccessFile open, Map<Long, MapPoint> known, int damaged) {
        this.file = file;
        this.open = open;
        this.known = Map.copyOf(known);
        this.damaged = damaged;
    }

    /**
     * The progress of a map whose report goes to {@code folder}; the folder that this is in must be there.
     *
     * @param identity all that a point of the map depends on
     * @throws ReportFolderException when the file is not of this map, is in use, or cannot be written
     */
    public static MapProgress beside(Path folder, String identity) {
        String digest = Fingerprint.of(identity);
        Path file = folder.resolveSibling(folder.getFileName() + "-" + digest.substring(0, 12) + ".progress");
        @Nullable RandomAccessFile open = null;
        try {
            open = ExclusiveFile.open(file, "the same map is being made. Wait for it, or choose another folder.");
            MapProgress progress = read(file, open, HEAD + digest);
            open = null;
            return progress;
        } catch (IOException e) {
            throw new ReportFolderException(
                    file + " cannot keep the points that are done (" + e.getMessage() + "). Choose another folder.", e);
        } finally {
            ExclusiveFile.close(open);
        }
    }

    /** Reads what is there, and drops what stands behind the last line that is whole. */
    private static MapProgress read(Path file, RandomAccessFile open, String head) throws IOException {
        byte[] bytes = new byte[Math.toIntExact(open.length())];
        open.readFully(bytes);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        // What stands behind the last line end was cut short while it was written.
        String whole = text.substring(0, text.lastIndexOf('\n') + 1);
        List<String> lines = whole.lines().toList();
        if (!whole.isEmpty() && !lines.get(0).equals(head)) {
            throw new ReportFolderException(
                    file + " is not what this map has left: its first line is another's or damaged. Remove the file, or"
                            + " choose another folder.",
                    null);
        }
        Map<Long, MapPoint> known = new HashMap<>();
        int damaged = 0;
        for (int i = 1; i < lines.size(); i++) {
            Optional<MapPoint> point = MapLine.read(lines.get(i));
            point.ifPresent(done -> known.put(key(done.column(), done.row()), done));
            damaged += point.isEmpty() ? 1 : 0;
        }
        open.setLength(whole.length());
        open.seek(whole.length());
        MapProgress progress = new MapProgress(file, open, known, damaged);
        if (whole.isEmpty()) {
            progress.append(head);
        }
        return progress;
    }

    /** What to tell the user of what was found; empty when nothing was. */
    public Optional<String> word() {
        String lost = damaged == 0
                ? ""
                : "; " + damaged + (damaged == 1 ? " line was" : " lines were") + " damaged and will be run again";
        return known.isEmpty() && damaged == 0
                ? Optional.empty()
                : Optional.of("going on with " + known.size() + " points that were done before" + lost);
    }

    @Override
    public Optional<MapPoint> known(int column, int row) {
        return Optional.ofNullable(known.get(key(column, row)));
    }

    @Override
    public void add(MapPoint point) {
        try {
            append(MapLine.of(point));
        } catch (IOException e) {
            throw new ReportFolderException(
                    file + " cannot keep the points that are done (" + e.getMessage() + "). Check the disk.",
                    new UncheckedIOException(e));
        }
    }

    private void append(String line) throws IOException {
        open.write((line + "\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    /** Stops keeping; the file stays. */
    @Override
    public void close() {
        ExclusiveFile.close(open);
    }

    /** Removes the file: the map is done. */
    public void delete() {
        close();
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new ReportFolderException(
                    "the report is done, but " + file + " cannot be removed (" + e.getMessage() + ")", e);
        }
    }

    private static long key(int column, int row) {
        return ((long) row << Integer.SIZE) + column;
    }
}
