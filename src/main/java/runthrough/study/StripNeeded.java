package runthrough.study;

/** Placeholder until the computing lands. */
final class StripNeeded {
    private StripNeeded() {}
}
