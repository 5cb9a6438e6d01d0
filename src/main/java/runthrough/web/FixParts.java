package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.Shifts;
import runthrough.plant.SimulationRequest;
import runthrough.report.lever.LeverWords;
import runthrough.scenario.ScenarioText;
import runthrough.study.cause.Reason;
import runthrough.study.cause.Without;
import runthrough.study.lever.LeverChange;

/** A lever set to another value, as parts of the scenario. */
final class FixParts {
    private static final String CREW = "coil-change.crew";

    private final LeverChange change;
    private final Line line;
    private final double value;
    private final String written;

    private FixParts(LeverChange change, SimulationRequest request) {
        this.change = change;
        this.line = request.line();
        this.value = change.value();
        this.written = LeverWords.of(request).value(change.lever(), value);
    }

    /** Those that make {@code changes} of the line of {@code request}, all together. */
    static List<PageRequest.Part> of(List<LeverChange> changes, SimulationRequest request) {
        return changes.stream()
                .flatMap(change -> new FixParts(change, request).all().stream())
                .toList();
    }

    private List<PageRequest.Part> all() {
        CoilChange work = line.change();
        return switch (change.lever().what()) {
            case CAPACITY ->
                change.strand().isPresent()
                        ? one(
                                "accumulator.strands",
                                Long.toString(Math.round(value / change.strand().getAsDouble())))
                        : one(LineFigure.USABLE_CAPACITY.path(), written);
            case PROCESS_SPEED -> one(LineFigure.RATED_SPEED.path(), written);
            case JOINT_CYCLE_TIME ->
                ScenarioText.standing(line, line.withEveryPassLongerBy(value)).stream()
                        .map(PageRequest.Part::of)
                        .toList();
            case REJECTS -> rejects(work.reject());
            case ENTRY_TOP_SPEED -> one("entry.top-speed", written);
            case UNCOILERS -> one("entry.uncoilers", written);
            case CREW ->
                work.shifts()
                        .map(shifts -> crews(shifts, shifts.withLargestCrew((int) Math.round(value))))
                        .orElseGet(() -> one(CREW, written));
            case ELEMENT -> shorter(change.lever().element().orElseThrow());
            // How long coils are is not for the line to say, and it is among no fixes.
            case COIL_LENGTH -> List.of();
        };
    }

    private static List<PageRequest.Part> one(String path, String value) {
        return List.of(new PageRequest.Part(path, value));
    }

    private List<PageRequest.Part> rejects(Reject now) {
        if (now instanceof Reject.Chance) {
            return one("coil-change.reject.chance", written);
        }
        return value > 0
                ? one("coil-change.reject.every", Long.toString((long) Math.ceil(1 / value - 1e-9)))
                : one("coil-change.reject", "{chance: 0 %}");
    }

    private List<PageRequest.Part> shorter(Reason.Element element) {
        String path = "coil-change." + element.list().name().toLowerCase(Locale.ROOT) + "[" + (element.place() + 1)
                + "].shorter-by";
        return one(
                path,
                ScenarioText.seconds(
                        value + Without.element(line.change(), element).off()));
    }

    private static List<PageRequest.Part> crews(Shifts now, Shifts then) {
        List<PageRequest.Part> parts = new ArrayList<>();
        for (int i = 0; i < now.list().size(); i++) {
            String shift = "coil-change.shifts[" + (i + 1) + "]";
            add(parts, shift, now.list().get(i).crew(), then.list().get(i).crew());
            for (int j = 0; j < now.list().get(i).breaks().size(); j++) {
                add(
                        parts,
                        shift + ".breaks[" + (j + 1) + "]",
                        now.list().get(i).breaks().get(j).crew(),
                        then.list().get(i).breaks().get(j).crew());
            }
        }
        return parts;
    }

    private static void add(List<PageRequest.Part> parts, String path, int now, int then) {
        if (now != then) {
            parts.add(new PageRequest.Part(path + ".crew", Integer.toString(then)));
        }
    }
}
