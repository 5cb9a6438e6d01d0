/**
 * Runs a described line through its coil changes, event by event.
 *
 * <p>A line is described with {@link runthrough.plant.builder.LineBuilder}, checked as a whole, and run by {@link
 * runthrough.simulation.LineSimulator}, which is where to begin. All numbers are SI.
 *
 * <pre>{@code
 * import runthrough.plant.*;
 * import runthrough.plant.builder.LineBuilder;
 * import runthrough.plant.check.CheckedLine;
 * import runthrough.simulation.*;
 * import runthrough.simulation.records.*;
 *
 * public class Example {
 *     public static void main(String[] arguments) {
 *         CheckedLine line = new LineBuilder()
 *                 .coil("strip", 0.002, 1.25, 7850, Distribution.constant(600)) // m, m, kg/m3, m
 *                 .entry(2.5, 0.4, 0.5) // m/s, m/s2, m/s2
 *                 .capacity(200) // m
 *                 .process(1.5, 0.2, 0.5) // m/s, m/s2, m/s2
 *                 .join("weld", Distribution.constant(80)) // s
 *                 .build();
 *         RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(100), 1, 1, 42, 0.99);
 *         Replication run = new LineSimulator(line, plan).run(0, Detail.CHANGES);
 *         ChangeRecord change = run.changes().get(0);
 *         System.out.println("joint cycle time " + change.jointCycleTime() + " s");
 *         System.out.println("strip drawn " + change.stripDrawn() + " m");
 *         System.out.println("lowest above the stop level " + change.lowestAboveStopLevel() + " m");
 *         System.out.println("share run through " + run.totals().shareRunThrough());
 *     }
 * }
 * }</pre>
 *
 * <p>Main types: {@link runthrough.simulation.LineSimulator} runs replications; {@link runthrough.simulation.Replication} is
 * what one gives. Behind them {@code LineRun} leads one replication through the rooms, each a package:
 *
 * <ul>
 *   <li>{@link runthrough.simulation.calendar}: the clock, and the order of simultaneous events.
 *   <li>{@link runthrough.simulation.motion}: speeds and level, entry section, process section, what is watched for.
 *   <li>{@link runthrough.simulation.work}: people, elements of work, joints that are made again.
 *   <li>{@link runthrough.simulation.random}: random numbers, and what is drawn with them.
 *   <li>{@link runthrough.simulation.account}: totals and records while the run lasts; it sees the line and never moves it.
 *   <li>{@link runthrough.simulation.records}: what a run gives.
 * </ul>
 *
 * <p>Motion and work know nothing of each other; {@code LineRun} passes T0, T1 and T2 from one to the other. The
 * rules, with their identifiers, stand in {@code src/docs/model.md}; the class that implements a rule names it. Units: SI.
 *
 * <p>Invariants: the same seed and index give the same result on any thread. No state is shared between replications.
 */
@NullMarked
package runthrough.simulation;

import org.jspecify.annotations.NullMarked;
