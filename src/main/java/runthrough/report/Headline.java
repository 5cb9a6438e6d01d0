package runthrough.report;

import java.util.Locale;

/**
 * The answer in a word, and in a sentence that a plant manager repeats.
 *
 * @param tone whether it is good news
 * @param word that states it
 * @param sentence with its numbers; one that begins with a small letter goes on from the word
 * @param further what else must be known to read it, such as how many coil changes would decide; may be empty
 */
public record Headline(Tone tone, String word, String sentence, String further) {

    /** A headline that needs nothing further. */
    public Headline(Tone tone, String word, String sentence) {
        this(tone, word, sentence, "");
    }

    /** Word and sentence as one text: "STOPS at about 1 in 42 coil changes". */
    public String text() {
        return word + (goesOn() ? " " : ". ") + sentence;
    }

    /** The sentence for a place where the word is not before it: "Stops at about 1 in 42 coil changes". */
    public String alone() {
        return goesOn() ? word.charAt(0) + word.substring(1).toLowerCase(Locale.ROOT) + " " + sentence : sentence;
    }

    private boolean goesOn() {
        return !sentence.isEmpty() && Character.isLowerCase(sentence.charAt(0));
    }

    /** Whether an answer is good news; each has a sign whose shape shows it without colour. */
    public enum Tone {
        RUNS_THROUGH("✓"),
        MARGINAL("◆"),
        SLOWS("▼"),
        STOPS("✗"),
        NEUTRAL("▲");

        private final String sign;

        Tone(String sign) {
            this.sign = sign;
        }

        /** The sign. */
        public String sign() {
            return sign;
        }

        /** Name of its style. */
        public String style() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
