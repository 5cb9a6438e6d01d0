package runthrough.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import runthrough.cli.option.Choice;
import runthrough.cli.option.WholeNumber;
import runthrough.plant.RunPlan;
import runthrough.quantity.UnitSystem;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.Setting;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/** What a command line may say otherwise than the scenario does. */
final class RunOverrides {
    /** So many replications can be asked for. */
    static final int MOST_REPLICATIONS = 100_000;

    /** In the place of a file, where a value came by this option. */
    static final String SET = "--set";

    private static final String ALTERNATIVE = "--alternative";

    @Option(
            names = "--coil-changes",
            paramLabel = "N",
            converter = CoilChanges.class,
            description = "Coil changes of each replication, instead of what the scenario says.")
    private @Nullable Long coilChanges;

    @Option(
            names = "--replications",
            paramLabel = "N",
            converter = Replications.class,
            description = "Independent repetitions, instead of what the scenario says.")
    private @Nullable Long replications;

    @Option(
            names = "--leave-out",
            paramLabel = "N",
            converter = LeaveOut.class,
            description =
                    "First coil changes of each replication left out of all numbers, instead of what the scenario says.")
    private @Nullable Long leaveOut;

    @Option(
            names = "--seed",
            paramLabel = "N",
            converter = Seed.class,
            description = "Seed of the random numbers, instead of the scenario's. The same seed gives the same bytes.")
    private @Nullable Long seed;

    @Option(
            names = "--results-in",
            paramLabel = "UNITS",
            converter = ResultsIn.class,
            completionCandidates = ResultsIn.class,
            description = "Units of the results: metric or us, instead of what the scenario says.")
    private @Nullable UnitSystem resultsIn;

    @Option(
            names = SET,
            paramLabel = "PATH=VALUE",
            description = {
                "Another value for a part of the scenario, such as entry.top-speed=100m/min; may be given several"
                        + " times.",
                "The command inputs lists the numbers of a scenario by their paths."
            })
    private List<String> settings = new ArrayList<>();

    @Option(
            names = Setting.MEASURED,
            paramLabel = "SHEET",
            description =
                    "Take the times of work elements from this time-study sheet: for each of its columns the distribution that the "
                            + "command times recommends, in the place of what the scenario says of the element of that name. An element to "
                            + "which an alternative or --set gives another time goes by the scenario and that.")
    private @Nullable Path times;

    /** The time-study sheet to take times from, if one is named. */
    Optional<Path> times() {
        return Optional.ofNullable(times);
    }

    @Option(
            names = ALTERNATIVE,
            paramLabel = "NAME",
            description = "Run this alternative of the scenario, instead of the scenario as written.")
    private @Nullable String alternative;

    /** The alternative that is to be run instead of the scenario as written. */
    Optional<String> alternative() {
        return Optional.ofNullable(alternative);
    }

    /**
     * What is set otherwise than {@code file} says: what an alternative changes, then single values.
     *
     * @param problems takes what cannot be read
     */
    List<Setting> settings(ScenarioFile file, Problems problems) {
        return Stream.concat(
                        alternative().stream().flatMap(name -> alternative(name, file, problems).stream()),
                        settings.stream().flatMap(text -> setting(text, problems).stream()))
                .toList();
    }

    private static List<Setting> alternative(String name, ScenarioFile file, Problems problems) {
        Optional<List<Setting>> found = file.alternative(name);
        // Of a file that cannot be read there is more to say.
        if (found.isEmpty() && file.isYaml()) {
            problems.error(
                    Place.whole(ALTERNATIVE), "", name, "is not an alternative of this scenario", remedy(name, file));
        }
        return found.orElse(List.of());
    }

    private static String remedy(String name, ScenarioFile file) {
        List<String> names = file.alternatives();
        return names.isEmpty() ? "It has none." : Nearest.remedy(name, names);
    }

    private static Optional<Setting> setting(String text, Problems problems) {
        int split = text.indexOf('=');
        if (split < 1 || split == text.length() - 1) {
            problems.error(
                    Place.whole(SET),
                    text,
                    "",
                    "must be a path and a value with = between them",
                    "Write it like --set entry.top-speed=100m/min.");
            return Optional.empty();
        }
        return Setting.written(text.substring(0, split), text.substring(split + 1), SET, problems);
    }

    /** How to run, as settings of the scenario; so that other settings may take their place. */
    List<Setting> planSettings() {
        return Stream.of(
                        planSetting("run.coil-changes", coilChanges),
                        planSetting("run.leave-out", leaveOut),
                        planSetting("run.replications", replications),
                        planSetting("run.seed", seed))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Setting> planSetting(String path, @Nullable Long value) {
        return Optional.ofNullable(value)
                .map(number -> new Setting(path, new Raw.Scalar(number.toString(), Place.whole("the command line"))));
    }

    /** How to run, given how the scenario wants it. */
    RunPlan plan(RunPlan run) {
        RunPlan.Extent extent =
                coilChanges == null ? run.extent() : new RunPlan.Extent.Changes(Math.toIntExact(coilChanges));
        return new RunPlan(
                extent,
                leaveOut == null ? run.leaveOut() : Math.toIntExact(leaveOut),
                replications == null ? run.replications() : Math.toIntExact(replications),
                seed == null ? run.seed() : seed,
                run.target(),
                run.yearlyTime(),
                run.targetWithoutStop());
    }

    /** Units of the results, given those that the scenario wants. */
    UnitSystem units(UnitSystem system) {
        return resultsIn == null ? system : resultsIn;
    }

    static final class CoilChanges extends WholeNumber {
        CoilChanges() {
            super(1, 1_000_000);
        }
    }

    static final class LeaveOut extends WholeNumber {
        LeaveOut() {
            super(0, 1_000_000);
        }
    }

    /** Of what is done again at a coil change; nothing goes on for ever. */
    static final class Repeats extends WholeNumber {
        Repeats() {
            super(0, 1_000);
        }
    }

    static final class Replications extends WholeNumber {
        Replications() {
            super(1, MOST_REPLICATIONS);
        }
    }

    /** Up to the largest whole number that JSON and every other tool can hold exactly. */
    static final class Seed extends WholeNumber {
        Seed() {
            super(0, (1L << 53) - 1);
        }
    }

    static final class ResultsIn extends Choice<UnitSystem> {
        ResultsIn() {
            or("metric", UnitSystem.METRIC).or("us", UnitSystem.US_CUSTOMARY);
        }
    }
}
