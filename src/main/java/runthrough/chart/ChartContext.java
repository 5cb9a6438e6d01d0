package runthrough.chart;

import runthrough.plant.Line;

/**
 * What all charts of a report share.
 *
 * @param style how they look
 * @param line what they are of
 * @param units of axes and readings
 * @param replications how many there were; some charts show the first of them
 */
record ChartContext(ChartStyle style, Line line, ChartUnits units, int replications) {

    /** Whether the line stores strip, so that there is a level to show. */
    boolean stores() {
        return !line.practice().isOneStrip();
    }

    /** {@code text}, saying that it speaks of the first replication where there are several. */
    String ofFirst(String text) {
        return replications == 1 ? text : text + ", first of " + replications + " replications";
    }
}
