package runthrough.study;

import runthrough.plant.Line;
import runthrough.plant.ProcessSection;

/**
 * What one stop costs of which none was seen: an interval then says how much such stops may come to. A coil change that does
 * not run through is taken to lose no more than a coil change takes.
 *
 * @param scrapPerStop strip scrapped each time the process stops (m), {@code >= 0}
 * @param downtime mean standing time of process downtime (s); 0 where there is none
 * @param repair mean time for which a broken joint holds the process (s); 0 where joints do not break
 * @param breakScrap strip scrapped by a break (m), that of the stop included; 0 where joints do not break
 */
public record UnseenStops(double scrapPerStop, double downtime, double repair, double breakScrap) {

    /** That of {@code line}. */
    public static UnseenStops of(Line line) {
        ProcessSection process = line.process();
        double perStop = process.scrapPerStop();
        return new UnseenStops(
                perStop,
                process.downtime().map(down -> down.standingTime().mean()).orElse(0.0),
                process.jointBreak().map(one -> one.repair().mean()).orElse(0.0),
                process.jointBreak().map(one -> perStop + one.scrap()).orElse(0.0));
    }
}
