package runthrough.simulation.account;

/** What is added up from one instant on; whoever adds up anew takes new sums. SI units. */
final class Sums {
    /** When they began (s), and what had been processed and entered until then (m). */
    final double begun;

    final double processedBefore;
    final double enteredBefore;

    double kilograms;
    /** Metres processed up to which {@link #kilograms} counts (m). */
    double weighedUpTo;

    double ratedMetres;
    double lostMetres;
    double lostTime;
    double breakLostMetres;
    double breakLostTime;
    double passageLostMetres;
    final Scrap crops = new Scrap();
    final Scrap atStops = new Scrap();
    final Scrap cutOut = new Scrap();
    final Scrap ofBreaks = new Scrap();
    double jointSeconds;
    double waitingForPreparationSeconds;
    double waitingForPeopleSeconds;
    double crewSeconds;
    double starvedSeconds;
    double downSeconds;
    double breakSeconds;
    double blockedSeconds;
    double levelIntegral;
    double lowestLevel;
    double highestLevel;
    int starvedStops;
    int slowings;
    int downtimes;
    int jointBreaks;
    int overfull;
    int stripBreaks;

    /** Scrap of one kind, by length (m) and by mass (kg). */
    static final class Scrap {
        double metres;
        double kilograms;

        void add(double length, double kilogramsPerMetre) {
            metres += length;
            kilograms += length * kilogramsPerMetre;
        }
    }

    /** Nothing yet, at {@code time} (s) with {@code line} as it is. */
    Sums(double time, ObservedLine line) {
        begun = time;
        processedBefore = line.processed();
        enteredBefore = line.entered();
        weighedUpTo = line.processed();
        lowestLevel = line.level();
        highestLevel = line.level();
    }
}
