package runthrough.scenario.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant; two letters changed places count as one slip, so {@code widht} is width. */
public final class Nearest {

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
        return slips(plain.toCharArray(), plain(candidate).toCharArray());
    }

    /**
     * The fewest letters put in, left out, replaced, or neighbours changed places, none touched twice: F. J. Damerau, A technique for
     * computer detection and correction of spelling errors, Comm. ACM 7 (1964), 171-176.
     */
    private static int slips(char[] a, char[] b) {
        int[][] least = new int[a.length + 1][b.length + 1];
        for (int i = 0; i <= a.length; i++) {
            for (int j = 0; j <= b.length; j++) {
                if (i == 0 || j == 0) {
                    least[i][j] = i + j;
                    continue;
                }
                int replaced = least[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                least[i][j] = Math.min(replaced, 1 + Math.min(least[i - 1][j], least[i][j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                    least[i][j] = Math.min(least[i][j], least[i - 2][j - 2] + 1);
                }
            }
        }
        return least[a.length][b.length];
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }
}
