package runthrough.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Several files in one to hand over. */
final class Zip {
    /** Any fixed instant, so that the same files give the same bytes. */
    private static final long NO_TIME = 315_532_800_000L;

    private Zip() {}

    /** {@code files}, contents by name, in order of their names. */
    static byte[] of(SortedMap<String, byte[]> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (var file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTime(NO_TIME);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory takes any bytes", e);
        }
        return bytes.toByteArray();
    }
}
