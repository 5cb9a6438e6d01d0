package runthrough.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What identifies a text or a file: its SHA-256 (FIPS 180-4) in 64 hexadecimal digits. */
public final class Fingerprint {
    private Fingerprint() {}

    /** That of {@code text} in UTF-8, as if it stood in a file. */
    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** That of {@code bytes}. */
    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has it", e);
        }
    }
}
