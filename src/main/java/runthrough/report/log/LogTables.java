package runthrough.report.log;

import java.util.Optional;
import runthrough.linelog.LineLog;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.study.logged.FigureComparison;

/** Tables of a log: its figures against those of the model, and its coil changes. */
final class LogTables {
    private static final String FIGURES = "logged-against-simulated.csv";
    private static final String CHANGES = "logged-coil-changes.csv";

    private LogTables() {}

    static Table figures(LogValues values) {
        return TableMaker.<FigureComparison>of("What the line logged, and what the model gives")
                .intoFile(FIGURES)
                .words("", figure -> values.name(figure.figure()))
                .cell("logged", figure -> new Cell.Quantity(values.logged(figure), "none"))
                .cell("model", figure -> new Cell.Quantity(values.model(figure), "none"))
                .with(
                        new Column(
                                "95 % of simulated logs", Column.Holds.ENDS, Optional.empty(), Column.Place.EVERYWHERE),
                        figure -> new Cell.Ends(values.model(figure)))
                .pageWords("", figure -> !figure.isKnown() ? "" : values.differs(figure) ? "differs" : "agrees")
                .fileNumber("share no greater", Notation.SHARE, FigureComparison::atMost)
                .fileNumber("share no less", Notation.SHARE, FigureComparison::atLeast)
                .of(values.comparison().figures());
    }

    /** For a file alone: a log may have thousands. */
    static Table changes(LineLog log) {
        return TableMaker.<LineLog.Change>of("Coil changes of the log")
                .intoFile(CHANGES)
                .shownUpTo(0)
                .words("coil", change -> change.joint().coil())
                .number(
                        "tail stopped",
                        Notation.SECONDS,
                        change -> change.joint().tailStopped())
                .number(
                        "joint released",
                        Notation.SECONDS,
                        change -> change.joint().released())
                .number(
                        "joint cycle time",
                        Notation.SECONDS,
                        change -> change.joint().time())
                .words("ran through", change -> change.ranThrough() ? "yes" : "no")
                .count("stops", change -> change.stops().size())
                .number("stood", Notation.SECONDS, LogTables::stood)
                .number("from release to restart", Notation.SECONDS, LineLog.Change::untilRestart)
                .number("from release to next tail", Notation.SECONDS, LineLog.Change::coilRun)
                .of(log.changes());
    }

    private static double stood(LineLog.Change change) {
        return change.stops().stream().mapToDouble(LineLog.Stop::duration).sum();
    }
}
