package runthrough.scenario.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * A text in UTF-8 that is read as it goes by, with or without a byte order mark, strictly: what is not UTF-8, and control
 * characters, end it with a {@link Refused}. The last {@value #KEPT} characters are kept, so that the place of what was read
 * a little before is still known.
 */
final class WatchedText extends Reader {
    private static final int KEPT = 1 << 17;

    private final InputStream in;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer bytes = ByteBuffer.allocate(1 << 14).flip();
    private final CharBuffer chars = CharBuffer.allocate(1 << 14).flip();
    private final char[] kept = new char[KEPT];
    private long count;
    private boolean bytesEnded;
    private boolean begun;

    WatchedText(InputStream in) {
        this.in = in;
    }

    /** The text cannot be taken, and why. */
    static final class Refused extends IOException {
        private static final long serialVersionUID = 1;

        private final transient String rule;
        private final transient String remedy;
        private final long position;

        Refused(String rule, String remedy, long position) {
            super(rule);
            this.rule = rule;
            this.remedy = remedy;
            this.position = position;
        }

        String rule() {
            return rule;
        }

        String remedy() {
            return remedy;
        }

        /** How many characters come before. */
        long position() {
            return position;
        }
    }

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
        if (!chars.hasRemaining() && !decode()) {
            return -1;
        }
        int taken = 0;
        while (taken < length && chars.hasRemaining()) {
            char c = chars.get();
            if (TextFile.isStrange(c)) {
                throw new Refused(TextFile.strange(c), "Give a plain text file in UTF-8.", count);
            }
            kept[(int) (count++ & KEPT - 1)] = c;
            into[offset + taken++] = c;
        }
        return taken;
    }

    /** Decodes some more; false at the end. */
    private boolean decode() throws IOException {
        chars.clear();
        CoderResult result = CoderResult.UNDERFLOW;
        while (chars.position() == 0 && !(bytesEnded && !bytes.hasRemaining()) && !result.isError()) {
            fill();
            refuseWhatIsNoText();
            result = decoder.decode(bytes, chars, bytesEnded);
        }
        if (result.isError() && chars.position() == 0) {
            throw new Refused("the text is not UTF-8", "Save the file with the encoding UTF-8.", count);
        }
        chars.flip();
        if (!begun && chars.hasRemaining()) {
            begun = true;
            if (chars.get(0) == TextFile.BYTE_ORDER_MARK) {
                chars.get();
                return chars.hasRemaining() || decode();
            }
        }
        return chars.hasRemaining();
    }

    private void fill() throws IOException {
        bytes.compact();
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        if (read < 0) {
            bytesEnded = true;
        } else {
            bytes.position(bytes.position() + read);
        }
        bytes.flip();
    }

    private void refuseWhatIsNoText() throws Refused {
        if (!begun) {
            Optional<TextFile.Hindrance> other =
                    TextFile.noText(Arrays.copyOfRange(bytes.array(), bytes.position(), bytes.limit()));
            if (other.isPresent()) {
                throw new Refused(other.get().rule(), other.get().remedy(), 0);
            }
        }
    }

    /** How many characters were read. */
    long count() {
        return count;
    }

    /** Character {@code position}, from 0; a space where it was read too long ago to be kept. */
    char charAt(long position) {
        return count - position > KEPT ? ' ' : kept[(int) (position & KEPT - 1)];
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
