package runthrough.study.logged;

import java.util.List;
import runthrough.linelog.LineLog;
import runthrough.plant.SimulationRequest;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Wilson;

/**
 * What the line logged against what the model gives.
 *
 * @param request of the model
 * @param log of the line
 * @param loggedJointCycleTimes whether the model was given the joint cycle times of the log
 * @param simulatedLogs how many
 * @param figures one for each {@link LogFigure}, in their order
 * @param jointCycleTimes how the joint cycle times of the model spread
 */
public record LogComparison(
        SimulationRequest request,
        LineLog log,
        boolean loggedJointCycleTimes,
        int simulatedLogs,
        List<FigureComparison> figures,
        List<JointShare> jointCycleTimes) {

    /** Chance of calling one of the further figures different though it is not: all together one time in twenty. */
    private static final double FURTHER = (1 - Interval.CONFIDENCE) / (LogFigure.values().length - 1);

    public LogComparison {
        figures = List.copyOf(figures);
        jointCycleTimes = List.copyOf(jointCycleTimes);
    }

    /** Whether the model fits. */
    public enum Fit {
        /** As many coil changes ran through as the model lets expect. */
        FITS,
        /** Fewer ran through than the model says. */
        LINE_STOPS_MORE,
        /** More ran through than the model says. */
        LINE_STOPS_LESS
    }

    /**
     * The share of joints that take no longer than {@code time} (s).
     *
     * @param logged of the line
     * @param simulated over all simulated logs
     * @param low what 2.5 % of simulated logs stay below
     * @param high what 97.5 % of simulated logs stay below
     */
    public record JointShare(double time, double logged, double simulated, double low, double high) {}

    /** The answer, from the share of coil changes run through alone. */
    public Fit fit() {
        FigureComparison share = of(LogFigure.SHARE_RUN_THROUGH);
        boolean isExact = simulatedLogs == 1;
        boolean fits = isExact ? logged().contains(share.mean()) || share.logged() == share.mean() : share.isWithin();
        if (fits) {
            return Fit.FITS;
        }
        return share.isLess() ? Fit.LINE_STOPS_MORE : Fit.LINE_STOPS_LESS;
    }

    /** One of the figures. */
    public FigureComparison of(LogFigure figure) {
        return figures.stream()
                .filter(one -> one.figure() == figure)
                .findFirst()
                .orElseThrow();
    }

    /** Wilson's interval of the share run through that was logged. */
    public Interval logged() {
        return Wilson.interval(
                of(LogFigure.SHARE_RUN_THROUGH).logged(), log.changes().size());
    }

    /** The further figures that differ by more than chance explains. */
    public List<FigureComparison> differing() {
        return figures.stream()
                .filter(figure -> figure.figure() != LogFigure.SHARE_RUN_THROUGH)
                .filter(figure -> !figure.isWithin(FURTHER))
                .toList();
    }
}
