package runthrough.crosscheck;

import runthrough.plant.Line;
import runthrough.plant.RunPlan;

/** A line to run, and how; {@code name} says what it is about. */
record Case(String name, Line line, RunPlan plan) {

    @Override
    public String toString() {
        return name;
    }
}
