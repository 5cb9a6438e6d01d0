package runthrough.study.fitting;

import java.util.Locale;

/** A family of distributions that times of work are fitted with. Each is a distribution of scenarios, too. */
public enum Family {
    LOGNORMAL(2),
    GAMMA(2),
    WEIBULL(2),
    EXPONENTIAL(1),
    /** Conditioned on being more than 0, as in scenarios. A shift would only move its mean. */
    NORMAL(2),
    /** Its least value is a shift already. */
    TRIANGULAR(3);

    private final int parameters;

    Family(int parameters) {
        this.parameters = parameters;
    }

    /** How many numbers describe one distribution of it, without a shift. */
    public int parameters() {
        return parameters;
    }

    /** Whether fitting a shift with it makes another distribution of it. */
    public boolean isShiftable() {
        return this != NORMAL && this != TRIANGULAR;
    }

    /** Its key in a scenario. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What people call it. */
    public String label() {
        return this == WEIBULL ? "Weibull" : key();
    }
}
