package runthrough.simulation.records;

import java.util.List;

/** Totals hand-made, for tests of what is done with them. */
public final class PlainTotals {
    private PlainTotals() {}

    /** Totals of a line whose joints cost nothing in the process, and whose scrap is its crops; nobody is paid. */
    public static Totals of(
            double duration,
            int changes,
            int ranThrough,
            int slowedChanges,
            int stoppedChanges,
            int refilledChanges,
            int starvedStops,
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
            double starvedSeconds,
            double downtimeSeconds,
            double blockedSeconds,
            double levelIntegral,
            double lowestLevel,
            double overtravel,
            int overfull,
            int stripBreaks) {
        return new Totals(
                duration,
                changes,
                ranThrough,
                slowedChanges,
                stoppedChanges,
                refilledChanges,
                starvedStops,
                starvedStops,
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
                jointSeconds - waitingForPreparationSeconds - waitingForPeopleSeconds,
                starvedSeconds,
                downtimeSeconds,
                blockedSeconds,
                levelIntegral,
                lowestLevel,
                overtravel,
                overfull,
                stripBreaks,
                ProcessedScrap.NONE,
                0,
                0,
                0,
                0,
                0,
                List.of());
    }
}
