package runthrough.web;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.CoilChange;
import runthrough.plant.LineFigure;
import runthrough.plant.Practice;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Raw;

/**
 * A scenario as the page shows it: its fields, its work and its shape; or what is wrong with it.
 *
 * @param problems why it cannot be run; none where it can
 * @param fields its numbers; those of the figures of the line first
 * @param work elements by list; a list that the practice does not have is not there
 * @param look its shape; null where it cannot be run
 * @param system units that the scenario itself asks for: {@code metric} or {@code us}
 * @param units symbol and factor of each kind that the page shows
 * @param axes what a map may go over
 * @param alternatives that the file names, each with its changes
 * @param mapX what a map goes over across at first
 * @param mapY and upwards
 */
record LineView(
        String title,
        List<Fault> problems,
        List<FieldView> fields,
        Map<String, List<WorkView>> work,
        @Nullable LookView look,
        String system,
        Map<String, UnitView> units,
        List<AxisView> axes,
        List<AlternativeView> alternatives,
        String mapX,
        String mapY) {

    LineView {
        problems = List.copyOf(problems);
        fields = List.copyOf(fields);
        axes = List.copyOf(axes);
        alternatives = List.copyOf(alternatives);
    }

    /** Something wrong: with what, and in words with and without its place. */
    record Fault(String path, int line, int column, String message, String whole) {
        static Fault of(Problem problem) {
            String value = problem.value().isEmpty() ? "" : problem.value() + "; ";
            return new Fault(
                    problem.path(),
                    problem.line(),
                    problem.column(),
                    value + problem.rule() + ". " + problem.remedy(),
                    PageScenario.said(problem));
        }
    }

    /** A unit: its symbol and how many of it an SI unit is. */
    record UnitView(String symbol, double per) {
        static UnitView of(Kind kind, UnitSystem system) {
            Unit unit = Units.of(system).unit(kind);
            return new UnitView(unit.symbol(), unit.fromSi(1));
        }
    }

    /** Something a map may go over. */
    record AxisView(String path, String name) {}

    static LineView of(PageScenario draft, UnitSystem system) {
        if (draft.request().isEmpty()) {
            return refused(draft.problems().stream().map(Fault::of).toList(), system);
        }
        SimulationRequest request = draft.request().get();
        List<FieldView> fields = FieldView.all(draft, system);
        List<AxisView> axes = fields.stream()
                .filter(field -> !field.whole() && field.si() > 0)
                .map(field -> new AxisView(field.path(), field.name()))
                .toList();
        return new LineView(
                request.title(),
                List.of(),
                Stream.concat(
                                fields.stream()
                                        .filter(FieldView::quick)
                                        .sorted(Comparator.comparing(field -> FieldView.QUICK.indexOf(field.path()))),
                                fields.stream().filter(field -> !field.quick()))
                        .toList(),
                work(request, draft),
                LookView.of(request),
                PageRequest.name(draft.ownUnits().orElse(system)),
                units(system),
                axes,
                AlternativeView.all(draft.file()),
                LineFigure.RATED_SPEED.path(),
                LineFigure.standingTime(request.line()).path());
    }

    /** What the page is given of a scenario that cannot be run. */
    static LineView refused(List<Fault> faults, UnitSystem system) {
        return new LineView("", faults, List.of(), Map.of(), null, "", units(system), List.of(), List.of(), "", "");
    }

    private static Map<String, UnitView> units(UnitSystem system) {
        return Map.of("length", UnitView.of(Kind.LENGTH, system), "speed", UnitView.of(Kind.SPEED, system));
    }

    private static Map<String, List<WorkView>> work(SimulationRequest request, PageScenario draft) {
        Map<String, List<WorkView>> work = new LinkedHashMap<>();
        CoilChange change = request.line().change();
        put(work, "prepare", change.prepare(), draft, request);
        if (request.line().practice().hasJoiner()) {
            put(work, "tail", change.tail(), draft, request);
            put(work, "join", change.join(), draft, request);
        } else {
            putRethread(work, draft, request);
        }
        return work;
    }

    /** A rethread is one element, whose name is its key. */
    private static void putRethread(Map<String, List<WorkView>> work, PageScenario draft, SimulationRequest request) {
        String key = Practice.Rethread.ELEMENT;
        list(draft, key).ifPresent(written -> {
            Raw item = new Raw.Mapping(List.of(new Raw.Entry(key, written.place(), written)), written.place());
            work.put(
                    key,
                    WorkView.all(
                            request.line().work().join(),
                            new Raw.Sequence(List.of(item), written.place()),
                            any -> from(draft, "coil-change." + key),
                            request.line(),
                            request.resultsIn()));
        });
    }

    /** A list that is not written is shown as empty, so that something can be added to it. */
    private static void put(
            Map<String, List<WorkView>> work,
            String list,
            List<WorkElement> elements,
            PageScenario draft,
            SimulationRequest request) {
        Optional<Raw> written = list(draft, list);
        if (written.isEmpty()) {
            work.put(list, List.of());
        } else if (written.get() instanceof Raw.Sequence sequence
                && sequence.items().size() == elements.size()) {
            work.put(
                    list,
                    WorkView.all(
                            elements,
                            sequence,
                            name -> from(draft, "coil-change." + list + "." + name),
                            request.line(),
                            request.resultsIn()));
        }
    }

    private static String from(PageScenario draft, String path) {
        return draft.handover().originOf(path).orElse("");
    }

    private static Optional<Raw> list(PageScenario draft, String key) {
        return draft.text().raw().flatMap(root -> child(root, "coil-change")).flatMap(change -> child(change, key));
    }

    private static Optional<Raw> child(Raw raw, String key) {
        return raw instanceof Raw.Mapping mapping
                ? mapping.entries().stream()
                        .filter(entry -> entry.key().equals(key))
                        .map(Raw.Entry::value)
                        .findFirst()
                : Optional.empty();
    }
}
