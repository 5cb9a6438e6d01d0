package runthrough.report.log;

import java.util.OptionalDouble;
import runthrough.quantity.Notation;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.logged.FigureComparison;
import runthrough.study.logged.LogComparison;
import runthrough.study.logged.LogComparison.Fit;
import runthrough.study.logged.LogFigure;

/** The figures of a log and of the model: names, values, and which of them differ. */
record LogValues(LogComparison comparison, Texts texts) {
    private static final double PER_HUNDRED = 100;

    /** Logs that differ by no more than this part differ by rounding alone. */
    private static final double ROUNDING = 1e-9;

    /** What the figure is called. */
    String name(LogFigure figure) {
        boolean rethread = !comparison.request().line().practice().hasJoiner();
        String joint = rethread ? "standing time" : "joint cycle time";
        return switch (figure) {
            case SHARE_RUN_THROUGH -> "ran through";
            case STOPS_PER_CHANGE -> "stops per 100 coil changes";
            case STOP_TIME -> "a stop lasts";
            case UNTIL_RESTART -> "from release to restart";
            case JOINT_CYCLE_TIME -> joint + ", mean";
            case LONG_JOINT_CYCLE_TIME -> joint + ", 90 % at most";
            case CYCLE -> "from tail to next tail";
        };
    }

    /** The share that the log gives, with its confidence interval. */
    Value loggedShare() {
        return texts.found(
                Notation.SHARE,
                comparison.of(LogFigure.SHARE_RUN_THROUGH).logged(),
                OptionalDouble.of(comparison.logged().low()),
                OptionalDouble.of(comparison.logged().high()));
    }

    /** What the log gives. */
    Value logged(FigureComparison figure) {
        return Value.of(scaled(figure, figure.logged()), notation(figure));
    }

    /** The mean of the simulated logs, with the range that holds 95 % of them where they differ. */
    Value model(FigureComparison figure) {
        double mean = scaled(figure, figure.mean());
        return figure.high() - figure.low() <= ROUNDING * Math.abs(figure.mean())
                ? Value.of(mean, notation(figure))
                : texts.found(
                        notation(figure),
                        mean,
                        OptionalDouble.of(scaled(figure, figure.low())),
                        OptionalDouble.of(scaled(figure, figure.high())));
    }

    /** The share by its own test; the others by one that gives a false alarm in any of them one time in twenty. */
    boolean differs(FigureComparison figure) {
        return figure.figure() == LogFigure.SHARE_RUN_THROUGH
                ? comparison.fit() != Fit.FITS
                : comparison.differing().contains(figure);
    }

    /** The same for all numbers of a figure. */
    private Notation notation(FigureComparison figure) {
        return figure.figure() == LogFigure.STOPS_PER_CHANGE
                ? Notation.PLAIN
                : texts.notation(figure.figure().kind(), figure.isKnown() ? figure.high() : 1);
    }

    private static double scaled(FigureComparison figure, double value) {
        return figure.figure() == LogFigure.STOPS_PER_CHANGE ? PER_HUNDRED * value : value;
    }
}
