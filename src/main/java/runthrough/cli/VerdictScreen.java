package runthrough.cli;

import java.util.ArrayList;
import java.util.List;
import runthrough.quantity.Units;
import runthrough.study.StudyResult;

/** The answer on one screen of 80 columns and 24 lines: the verdict, the numbers it rests on, the hand calculation. */
final class VerdictScreen {
    private final StudyResult result;
    private final Paint paint;

    VerdictScreen(StudyResult result, Paint paint) {
        this.result = result;
        this.paint = paint;
    }

    List<String> lines() {
        Units units = Units.of(result.brief().resultsIn());
        List<String> lines = new ArrayList<>();
        lines.add(paint.strong(result.brief().title()));
        lines.addAll(new Headline(result, units, paint).lines());
        lines.add("");
        lines.addAll(new VerdictRows(result, units, paint).lines());
        lines.add("");
        lines.addAll(new HandRows(result.handCalculation(), units, paint).lines());
        return lines;
    }
}
