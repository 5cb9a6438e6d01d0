package runthrough.crosscheck;

import com.fasterxml.jackson.databind.JsonNode;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;

/** A line to run, and how, as the second engine's document of it says; its name says what it is about. */
record Case(JsonNode document) {

    /** What this engine makes of it. */
    Replication run() {
        int replication = document.path("replication").intValue();
        return LineSimulator.of(DescribedLine.line(document), DescribedLine.plan(document))
                .run(replication, Detail.ELEMENTS);
    }

    @Override
    public String toString() {
        return document.path("name").textValue();
    }
}
