package runthrough.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Texts with slips in them: words, numbers and signs replaced, left out or said twice. So a fuzzer gets behind the grammar, where
 * slips of single bytes seldom lead.
 *
 * @param texts that slips are made in
 * @param pieces that are put in, words of the texts among them
 */
record Slips(List<List<String>> texts, List<String> pieces) {
    private static final Pattern PIECE = Pattern.compile("[\\p{L}-]+|\\d+(?:\\.\\d+)?|\\s+|.", Pattern.DOTALL);
    static final int BYTES_OF_ONE = 5;

    static Slips in(Stream<byte[]> texts) {
        List<List<String>> cut = texts.map(text -> PIECE.matcher(new String(text, StandardCharsets.UTF_8))
                        .results()
                        .map(MatchResult::group)
                        .toList())
                .toList();
        List<String> words = cut.stream()
                .flatMap(List::stream)
                .filter(piece -> Character.isLetterOrDigit(piece.charAt(0)))
                .distinct()
                .toList();
        return new Slips(
                cut,
                Stream.of(StrangeText.SIGNS, StrangeText.NUMBERS, words)
                        .flatMap(List::stream)
                        .toList());
    }

    /** The text that the first byte names, with a slip for every five more: two of the place, one of the kind, two of the piece. */
    byte[] made(byte[] plan) {
        List<String> text = new ArrayList<>(texts.get(plan.length == 0 ? 0 : Math.floorMod(plan[0], texts.size())));
        for (int i = 1; i + BYTES_OF_ONE <= plan.length; i += BYTES_OF_ONE) {
            int place = Math.floorMod(number(plan, i), text.size());
            int piece = number(plan, i + 3);
            switch (plan[i + 2] & 3) {
                case 0 -> text.set(place, "");
                case 1 -> text.add(place, text.get(piece % text.size()));
                case 2 -> text.set(place, pieces.get(piece % pieces.size()));
                default -> text.set(place, like(text.get(place), piece));
            }
        }
        return String.join("", text).getBytes(StandardCharsets.UTF_8);
    }

    /** A number for a number, a word for a word. */
    private String like(String given, int piece) {
        int first = given.isEmpty() ? 0 : Character.getType(given.charAt(0));
        return Stream.iterate(piece, next -> next + 1)
                .limit(pieces.size())
                .map(next -> pieces.get(next % pieces.size()))
                .filter(other -> !other.isEmpty() && Character.getType(other.charAt(0)) == first)
                .findFirst()
                .orElse("");
    }

    private static int number(byte[] plan, int at) {
        return ((plan[at] & 0xFF) << 8) | (plan[at + 1] & 0xFF);
    }
}
