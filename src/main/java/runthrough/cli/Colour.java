package runthrough.cli;

/** When to print in colour. */
enum Colour {
    AUTO,
    ALWAYS,
    NEVER;

    boolean isOnIn(Environment environment) {
        return switch (this) {
            case AUTO -> environment.suitsColour();
            case ALWAYS -> true;
            case NEVER -> false;
        };
    }

    /** Reads one of the three words. */
    static final class Words extends Choice<Colour> {
        Words() {
            or("auto", AUTO).or("always", ALWAYS).or("never", NEVER);
        }
    }
}
