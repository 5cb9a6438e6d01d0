/**
 * Scenario files: a strip line as an engineer writes it, in YAML with units, read into {@link runthrough.plant.SimulationRequest}.
 *
 * <p>Main types: {@link runthrough.scenario.ScenarioFile} reads a file into a {@link
 * runthrough.scenario.ScenarioReading}. The classes named {@code ...Keys} say what may be written, each for one section:
 * its keys and how they become a part of the line. Reading, JSON Schema and listing all come from them.
 *
 * <p>Units: whatever the user wrote becomes SI here and nowhere else. Invariants: a scenario is either accepted whole or
 * refused with everything that is wrong with it, and nothing that a file holds leads to an exception.
 */
@NullMarked
package runthrough.scenario;

import org.jspecify.annotations.NullMarked;
