package runthrough.chart;

import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;

/**
 * What all charts of a report share.
 *
 * @param style how they look
 * @param line what they are of
 * @param units of axes and readings
 * @param replications how many there were; some charts show the first of them
 */
public record ChartContext(ChartStyle style, Line line, ChartUnits units, int replications) {

    /** What charts of {@code request} share, run with so many {@code replications}. */
    public static ChartContext of(SimulationRequest request, int replications) {
        return new ChartContext(new ChartStyle(), request.line(), ChartUnits.of(request.resultsIn()), replications);
    }

    /** The same with the replications that the request asks for. */
    public static ChartContext of(SimulationRequest request) {
        return of(request, request.run().replications());
    }

    /** Whether the line stores strip, so that there is a level to show. */
    public boolean stores() {
        return !line.practice().isOneStrip();
    }

    /** {@code text}, saying that it speaks of the first replication where there are several. */
    public String ofFirst(String text) {
        return replications == 1 ? text : text + ", first of " + replications + " replications";
    }
}
