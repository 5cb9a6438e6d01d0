package runthrough.simulation.records;

import java.util.List;

/**
 * Sums over a replication, from time 0 or from the start of the first coil change that counts. Lengths in metres, times in
 * seconds, masses in kilograms.
 *
 * @param duration how long the totals run (s)
 * @param changes coil changes that count, each with a complete record
 * @param ranThrough how many of them ran through
 * @param slowedChanges how many slowed the process
 * @param stoppedChanges how many stopped it
 * @param refilledChanges how many were refilled before the next
 * @param starvedStops stops of the process because the level is too low
 * @param starvedStopsOfChanges how many of them belong to the coil changes that count
 * @param slowings how often the process was slowed
 * @param downtimes stops of the process's own
 * @param processedMetres strip through the process section (m)
 * @param processedKilograms the same by mass (kg)
 * @param enteredMetres strip past the joiner (m)
 * @param ratedMetres what the rated speed would have given, {@code int V dt} (m)
 * @param lostMetres not processed while starved, slowed or recovering from it (m)
 * @param lostTime the same at the rated speed in force, {@code int (V - v_p)/V dt} (s)
 * @param scrapMetres crops, and strip that was processed and is scrap afterwards (m)
 * @param scrapKilograms the same by mass (kg)
 * @param jointSeconds strip standing at the joiner (s)
 * @param waitingForPreparationSeconds strip standing without work, because preparation is not done (s)
 * @param waitingForPeopleSeconds the same because people are not there (s)
 * @param crewSeconds joint work without waiting, times the people of the shift in which its coil change begins, all of whom count
 *     as present (person-s)
 * @param starvedSeconds process standing because strip is lacking and not for process downtime or a joint break (s)
 * @param downtimeSeconds process held by a stop of its own, from falling due until it ends (s)
 * @param blockedSeconds entry able to run but standing, the accumulator being full (s)
 * @param levelIntegral {@code int x dt} (m s)
 * @param lowestLevel lowest level seen (m); below 0 the strip would have broken
 * @param overtravel largest excess over the capacity (m), {@code >= 0}
 * @param overfull how often the level passed the capacity and its allowance
 * @param stripBreaks how often the level fell below 0; what follows one is not physical
 * @param processedScrap strip that was processed and is scrap afterwards
 * @param passageLostMetres not processed in joint passages and recovering from them, where nothing else loses them (m)
 * @param jointBreaks how often a joint broke in the process
 * @param breakLostMetres not processed because of that, recovery included (m)
 * @param breakLostTime the same at the rated speed in force (s)
 * @param breakSeconds process held by a broken joint and not for process downtime, from the break until it is repaired (s)
 * @param paidSecondsByShift what people are paid for, people times seconds, of each shift by its place; one without shifts
 */
public record Totals(
        double duration,
        int changes,
        int ranThrough,
        int slowedChanges,
        int stoppedChanges,
        int refilledChanges,
        int starvedStops,
        int starvedStopsOfChanges,
        int slowings,
        int downtimes,
        double processedMetres,
        double processedKilograms,
        double enteredMetres,
        double ratedMetres,
        double lostMetres,
        double lostTime,
        double scrapMetres,
        double scrapKilograms,
        double jointSeconds,
        double waitingForPreparationSeconds,
        double waitingForPeopleSeconds,
        double crewSeconds,
        double starvedSeconds,
        double downtimeSeconds,
        double blockedSeconds,
        double levelIntegral,
        double lowestLevel,
        double overtravel,
        int overfull,
        int stripBreaks,
        ProcessedScrap processedScrap,
        double passageLostMetres,
        int jointBreaks,
        double breakLostMetres,
        double breakLostTime,
        double breakSeconds,
        List<Double> paidSecondsByShift) {

    public Totals {
        paidSecondsByShift = List.copyOf(paidSecondsByShift);
    }

    /** Mean of the rated speed in force (m/s). */
    public double meanRatedSpeed() {
        return ratedMetres / duration;
    }

    /** Strip processed that is no scrap afterwards (m): the output. */
    public double goodMetres() {
        return processedMetres - processedScrap.metres();
    }

    /** The same by mass (kg). */
    public double goodKilograms() {
        return processedKilograms - processedScrap.kilograms();
    }

    /** Head and tail crops (m). */
    public double cropMetres() {
        return scrapMetres - processedScrap.metres();
    }

    /** The same by mass (kg). */
    public double cropKilograms() {
        return scrapKilograms - processedScrap.kilograms();
    }

    /** What people are paid for, people times seconds. */
    public double paidSeconds() {
        return paidSecondsByShift.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Good output over time (m/s). */
    public double goodSpeed() {
        return goodMetres() / duration;
    }

    /** Good output over time (kg/s). */
    public double goodMassFlow() {
        return goodKilograms() / duration;
    }

    /** All waiting with the strip standing (s). */
    public double waitingSeconds() {
        return waitingForPreparationSeconds + waitingForPeopleSeconds;
    }

    /** The same with a level lower by {@code metres} throughout. */
    public Totals withLevelLower(double metres) {
        return new Totals(
                duration,
                changes,
                ranThrough,
                slowedChanges,
                stoppedChanges,
                refilledChanges,
                starvedStops,
                starvedStopsOfChanges,
                slowings,
                downtimes,
                processedMetres,
                processedKilograms,
                enteredMetres,
                ratedMetres,
                lostMetres,
                lostTime,
                scrapMetres,
                scrapKilograms,
                jointSeconds,
                waitingForPreparationSeconds,
                waitingForPeopleSeconds,
                crewSeconds,
                starvedSeconds,
                downtimeSeconds,
                blockedSeconds,
                levelIntegral - metres * duration,
                lowestLevel - metres,
                overtravel,
                overfull,
                stripBreaks,
                processedScrap,
                passageLostMetres,
                jointBreaks,
                breakLostMetres,
                breakLostTime,
                breakSeconds,
                paidSecondsByShift);
    }

    /** Share of coil changes run through, in [0, 1]; NaN without coil changes. */
    public double shareRunThrough() {
        return (double) ranThrough / changes;
    }

    /** Metres processed over metres at rated speed. */
    public double utilisation() {
        return processedMetres / ratedMetres;
    }

    /** Good output over what was processed, by mass. */
    public double goodShare() {
        return goodKilograms() / processedKilograms;
    }

    /** Scrap over scrap and good output, by mass. */
    public double scrapShare() {
        return scrapKilograms / (scrapKilograms + goodKilograms());
    }

    /** Time-average level (m). */
    public double meanLevel() {
        return levelIntegral / duration;
    }
}
