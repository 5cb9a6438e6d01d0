package runthrough.simulation.records;

/**
 * Strip that was processed and is scrap afterwards, and so no good output; by length (m) and by mass (kg), all {@code >= 0}.
 *
 * @param stopMetres scrapped each time that the process came to rest
 * @param stopKilograms the same by mass
 * @param jointMetres cut out with the joints
 * @param jointKilograms the same by mass
 * @param breakMetres of joints that broke, on top of what a stop costs
 * @param breakKilograms the same by mass
 */
public record ProcessedScrap(
        double stopMetres,
        double stopKilograms,
        double jointMetres,
        double jointKilograms,
        double breakMetres,
        double breakKilograms) {

    /** None. */
    public static final ProcessedScrap NONE = new ProcessedScrap(0, 0, 0, 0, 0, 0);

    /** All of it (m). */
    public double metres() {
        return stopMetres + jointMetres + breakMetres;
    }

    /** All of it (kg). */
    public double kilograms() {
        return stopKilograms + jointKilograms + breakKilograms;
    }
}
