package runthrough.handcalc;

/**
 * What a coil change costs where entry and process are one strip.
 *
 * <p>Rule FORM-10.
 *
 * @param standing how long the strip stands: joint time or rethread, and the restart delay after a joint (s)
 * @param stopped from the start of the change until the strip runs at its speed again (s)
 * @param lostMetres what would have run meanwhile (m)
 * @param cycle from one coil change to the next (s)
 * @param output strip that runs, over all of the time (m/s)
 * @param utilisation output over speed, in [0, 1]
 */
public record Standstill(
        double standing, double stopped, double lostMetres, double cycle, double output, double utilisation) {}
