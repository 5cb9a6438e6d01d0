package runthrough.crosscheck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.WorkRecord.WorkList;
import runthrough.study.cause.CauseFinder;
import runthrough.study.cause.Reason;
import runthrough.study.margin.StripMargin;

/** What the studies make of a coil change, by the names of the second engine. */
final class Judged {
    private final Line line;

    Judged(Line line) {
        this.line = line;
    }

    /** Margins (m, NaN where there is none) and cause of {@code change}. */
    Map<String, Object> of(ChangeRecord change) {
        Map<String, Object> judged = new LinkedHashMap<>();
        boolean stores = !line.practice().isOneStrip();
        boolean slows = stores && line.process().slowing().isPresent();
        StripMargin margins = new StripMargin(line);
        judged.put("margin", stores ? margins.toStop(change) : Double.NaN);
        judged.put("marginToSlowing", slows ? margins.metres(change) : Double.NaN);
        judged.put("marginWithoutStop", stores ? margins.metresWithoutStop(change) : Double.NaN);
        Optional<Reason> reason = stores ? new CauseFinder(line).reasonOf(change) : Optional.empty();
        judged.put("cause", reason.map(found -> found.cause().words()).orElse("null"));
        judged.put(
                "causeElement", reason.flatMap(Reason::element).map(this::name).orElse("null"));
        return judged;
    }

    private String name(Reason.Element element) {
        return element.list().name().toLowerCase(Locale.ROOT) + "/"
                + SourceNames.of(line.practice(), element.list(), elements(element.list()))
                        .get(element.place())
                        .element();
    }

    private List<WorkElement> elements(WorkList list) {
        return switch (list) {
            case PREPARE -> line.change().prepare();
            case TAIL -> line.change().tail();
            case JOIN -> line.change().join();
        };
    }
}
