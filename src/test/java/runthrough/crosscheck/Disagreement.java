package runthrough.crosscheck;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import runthrough.plant.Line;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.ProcessedScrap;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.WorkRecord;

/** Where the results of the two engines for one case differ, and by how much. */
final class Disagreement {
    /** Relative to the value, or absolute for values below 1: room for rounding, none for another rule. */
    static final double TOLERANCE = 1e-6;

    /** What the second engine calls otherwise. */
    private static final Map<String, String> NAMES_THERE = Map.of(
            "downtimes", "ownStops",
            "downtimeSeconds", "ownStopSeconds",
            "jointBreaks", "breaks");

    /** What is compared in another form. */
    private static final List<String> OTHERWISE = List.of("paidSecondsByShift", "tailCoil", "headCoil");

    private final List<String> found = new ArrayList<>();
    private double greatest;

    private Disagreement() {}

    /** Both refused the line, in whatever words, or {@code why} they did not. */
    static Disagreement refused(String why) {
        Disagreement disagreement = new Disagreement();
        if (!why.isEmpty()) {
            disagreement.found.add(why);
        }
        return disagreement;
    }

    static Disagreement between(Line line, Replication ours, JsonNode theirs) {
        Disagreement disagreement = new Disagreement();
        disagreement.changes(line, new Judged(line), ours.changes(), theirs.path("changes"));
        disagreement.work(ours.work(), theirs.path("work"));
        disagreement.row("totals", ours.totals(), theirs.path("totals"));
        disagreement.output(ours.totals(), theirs.path("totals"));
        disagreement.paid(ours.totals().paidSecondsByShift(), theirs.path("shifts"));
        double balance = theirs.path("balance").doubleValue();
        if (!(Math.abs(balance) <= TOLERANCE)) {
            disagreement.found.add("the second engine lost " + balance + " m of strip");
        }
        disagreement.greatest = Math.max(disagreement.greatest, Math.abs(balance));
        return disagreement;
    }

    /** What differs, in words; empty when the engines agree. */
    List<String> found() {
        return found;
    }

    /** The greatest difference of a number, over its value where that is above 1; infinite where anything else differs. */
    double greatest() {
        return found.isEmpty() || greatest > TOLERANCE ? greatest : Double.POSITIVE_INFINITY;
    }

    private void changes(Line line, Judged judged, List<ChangeRecord> ours, JsonNode theirs) {
        if (ours.size() != theirs.size()) {
            found.add("changes: " + ours.size() + " here, " + theirs.size() + " there");
        }
        for (int i = 0; i < Math.min(ours.size(), theirs.size()); i++) {
            String what = "change " + ours.get(i).number();
            JsonNode there = theirs.get(i);
            row(what, ours.get(i), there);
            kind(what + ", ending coil", line, ours.get(i).tailCoil(), there.path("tailCoil"));
            kind(what + ", next coil", line, ours.get(i).headCoil(), there.path("headCoil"));
            judged.of(ours.get(i)).forEach((name, value) -> compare(what + ", " + name, value, there.path(name)));
        }
    }

    private void row(String what, Record ours, JsonNode theirs) {
        for (RecordComponent component : ours.getClass().getRecordComponents()) {
            String name = NAMES_THERE.getOrDefault(component.getName(), component.getName());
            compare(what + ", " + component.getName(), valueOf(component, ours), theirs.path(name));
        }
    }

    static Object valueOf(RecordComponent component, Record row) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(row);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** A schedule names a kind of coil once for each row here, and once there; its name says which it is there. */
    private void kind(String what, Line line, int ours, JsonNode theirs) {
        String name = "coil " + (theirs.intValue() + 1);
        if (!line.coils().get(ours).name().equals(name)) {
            found.add(what + ": " + line.coils().get(ours).name() + " here, " + name + " there");
        }
    }

