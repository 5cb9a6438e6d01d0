package runthrough.cli.terminal;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** A stream that keeps apart a reader who has seen enough, such as {@code head}, and a disk that is full. */
final class PipedStream extends FilterOutputStream {

    PipedStream(OutputStream out) {
        super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            // Systems tell it by their message alone: "Broken pipe", "The pipe is being closed".
            if (String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("pipe")) {
                throw new ClosedPipeException(e);
            }
            throw e;
        }
    }
}
