package runthrough.report.described;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.ProcessSection;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Rounding;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;

/** All values of a described line by what they are called, to be held against those of another. */
final class DescribedValues {
    private static final String ACCUMULATOR = "Accumulator";

    /** How the values of a part are called besides; those of other parts are named fully by themselves. */
    private static final Map<String, String> PARTS =
            Map.of("Entry section", "entry ", ACCUMULATOR, "accumulator ", "Process section", "process ");

    private static final Set<String> NAMED_FULLY = Set.of("Uncoilers", "Strip", "Joints", "Length", "Repair", "Speed");

    private static final Set<String> MAIN =
            Set.of("Uncoilers", "Top speed", "Usable capacity", "Reserve", "Rejected joints");

    private static final String JOINT = "Joint";

    /** What a line without a joiner has no use for. */
    private static final Set<String> OF_A_JOINT =
            Set.of("Restart delay", "Rejected joints", "Taken off every pass of the join work");

    private final SimulationRequest request;
    private final InputTexts texts;
    private final Map<Name, Value> all = new LinkedHashMap<>();

    /**
     * What a value is called.
     *
     * @param part of the line that it is of, which another line may lack
     * @param within the part that this one belongs to; empty for the line
     * @param words in the terms of the trade
     */
    record Name(String part, String within, String words) {}

    /**
     * A value.
     *
     * @param text with its unit
     * @param given whether it was described, or follows from what was
     * @param main whether it says what the part is where another line lacks it
     */
    record Value(String text, boolean given, boolean main) {}

    private DescribedValues(SimulationRequest request, InputTexts texts) {
        this.request = request;
        this.texts = texts;
    }

    /** Those of {@code request}, in the order of its tables. */
    static Map<Name, Value> of(SimulationRequest request, InputTexts texts) {
        DescribedValues values = new DescribedValues(request, texts);
        values.add("", "", "practice", new Value(request.line().practice().words(), true, true));
        InputTables.of(request).stream().filter(DescribedValues::isPairs).forEach(values::pairs);
        values.coils();
        values.work();
        return values.all;
    }

    private void add(String part, String within, String words, Value value) {
        all.put(new Name(part, within, words), value);
    }

    private static boolean isPairs(Table table) {
        return table.columns().stream().map(Column::heading).allMatch(String::isEmpty);
    }

    private void pairs(Table table) {
        table.rows().forEach(row -> {
            String name = row.get(0).text();
            if (!name.equals("Practice")) {
                String part = OF_A_JOINT.contains(name) ? JOINT : table.caption();
                String text = row.get(1).text();
                boolean isMain = MAIN.contains(name) && !text.equals("none");
                add(part, "", words(table.caption(), name), new Value(text, isGiven(name), isMain));
            }
        });
    }

    private static String words(String table, String name) {
        if (table.equals(ACCUMULATOR) && name.equals("Usable capacity")) {
            return "accumulator capacity";
        }
        String part = NAMED_FULLY.stream().anyMatch(name::startsWith) ? "" : PARTS.getOrDefault(table, "");
        return part + name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** Levels that are not described follow from the others. */
    private boolean isGiven(String name) {
        ProcessSection process = request.line().process();
        return switch (name) {
            case "Stop level" -> false;
            case "Restart level" -> !Double.isNaN(process.restartLevel());
            case "Resumes from a level of" ->
                process.slowing()
                        .map(slowing -> !Double.isNaN(slowing.resumeLevel()))
                        .orElse(false);
            default -> true;
        };
    }

    private void coils() {
        Table table = CoilsTable.of(request.line(), texts);
        add("Coils", "", "coils", new Value(CoilsTable.order(request.line()), true, true));
        boolean isOne = table.rows().size() == 1;
        for (int row = 0; row < table.rows().size(); row++) {
            String coil = table.rows().get(row).get(0).text();
            String name = isOne ? "coil" : "coil " + (coil.isEmpty() ? row + 1 : coil);
            for (int i = 1; i < table.columns().size(); i++) {
                String what = table.columns().get(i).heading().toLowerCase(Locale.ROOT);
                Cell cell = table.rows().get(row).get(i);
                add(name, "Coils", name + " " + what, new Value(cell.text(), true, what.equals("size")));
            }
            String product = request.line().coils().get(row).product();
            add(name, "Coils", name + " product", new Value(product, true, false));
        }
    }

    private void work() {
        Line line = request.line();
        InputTexts rounded = new InputTexts(texts.system(), Rounding.CERTAIN);
        LineFigure.JOINT_CYCLE_TIME
                .of(line)
                .ifPresent(mean -> add(
                        JOINT,
                        "",
                        "mean time of the work on the standing strip",
                        new Value(rounded.text(Kind.TIME, mean), false, true)));
        Map<String, Integer> seen = new HashMap<>();
        for (WorkTable.Row row : WorkTable.rows(line, texts)) {
            String name = row.list().equals(WorkTable.PREPARE) ? "preparation: " + row.name() : row.name();
            int number = seen.merge(row.list() + row.name(), 1, Integer::sum);
            element(row, number == 1 ? name : name + " (" + WorkTable.ordinal(number) + ")");
        }
    }

    private void element(WorkTable.Row row, String name) {
        boolean prepares = row.list().equals(WorkTable.PREPARE);
        boolean isRethread = row.list().equals(WorkTable.STANDING);
        String within = prepares || isRethread ? "" : JOINT;
        String part = row.list() + ": " + name;
        add(part, within, name + ", time", new Value(row.time().text(), true, true));
        if (isRethread) {
            return;
        }
        attribute(part, within, name + ", done", row.done(), "always");
        attribute(part, within, name + ", people", row.people(), "1");
        attribute(part, within, name + ", again after a reject", row.again() ? "yes" : "no", prepares ? "no" : "yes");
    }

    /** Of an element that another line lacks it is of account where it is not as usual. */
    private void attribute(String part, String within, String words, String text, String usual) {
        add(part, within, words, new Value(text, true, !text.equals(usual)));
    }
}
