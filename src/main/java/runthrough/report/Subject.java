package runthrough.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;

/**
 * What an answer is about: a line as a scenario describes it, or a sheet of times.
 *
 * @param title of it
 * @param notes what the reader should know of the question: the user's own words
 * @param origin what the fingerprint is of, such as {@code scenario file}
 * @param described what was given, as tables
 * @param members of JSON
 * @param seed of the random numbers
 */
public record Subject(
        String title, List<String> notes, String origin, List<Table> described, JsonFields members, long seed) {
    public Subject {
        notes = List.copyOf(notes);
        described = List.copyOf(described);
    }

    private record Asked(SimulationRequest request, Provenance provenance) {
        RunPlan run() {
            return request.run();
        }
    }

    private static final JsonShape<Asked> SCENARIO = JsonShape.<Asked>named("scenario")
            .text("title", "Title of the scenario.", asked -> asked.request().title())
            .optionalText(
                    "sha256",
                    "SHA-256 of the scenario file's bytes in hexadecimal.",
                    asked -> asked.provenance().fingerprint())
            .texts(
                    "changes",
                    "What was set otherwise than the scenario file says, in words.",
                    asked -> asked.provenance().changes())
            .optionalText(
                    "date",
                    "Date as given by the user.",
                    asked -> asked.provenance().date())
            .optionalCount(
                    "coil_changes",
                    "Coil changes that end a replication; null when time does.",
                    asked -> asked.run().extent() instanceof RunPlan.Extent.Changes changes
                            ? Optional.of((long) changes.changes())
                            : Optional.empty())
            .optionalNumber(
                    "duration_s",
                    "Time that ends a replication; null when coil changes do.",
                    asked -> asked.run().extent() instanceof RunPlan.Extent.Time time
                            ? OptionalDouble.of(time.duration())
                            : OptionalDouble.empty())
            .count(
                    "left_out",
                    "First coil changes of each replication left out of all numbers.",
                    asked -> asked.run().leaveOut())
            .count(
                    "replications",
                    "Independent repetitions that the scenario asks for.",
                    asked -> asked.run().replications())
            .count("seed", "Seed of the random numbers.", asked -> asked.run().seed());

    private static final JsonShape<Asked> OF_LINE =
            JsonShape.<Asked>named("subject").in("scenario", "What was run.", SCENARIO, asked -> asked);

    /** Members that say what line was asked about. */
    public static final JsonShape<?> OF_LINES = OF_LINE;

    /** The line of {@code request}; {@code described} are its numbers. */
    public static Subject line(SimulationRequest request, List<Table> described, Provenance provenance) {
        return new Subject(
                request.title(),
                request.notes(),
                "scenario file",
                described,
                OF_LINE.fields(new Asked(request, provenance), true),
                request.run().seed());
    }
}
