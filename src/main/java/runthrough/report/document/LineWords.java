package runthrough.report.document;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Coil;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.report.Texts;
import runthrough.report.described.InputTexts;

/** The parts of a line in words with their numbers, one row for each number in its drawing. */
final class LineWords {
    private final Line line;
    private final HandCalculation hand;
    private final InputTexts given;
    private final Texts texts;

    private LineWords(SimulationRequest request, HandCalculation hand) {
        this.line = request.line();
        this.hand = hand;
        this.given = new InputTexts(request.resultsIn());
        this.texts = new Texts(request.resultsIn(), false);
    }

    /** The rows, in the order of their numbers. */
    static List<String> of(SimulationRequest request, HandCalculation hand) {
        LineWords words = new LineWords(request, hand);
        List<String> rows = new ArrayList<>(List.of(words.uncoilers(), words.joiner()));
        if (!request.line().practice().isOneStrip()) {
            rows.add(words.accumulator());
        }
        rows.add(words.process());
        return List.copyOf(rows);
    }

    private String uncoilers() {
        Entry entry = line.entry();
        String text = (entry.uncoilers() == 1 ? "1 uncoiler" : entry.uncoilers() + " uncoilers") + "; coil "
                + calculated(Kind.LENGTH, line.coils().stream().mapToDouble(Coil::meanLength))
                + " long, "
                + calculated(
                        Kind.MASS, line.coils().stream().mapToDouble(coil -> coil.meanLength() * coil.massPerMetre()))
                + ", strip " + range(Kind.THICKNESS, line.coils().stream().mapToDouble(Coil::thickness)) + " x "
                + range(Kind.WIDTH, line.coils().stream().mapToDouble(Coil::width));
        if (entry.uncoilerPath() > 0) {
            text += "; " + given.text(Kind.LENGTH, entry.uncoilerPath()) + " of strip to the joiner";
        }
        return text + ".";
    }

    private String joiner() {
        String time = texts.time(hand.joint().total()) + " by mean times, " + crew();
        if (!line.practice().hasJoiner()) {
            return "No joiner: the line is threaded anew in " + time + ".";
        }
        Entry entry = line.entry();
        return "Joiner: strip stands for " + time + "; entry up to " + given.text(Kind.SPEED, entry.topSpeed()) + ", "
                + ramps(entry.acceleration(), entry.deceleration())
                + entry.creep()
                        .map(creep -> ", creep " + given.text(Kind.SPEED, creep.speed()) + " for the last "
                                + given.text(Kind.LENGTH, creep.length()))
                        .orElse("")
                + ".";
    }

    private String crew() {
        return line.change()
                .shifts()
                .map(shifts -> "crews of "
                        + shifts.list().stream()
                                .map(shift -> shift.crew() + " (" + shift.name() + ")")
                                .collect(Collectors.joining(", ")))
                .orElse("crew of " + line.change().crew());
    }

    private String accumulator() {
        StorageForm form = line.accumulator().form();
        String how = "";
        if (form instanceof StorageForm.Strands strands) {
            how = " = " + strands.strands() + " x " + given.text(Kind.LENGTH, strands.stroke());
        } else if (form instanceof StorageForm.FreeLoop loop) {
            how = loop.loops() == 1 ? " in a free loop" : " in " + loop.loops() + " free loops";
        } else if (form instanceof StorageForm.Spiral spiral) {
            how = " in " + given.plain(spiral.wraps()).text() + " wraps of a spiral";
        }
        double limit = line.accumulator().fillRateLimit();
        return "Accumulator: holds "
                + given.text(Kind.LENGTH, line.accumulator().capacity()) + how + ", reserve "
                + given.text(Kind.LENGTH, line.accumulator().reserve())
                + (Double.isFinite(limit)
                        ? ", fills at most " + given.text(Kind.SPEED, limit) + " faster than it gives"
                        : "")
                + ".";
    }

    private String process() {
        ProcessSection process = line.process();
        return "Process: " + range(Kind.SPEED, line.coils().stream().mapToDouble(line::ratedSpeed)) + ", "
                + ramps(process.acceleration(), process.deceleration())
                + (process.path() > 0 ? ", " + given.text(Kind.LENGTH, process.path()) + " of strip before it" : "")
                + ".";
    }

    private String ramps(double acceleration, double deceleration) {
        if (Double.isInfinite(acceleration) && Double.isInfinite(deceleration)) {
            return "speeds change at once";
        }
        return "speeds up at " + ramp(acceleration) + ", slows at " + ramp(deceleration);
    }

    private String ramp(double acceleration) {
        return Double.isInfinite(acceleration) ? "once" : given.text(Kind.ACCELERATION, acceleration);
    }

    private String range(Kind kind, DoubleStream values) {
        return range(values, si -> given.text(kind, si));
    }

    private String calculated(Kind kind, DoubleStream values) {
        return range(values, si -> texts.of(kind, si));
    }

    private static String range(DoubleStream values, DoubleFunction<String> text) {
        DoubleSummaryStatistics all = values.summaryStatistics();
        String most = text.apply(all.getMax());
        String least = text.apply(all.getMin());
        return least.equals(most) ? most : least + " to " + most;
    }
}
