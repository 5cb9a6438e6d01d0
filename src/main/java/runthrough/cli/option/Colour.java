package runthrough.cli.option;

import runthrough.cli.terminal.Environment;

/** When to print in colour. */
public enum Colour {
    AUTO,
    ALWAYS,
    NEVER;

    public boolean isOnIn(Environment environment) {
        return switch (this) {
            case AUTO -> environment.suitsColour();
            case ALWAYS -> true;
            case NEVER -> false;
        };
    }

    /** Reads one of the three words. */
    public static final class Words extends Choice<Colour> {
        Words() {
            or("auto", AUTO).or("always", ALWAYS).or("never", NEVER);
        }
    }
}
