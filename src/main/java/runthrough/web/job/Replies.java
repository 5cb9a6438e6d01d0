package runthrough.web.job;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was answered, for who asks the very same again: after an undo, a reload, a fix taken back. An answer depends on nothing but
 * its question. The one that was not asked for longest goes first.
 *
 * @param <T> the answers
 */
public final class Replies<T> {
    private final Map<String, T> given;

    /** Keeps {@code most} of them. */
    @SuppressWarnings("serial") // never serialised
    public Replies(int most) {
        given = new LinkedHashMap<>(most, 1, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
                return size() > most;
            }
        };
    }

    /** The question that {@code body} asks at {@code path}, for {@link #to} and {@link #keep}. */
    public static String question(String path, byte[] body) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(path.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest.digest(body));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    /** What was answered to {@code question}, as far as it is known still. */
    public synchronized Optional<T> to(String question) {
        return Optional.ofNullable(given.get(question));
    }

    /** Keeps {@code reply} to {@code question}. */
    public synchronized void keep(String question, T reply) {
        given.put(question, reply);
    }
}