    /** What follows from the totals. */
    private void output(Totals ours, JsonNode theirs) {
        ProcessedScrap scrap = ours.processedScrap();
        compare("scrap of stops", scrap.stopMetres(), theirs.path("spoiltMetres"));
        compare("scrap of joints", scrap.jointMetres(), theirs.path("cutMetres"));
        compare("scrap of breaks", scrap.breakMetres(), theirs.path("breakScrapMetres"));
        compare("scrap of processed strip", scrap.kilograms(), theirs.path("spoiltKilograms"));
        compare("good metres", ours.goodMetres(), theirs.path("goodMetres"));
        compare("good kilograms", ours.goodKilograms(), theirs.path("goodKilograms"));
        compare("paid seconds", ours.paidSeconds(), theirs.path("paidSeconds"));
        if (ours.scrapKilograms() > 0) {
            compare("share of scrap", ours.scrapShare(), theirs.path("scrapShare"));
        }
    }

    private void paid(List<Double> ours, JsonNode theirs) {
        if (ours.size() != theirs.size()) {
            found.add("shifts: " + ours.size() + " here, " + theirs.size() + " there");
        }
        for (int i = 0; i < Math.min(ours.size(), theirs.size()); i++) {
            compare("shift " + (i + 1) + ", paid", ours.get(i), theirs.path(i).path("paidSeconds"));
        }
    }

    private void compare(String what, Object ours, JsonNode theirs) {
        if (ours instanceof Optional
                || ours instanceof ProcessedScrap
                || OTHERWISE.stream().anyMatch(what::endsWith)) {
            return; // What this engine keeps in another form; what follows from it is compared.
        } else if (ours instanceof List<?> putDown) {
            putDown(what, putDown, theirs);
        } else if (theirs.isMissingNode()) {
            found.add(what + ": missing there");
        } else if (ours instanceof Number number) {
            number(what, number.doubleValue(), theirs.doubleValue());
        } else if (!ours.toString().equals(theirs.asText())) {
            found.add(what + ": " + ours + " here, " + theirs.textValue() + " there");
        }
    }

    private void putDown(String what, List<?> ours, JsonNode theirs) {
        if (ours.size() != theirs.size()) {
            found.add(what + ": " + ours + " here, " + theirs + " there");
            return;
        }
        for (int i = 0; i < ours.size(); i++) {
            WorkRecord.PutDown here = (WorkRecord.PutDown) ours.get(i);
            number(what, here.from(), theirs.path(i).path(0).doubleValue());
            number(what, here.to(), theirs.path(i).path(1).doubleValue());
        }
    }

    private void number(String what, double ours, double theirs) {
        // The same where both are infinite, or both are no number.
        double difference =
                Double.compare(ours, theirs) == 0 ? 0 : Math.abs(ours - theirs) / Math.max(1, Math.abs(ours));
        if (difference <= TOLERANCE) {
            greatest = Math.max(greatest, difference);
        } else {
            found.add(what + ": " + ours + " here, " + theirs + " there");
        }
    }

    /**
     * Every element that ended; those that begin at one instant may be listed either way round, and whether one under way
     * at the end of the run is listed says nothing about the line.
     */
    private void work(List<WorkRecord> ours, JsonNode theirs) {
        Map<String, WorkRecord> here = new TreeMap<>();
        ours.stream().filter(work -> !Double.isNaN(work.end())).forEach(work -> here.put(key(work), work));
        Map<String, JsonNode> there = new TreeMap<>();
        for (JsonNode work : theirs) {
            if (!Double.isNaN(work.path("end").doubleValue())) {
                there.put(key(work), work);
            }
        }
        if (!here.keySet().equals(there.keySet())) {
            found.add("work elements: " + here.keySet() + " here, " + there.keySet() + " there");
        }
        here.forEach((key, work) -> {
            if (there.containsKey(key)) {
                row(key, work, there.get(key));
            }
        });
    }

    private static String key(WorkRecord work) {
        return key(work.change(), work.pass(), work.list().name(), work.element());
    }

    private static String key(JsonNode work) {
        return key(
                work.path("change").intValue(),
                work.path("pass").intValue(),
                work.path("list").textValue(),
                work.path("element").intValue());
    }

    private static String key(int change, int pass, String list, int element) {
        return String.format(Locale.ROOT, "change %d, pass %d, %s %d", change, pass, list, element + 1);
    }
}
