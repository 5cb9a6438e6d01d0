package runthrough.scenario.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** Finds the word that was probably meant; two letters changed places count as one slip, so {@code widht} is width. */
public final class Nearest {

    private static final DamerauLevenshteinDistance SLIPS = new DamerauLevenshteinDistance();
    private static final int LONGEST_WORD = 100;

    private Nearest() {}

    /** The nearest of {@code known} words, unless it takes more slips than a third of its letters. */
    public static Optional<String> to(String word, Collection<String> known) {
        if (word.length() > LONGEST_WORD) {
            return Optional.empty();
        }
        String plain = plain(word);
        return known.stream()
                .filter(candidate -> slips(plain, candidate) <= Math.max(1, candidate.length() / 3))
                .min(Comparator.comparingInt(candidate -> slips(plain, candidate)));
    }

    /** What to do about {@code word}, which is none of {@code known}: the nearest of them, or all where none is near. */
    public static String remedy(String word, Collection<String> known) {
        return to(word, known)
                .map(nearest -> "Did you mean " + nearest + "?")
                .orElseGet(() -> "There are: " + String.join(", ", known) + ".");
    }

    private static int slips(String plain, String candidate) {
        return SLIPS.apply(plain, plain(candidate));
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }
}
