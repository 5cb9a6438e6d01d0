package runthrough.crosscheck;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/** A described line and its run plan as JSON, SI units; what is infinite or left to its default is null. */
final class LineDocument {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private LineDocument() {}

    static ObjectNode of(Line line, RunPlan plan) {
        ObjectNode document = JSON.objectNode();
        document.put("practice", practice(line.practice()));
        document.set("entry", entry(line.entry()));
        document.set("accumulator", accumulator(line.accumulator()));
        document.set("process", process(line.process()));
        ArrayNode kinds = document.putArray("kinds");
        line.coils().forEach(coil -> kinds.add(coil(coil)));
        document.set("change", change(line.change()));
        ObjectNode run = document.putObject("run");
        if (plan.extent() instanceof Extent.Changes extent) {
            run.put("changes", extent.changes());
        } else if (plan.extent() instanceof Extent.Time extent) {
            run.put("seconds", extent.duration());
        }
        document.put("leave_out", plan.leaveOut());
        return document;
    }

    private static String practice(Practice practice) {
        return practice.isOneStrip() ? practice.words() : "join";
    }

    private static ObjectNode entry(Entry entry) {
        ObjectNode node = JSON.objectNode();
        node.put("uncoilers", entry.uncoilers());
        node.put("top_speed", entry.topSpeed());
        putFinite(node, "acceleration", entry.acceleration());
        putFinite(node, "deceleration", entry.deceleration());
        node.set(
                "creep",
                orNull(entry.creep()
                        .map(creep ->
                                JSON.objectNode().put("speed", creep.speed()).put("length", creep.length()))));
        node.put("uncoiler_path", entry.uncoilerPath());
        return node;
    }

    private static ObjectNode accumulator(Accumulator accumulator) {
        ObjectNode node = JSON.objectNode();
        node.set("form", form(accumulator.form()));
        putFinite(node, "fill_rate_limit", accumulator.ownFillRateLimit());
        node.put("reserve", accumulator.reserve());
        putFinite(node, "overtravel_allowance", accumulator.overtravelAllowance());
        return node;
    }

    private static ObjectNode form(StorageForm form) {
        ObjectNode node = JSON.objectNode();
        if (form instanceof StorageForm.Direct direct) {
            node.put("kind", "direct").put("capacity", direct.capacity());
        } else if (form instanceof StorageForm.Strands strands) {
            node.put("kind", "strands").put("strands", strands.strands()).put("stroke", strands.stroke());
            putFinite(node, "filling_speed", strands.fillingSpeed());
        } else if (form instanceof StorageForm.FreeLoop loop) {
            node.put("kind", "free loop").put("loops", loop.loops()).put("span", loop.span());
            node.put("greatest_sag", loop.greatestSag()).put("least_sag", loop.leastSag());
        } else if (form instanceof StorageForm.Spiral spiral) {
            node.put("kind", "spiral").put("wraps", spiral.wraps());
            node.put("full_diameter", spiral.fullDiameter()).put("empty_diameter", spiral.emptyDiameter());
        } else {
            node.put("kind", "none");
        }
        return node;
    }

    private static ObjectNode process(ProcessSection process) {
        ObjectNode node = JSON.objectNode();
        node.put("speed", process.speed());
        putFinite(node, "acceleration", process.acceleration());
        putFinite(node, "deceleration", process.deceleration());
        putFinite(node, "restart_level", process.restartLevel());
        node.set("slowing", orNull(process.slowing().map(slowing -> {
            ObjectNode slow = JSON.objectNode().put("speed", slowing.speed()).put("level", slowing.level());
            putFinite(slow, "resume_level", slowing.resumeLevel());
            return slow;
        })));
        node.put("own_stops", process.downtime().isPresent());
        node.put("path", process.path());
        node.put("spoilt_per_stop", process.scrapPerStop());
        return node;
    }

    private static ObjectNode coil(Coil coil) {
        ObjectNode node = JSON.objectNode();
        node.put("thickness", coil.thickness()).put("width", coil.width()).put("density", coil.density());
        node.put("head_crop", coil.headCrop()).put("tail_crop", coil.tailCrop());
        putFinite(node, "process_speed", coil.processSpeed().orElse(Double.NaN));
        return node;
    }

    private static ObjectNode change(CoilChange change) {
        ObjectNode node = JSON.objectNode();
        node.put("crew", change.crew());
        List<MeasuredRows> tables = MeasuredRows.in(change);
        ArrayNode rows = node.putArray("rows");
        tables.forEach(table -> rows.add(rows(table)));
        node.set("prepare", elements(change.prepare(), tables));
        node.set("tail", elements(change.tail(), tables));
        node.set("join", elements(change.join(), tables));
        if (change.reject() instanceof Reject.Chance chance) {
            node.putObject("reject").put("chance", chance.p());
        } else if (change.reject() instanceof Reject.Every every) {
            node.putObject("reject").put("every", every.n());
        } else {
            node.putNull("reject");
        }
        return node;
    }

    /** Row by row; null for a blank. */
    private static ArrayNode rows(MeasuredRows measured) {
        ArrayNode table = JSON.arrayNode();
        for (int row = 0; row < measured.count(); row++) {
            ArrayNode cells = table.addArray();
            for (int column = 0; column < measured.width(); column++) {
                double value = measured.value(row, column);
                cells.add(Double.isNaN(value) ? JSON.nullNode() : JSON.numberNode(value));
            }
        }
        return table;
    }

    private static ArrayNode elements(List<WorkElement> elements, List<MeasuredRows> tables) {
        ArrayNode list = JSON.arrayNode();
        for (WorkElement element : elements) {
            ObjectNode node = list.addObject();
            putFinite(
                    node,
                    "travel_speed",
                    element.time() instanceof WorkTime.Travel travel
                            ? travel.speed().at(0)
                            : Double.NaN);
            if (element.time() instanceof WorkTime.FromRows from) {
                node.putObject("measured")
                        .put("rows", tables.indexOf(from.rows()))
                        .put("column", from.column())
                        .put("factor", from.factor());
            } else {
                node.putNull("measured");
            }
            if (element.occurrence() instanceof Occurrence.Every every) {
                node.put("every", every.n());
            } else {
                node.putNull("every");
            }
            node.put("chance", element.occurrence() instanceof Occurrence.Chance);
            node.put("redo", element.redo());
        }
        return list;
    }

    private static void putFinite(ObjectNode node, String name, double value) {
        if (Double.isFinite(value)) {
            node.put(name, value);
        } else {
            node.putNull(name);
        }
    }

    private static JsonNode orNull(Optional<ObjectNode> node) {
        return node.isPresent() ? node.orElseThrow() : JSON.nullNode();
    }
}
