package runthrough.report.lever;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Line;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Value;
import runthrough.study.Goal;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.Levers;

/** What would meet the targets, lever by lever, as a table. */
public final class LeverTable {
    private LeverTable() {}

    /** The table of {@code levers}. */
    public static Table of(Levers levers) {
        return of("What would meet the target, each change on its own", levers);
    }

    /** The table of {@code levers} of the target without a stop alone, beside an answer about the target to run through. */
    public static Table withoutStop(Levers levers) {
        return of("What would meet the target without a stop, each change on its own", levers);
    }

    private static Table of(String caption, Levers levers) {
        LeverWords words = LeverWords.of(levers.request());
        boolean several =
                levers.answers().stream().map(LeverAnswer::goal).distinct().count() > 1;
        TableMaker<LeverAnswer> table =
                TableMaker.<LeverAnswer>of(caption).words("lever", answer -> LeverWords.name(answer.lever()));
        if (several) {
            table.pageWords("target", answer -> goal(answer.goal()));
        }
        return table.fileWords("target", answer -> goal(answer.goal()))
                .pageWords("now", words::present)
                .pageWords(
                        "needed",
                        answer -> needed(answer, words, levers.request().line()))
                .fileWords("answer", answer -> LeverWords.words(answer.status()))
                .fileNumber("now (SI)", Notation.PLAIN, LeverAnswer::present)
                .with(file("value (SI)"), answer -> cell(answer.value()))
                .with(file("low (SI)"), answer -> cell(end(answer, true)))
                .with(file("high (SI)"), answer -> cell(end(answer, false)))
                .intoFile("levers.csv")
                .of(levers.answers().stream().filter(LeverTable::isWorthARow).toList());
    }

    /** Elements that are not enough on their own are many and say nothing. */
    private static boolean isWorthARow(LeverAnswer answer) {
        return answer.lever().what() != Lever.What.ELEMENT || answer.status() == LeverAnswer.Status.ENOUGH;
    }

    private static Column file(String heading) {
        return new Column(heading, Column.Holds.NUMBERS, Optional.empty(), Column.Place.FILE);
    }

    private static Cell cell(OptionalDouble number) {
        return Cell.of(Value.of(number, Notation.PLAIN));
    }

    private static OptionalDouble end(LeverAnswer answer, boolean low) {
        return answer.status() != LeverAnswer.Status.ENOUGH
                ? OptionalDouble.empty()
                : answer.crossing()
                        .map(found -> low ? found.low() : found.high())
                        .orElse(OptionalDouble.empty());
    }

    static String goal(Goal goal) {
        return goal.what() == Goal.What.RUN_THROUGH ? "run through" : "without a stop";
    }

    private static String needed(LeverAnswer answer, LeverWords words, Line line) {
        return answer.status() == LeverAnswer.Status.ENOUGH
                ? words.shown(answer.lever(), answer.value().orElseThrow())
                        + words.interval(answer, "")
                        + words.cost("; ", answer.cost())
                : LeverWords.words(answer.status()) + slowest(answer, words, line);
    }

    /** A process has to be faster than it is slowed to, or passes joints at: below that nothing is tried. */
    private static String slowest(LeverAnswer answer, LeverWords words, Line line) {
        boolean isTriedInVain = answer.lever().what() == Lever.What.PROCESS_SPEED
                && answer.status() == LeverAnswer.Status.NONE_IS_ENOUGH;
        double bound = line.ratedSpeedsMustExceed();
        return isTriedInVain && bound > 0 ? ", above " + words.shown(answer.lever(), bound) : "";
    }
}
