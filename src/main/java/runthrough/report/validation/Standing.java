package runthrough.report.validation;

/** How far a source can be relied on: whether we saw it ourselves. */
public enum Standing {
    READ("read", "the source, or a public copy of it, was read"),
    SECOND_HAND("second-hand", "seen only in somebody else's account of the source"),
    FROM_MEMORY("from memory", "quoted from memory; the source was not seen"),
    DERIVED_HERE("derived here", "worked out for this check, by a way that does not use the program"),
    COMMON_PRACTICE("common practice", "a fact of the trade without a published source");

    private final String word;
    private final String meaning;

    Standing(String word, String meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    /** As it stands beside a source. */
    public String word() {
        return word;
    }

    /** What the word means, as part of a sentence. */
    public String meaning() {
        return meaning;
    }
}
