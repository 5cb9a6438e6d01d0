package runthrough.simulation;

import java.util.List;
import java.util.Optional;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.WorkRecord;

/**
 * What one replication gave.
 *
 * @param index of the replication, from 0
 * @param totals sums over the coil changes that count
 * @param changes one record for each of them, in order
 * @param work every work element, when asked for, in order of its start; all coil changes, left out or not
 * @param trace every breakpoint, when asked for, from time 0
 */
public record Replication(
        int index, Totals totals, List<ChangeRecord> changes, List<WorkRecord> work, Optional<Trace> trace) {}
