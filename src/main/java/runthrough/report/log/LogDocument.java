package runthrough.report.log;

import runthrough.report.JsonShape;
import runthrough.study.logged.FigureComparison;
import runthrough.study.logged.LogComparison;
import runthrough.study.logged.LogFigure;

/** JSON of a comparison with a log. */
final class LogDocument {
    private static final JsonShape<FigureComparison> FIGURE = JsonShape.<FigureComparison>named("figure")
            .word(
                    "figure",
                    "What is compared: shares from 0 to 1, stops for each coil change, times in seconds.",
                    LogFigure.class,
                    FigureComparison::figure)
            .optionalNumber("logged", "What the log gives; null where it has none.", figure -> known(figure.logged()))
            .optionalNumber(
                    "simulated_mean",
                    "Mean over the simulated logs; null where none has any.",
                    figure -> known(figure.mean()))
            .optionalNumber("simulated_low", "What 2.5 % of simulated logs stay below.", figure -> known(figure.low()))
            .optionalNumber("simulated_high", "What 97.5 % stay below.", figure -> known(figure.high()))
            .optionalNumber(
                    "share_no_greater",
                    "Share of simulated logs in which the figure is no greater than logged.",
                    figure -> known(figure.atMost()))
            .optionalNumber("share_no_less", "Share in which it is no less.", figure -> known(figure.atLeast()));

    static final JsonShape<LogComparison> SHAPE = JsonShape.<LogComparison>named("log")
            .word(
                    "fit",
                    "Whether the model fits, by the share run through.",
                    LogComparison.Fit.class,
                    LogComparison::fit)
            .count(
                    "logged_coil_changes",
                    "Whole coil changes of the log.",
                    comparison -> comparison.log().changes().size())
            .count(
                    "logged_joints",
                    "Joints of the log.",
                    comparison -> comparison.log().joints().size())
            .count(
                    "logged_stops",
                    "Stops of the log.",
                    comparison -> comparison.log().stops().size())
            .number(
                    "logged_share_low",
                    "Lower end of Wilson's 95 % interval of the share run through that was logged.",
                    comparison -> comparison.logged().low())
            .number(
                    "logged_share_high",
                    "Its upper end.",
                    comparison -> comparison.logged().high())
            .count("simulated_logs", "How many logs of that length were simulated.", LogComparison::simulatedLogs)
            .flag(
                    "logged_joint_cycle_times",
                    "Whether the model was given the joint cycle times of the log.",
                    LogComparison::loggedJointCycleTimes)
            .list("figures", "The log against the simulated logs, figure by figure.", FIGURE, LogComparison::figures)
            .words(
                    "differing",
                    "Figures other than the share that differ by more than chance explains.",
                    LogFigure.class,
                    comparison -> comparison.differing().stream()
                            .map(FigureComparison::figure)
                            .toList());

    private LogDocument() {}

    private static java.util.OptionalDouble known(double value) {
        return Double.isFinite(value) ? java.util.OptionalDouble.of(value) : java.util.OptionalDouble.empty();
    }
}
