package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Coil;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Units;

/** The parts of a line in words with their numbers, one row for each number in its drawing. */
final class LineWords {
    private final Line line;
    private final HandCalculation hand;
    private final Units units;

    private LineWords(SimulationRequest request, HandCalculation hand) {
        this.line = request.line();
        this.hand = hand;
        this.units = Units.of(request.resultsIn());
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
                + range(Kind.LENGTH, line.coils().stream().mapToDouble(Coil::meanLength))
                + " long, "
                + range(Kind.MASS, line.coils().stream().mapToDouble(coil -> coil.meanLength() * coil.massPerMetre()))
                + ", strip " + range(Kind.THICKNESS, line.coils().stream().mapToDouble(Coil::thickness)) + " x "
                + range(Kind.WIDTH, line.coils().stream().mapToDouble(Coil::width));
        if (entry.uncoilerPath() > 0) {
            text += "; " + units.text(Kind.LENGTH, entry.uncoilerPath()) + " of strip to the joiner";
        }
        return text + ".";
    }

    private String joiner() {
        String time = units.text(Kind.TIME, hand.joint().total()) + " by mean times, crew of "
                + line.change().crew();
        if (!line.practice().hasJoiner()) {
            return "No joiner: the line is threaded anew in " + time + ".";
        }
        Entry entry = line.entry();
        return "Joiner: strip stands for " + time + "; entry up to " + units.text(Kind.SPEED, entry.topSpeed()) + ", "
                + ramps(entry.acceleration(), entry.deceleration())
                + entry.creep()
                        .map(creep -> ", creep " + units.text(Kind.SPEED, creep.speed()) + " for the last "
                                + units.text(Kind.LENGTH, creep.length()))
                        .orElse("")
                + ".";
    }

    private String accumulator() {
        StorageForm form = line.accumulator().form();
        String how = "";
        if (form instanceof StorageForm.Strands strands) {
            how = " = " + strands.strands() + " x " + units.text(Kind.LENGTH, strands.stroke());
        } else if (form instanceof StorageForm.FreeLoop loop) {
            how = loop.loops() == 1 ? " in a free loop" : " in " + loop.loops() + " free loops";
        } else if (form instanceof StorageForm.Spiral spiral) {
            how = " in " + Numbers.text(spiral.wraps()) + " wraps of a spiral";
        }
        double limit = line.accumulator().fillRateLimit();
        return "Accumulator: holds "
                + units.text(Kind.LENGTH, line.accumulator().capacity()) + how + ", reserve "
                + units.text(Kind.LENGTH, line.accumulator().reserve())
                + (Double.isFinite(limit)
                        ? ", fills at most " + units.text(Kind.SPEED, limit) + " faster than it gives"
                        : "")
                + ".";
    }

    private String process() {
        ProcessSection process = line.process();
        return "Process: " + range(Kind.SPEED, line.coils().stream().mapToDouble(line::ratedSpeed)) + ", "
                + ramps(process.acceleration(), process.deceleration())
                + (process.path() > 0 ? ", " + units.text(Kind.LENGTH, process.path()) + " of strip before it" : "")
                + ".";
    }

    private String ramps(double acceleration, double deceleration) {
        if (Double.isInfinite(acceleration) && Double.isInfinite(deceleration)) {
            return "speeds change at once";
        }
        return "speeds up at " + ramp(acceleration) + ", slows at " + ramp(deceleration);
    }

    private String ramp(double acceleration) {
        return Double.isInfinite(acceleration)
                ? "once"
                : units.text(Kind.ACCELERATION, acceleration).replaceAll("s2$", "s²");
    }

    private String range(Kind kind, DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        String most = units.text(kind, sorted[sorted.length - 1]);
        String least = units.text(kind, sorted[0]);
        return least.equals(most) ? most : least + " to " + most;
    }
}
