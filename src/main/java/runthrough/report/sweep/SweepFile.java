package runthrough.report.sweep;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.folder.Hindrance;
import runthrough.report.sweep.SweepLines.Stamp;
import runthrough.report.write.ExclusiveFile;
import runthrough.report.write.ReportFolderException;
import runthrough.study.sweep.CaseResult;

/**
 * The lines of a sweep, or of its shard, in a file: each is written as soon as its case is done and all before it are. A sweep that
 * was interrupted, even by a power cut, goes on behind the last line that is whole.
 */
public final class SweepFile implements AutoCloseable {
    private final Path file;
    private final SweepLines lines;
    private final RandomAccessFile open;
    private int done;
    private int failed;
    private boolean isDamaged;

    private SweepFile(Path file, SweepLines lines, RandomAccessFile open) {
        this.file = file;
        this.lines = lines;
        this.open = open;
    }

    /**
     * Opens {@code file}, which may hold the first lines already.
     *
     * @param name of the sweep
     * @param indices of the cases, from 0, that the file is to hold, in this order
     * @throws ReportFolderException when the file holds something else, is in use, or cannot be written
     */
    public static SweepFile open(Path file, SweepLines lines, SweepName name, int[] indices) {
        @Nullable RandomAccessFile open = null;
        try {
            open = ExclusiveFile.open(
                    file, "the same sweep is being run. Wait for it, or name another file with --out.");
            SweepFile opened = new SweepFile(file, lines, open);
            opened.read(name, indices);
            open = null;
            return opened;
        } catch (IOException e) {
            throw new ReportFolderException(
                    file + " cannot be written (" + Hindrance.words(e) + "). Name another file with --out.", e);
        } finally {
            ExclusiveFile.close(open);
        }
    }

    /** Counts the lines that are there, and drops what stands behind the last of them that is whole. */
    private void read(SweepName name, int[] indices) throws IOException {
        long end = 0;
        LineReader reader = new LineReader(open);
        Optional<String> header = lines.header();
        if (header.isPresent()) {
            Optional<String> first = reader.next();
            if (first.isPresent() && !first.equals(header)) {
                throw foreign("1", "its header is not that of this sweep");
            }
            end = reader.position();
        }
        for (Optional<String> line = reader.next(); line.isPresent() && !isDamaged; line = reader.next()) {
            Optional<Stamp> stamp = lines.read(line.get());
            if (stamp.isEmpty() && done == 0) {
                throw foreign("1", "it is damaged, or not a line of this kind of sweep");
            } else if (stamp.isEmpty()) {
                isDamaged = true;
            } else {
                take(stamp.get(), name, indices);
                end = reader.position();
            }
        }
        if (end == 0) {
            refuseIfNeverOfASweep();
        }
        open.setLength(end);
        open.seek(end);
        if (end == 0 && header.isPresent()) {
            append(header.get());
        }
    }

    /** What begins otherwise than the first line, which may be cut, is somebody's file, which is left alone. */
    private void refuseIfNeverOfASweep() throws IOException {
        open.seek(0);
        byte[] start = new byte[(int) Math.min(open.length(), lines.start().length())];
        open.readFully(start);
        if (!lines.start().startsWith(new String(start, StandardCharsets.UTF_8))) {
            throw foreign("1", "it is not a line of a sweep");
        }
    }

    private void take(Stamp stamp, SweepName name, int[] indices) {
        if (!stamp.sweep().equals(name.id())) {
            throw foreign("" + (done + 1), "it is of another sweep (" + stamp.sweep() + ", not " + name.id() + ")");
        }
        if (done >= indices.length || stamp.number() != indices[done] + 1) {
            throw foreign("" + (done + 1), "case " + stamp.number() + " is not the next case of this shard");
        }
        done++;
        failed += stamp.isFailed() ? 1 : 0;
    }

    private ReportFolderException foreign(String line, String why) {
        return new ReportFolderException(
                file + " is not what this sweep has left: in line " + line + ", " + why
                        + ". Remove the file, or name another with --out.",
                null);
    }

    /** How many cases were done before. */
    public int done() {
        return done;
    }

    /** How many cases that are in the file could not be run. */
    public int failed() {
        return failed;
    }

    /** What to tell the user of what was found; empty when nothing was. */
    public Optional<String> word() {
        String lost = isDamaged ? "; a damaged line and all behind it will be run again" : "";
        return done == 0 && !isDamaged
                ? Optional.empty()
                : Optional.of("going on behind " + done + " cases that were done before" + lost);
    }

    /** Writes the line of the next case. */
    public void add(CaseResult result) {
        try {
            append(lines.line(result));
            failed += result.verdict().isEmpty() ? 1 : 0;
        } catch (IOException e) {
            throw new ReportFolderException(
                    file + " cannot be written (" + e.getMessage() + "). Check the disk; the lines before are kept.",
                    e);
        }
    }

    private void append(String line) throws IOException {
        open.write((line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void close() {
        ExclusiveFile.close(open);
    }
}
