package runthrough.report.sweep;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Reads whole lines, and knows how many bytes they were. */
final class LineReader {
    private final RandomAccessFile file;
    private final byte[] block = new byte[1 << 16];
    private int next;
    private int end;
    private long position;

    LineReader(RandomAccessFile file) {
        this.file = file;
    }

    /** The next line that has a line end. */
    Optional<String> next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int b = read(); b >= 0; b = read()) {
            if (b == '\n') {
                position += line.size() + 1L;
                return Optional.of(line.toString(StandardCharsets.UTF_8));
            }
            line.write(b);
        }
        return Optional.empty();
    }

    /** Bytes up to the end of the last line read. */
    long position() {
        return position;
    }

    private int read() throws IOException {
        if (next == end) {
            end = file.read(block);
            next = 0;
            if (end <= 0) {
                end = 0;
                return -1;
            }
        }
        return block[next++];
    }
}
