package runthrough.report.verdict;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The shape of the verdict for machines. The shipped JSON Schema is made from this class, its descriptions included; a
 * change that readers of the format would notice needs a new number in {@link #FORMAT}.
 *
 * <p>Names carry the unit: {@code _m} metres, {@code _s} seconds, {@code _kg} kilograms, {@code _m_per_s} metres per
 * second, {@code _per_8_h} per eight hours of simulated time. Shares are from 0 to 1. What is not known, not finite or does
 * not apply is null; there is no NaN and no infinity.
 *
 * <p>Long, because it is the description of the format, field by field, and nothing else.
 */
record VerdictDocument(
        @JsonPropertyDescription("Name and version of this shape: runthrough-verdict/1.")
        String format,

        @JsonPropertyDescription("Name and version of the program.")
        String program,

        @JsonPropertyDescription("What was asked.") Asked scenario,

        @JsonPropertyDescription(
                "Whether the target is met: meets, misses, or undecided when the interval holds the target.")
        String answer,

        @JsonPropertyDescription("The answer as a sentence, in the user's units.")
        String headline,

        @JsonProperty("left_to_chance")
        @JsonPropertyDescription(
                "Whether anything is left to chance; if not, every replication is the same and the share is exact.")
        boolean leftToChance,

        @JsonProperty("share_run_through")
        @JsonPropertyDescription("Share of coil changes that the process ran through.")
        Estimated shareRunThrough,

        @JsonPropertyDescription(
                "Whether the share is known as well as was asked for; null when no precision was asked for.")
        @Nullable
        Precision precision,

        @JsonPropertyDescription("How many coil changes it takes to tell.")
        Resolution resolution,

        @JsonProperty("coil_changes")
        @JsonPropertyDescription("Coil changes of all replications, by what came of them.")
        Changes coilChanges,

        @JsonPropertyDescription("Coil changes that did not run through, by what they are laid to.")
        Causes causes,

        @JsonProperty("spare_at_target")
        @JsonPropertyDescription(
                "What all but the share 1 - target of coil changes have to spare; negative for what is missing; "
                        + "null where entry and process are one strip.")
        @Nullable
        Spare spareAtTarget,

        @JsonPropertyDescription("Stops, and what they cost.")
        Stoppages stoppages,

        @JsonPropertyDescription("What comes out, and what is lost as scrap.")
        Output output,

        @JsonPropertyDescription("The strip standing at the joiner.")
        Joint joint,

        @JsonPropertyDescription("What the accumulator goes through; null where entry and process are one strip.")
        @Nullable
        Storage storage,

        @JsonPropertyDescription(
                "What came of the coil changes by coil and product; null where all coils are of one kind.")
        @Nullable
        Coils coils,

        @JsonProperty("hand_calculation")
        @JsonPropertyDescription("The closed forms for the kind of coil that is hardest on the line, with mean times.")
        Hand handCalculation,

        @JsonPropertyDescription("What was warned of, in words.")
        List<String> warnings) {

    /** Name and version of the shape. */
    static final String FORMAT = "runthrough-verdict/1";

    record Asked(
            @JsonPropertyDescription("Title of the scenario.")
            String title,

            @JsonProperty("fingerprint_sha256")
            @JsonPropertyDescription("SHA-256 of the scenario file's bytes in hexadecimal.")
            @Nullable
            String fingerprint,

            @JsonPropertyDescription("What was set otherwise than the scenario file says, in words.")
            List<String> changes,

            @JsonPropertyDescription("Date as given by the user.") @Nullable
            String date,

            @JsonPropertyDescription("join-with-accumulator, join-without-accumulator or rethread.")
            String practice,

            @JsonPropertyDescription("Share of coil changes that should run through.")
            double target,

            @JsonPropertyDescription("Independent repetitions.")
            int replications,

            @JsonPropertyDescription("Seed of the random numbers.")
            long seed,

            @JsonProperty("coil_changes")
            @JsonPropertyDescription("Coil changes that end a replication; null when time does.")
            @Nullable
            Integer coilChanges,

            @JsonProperty("run_time_s")
            @JsonPropertyDescription("Time that ends a replication; null when coil changes do.")
            @Nullable
            Double runTime,

            @JsonProperty("left_out_coil_changes")
            @JsonPropertyDescription("First coil changes of each replication left out of all numbers.")
            int leftOut) {}

    record Estimated(
            @JsonPropertyDescription("Mean over the replications.") @Nullable
            Double mean,

            @JsonProperty("interval_low")
            @JsonPropertyDescription("Lower end of the 95 % confidence interval; null where there is none.")
            @Nullable
            Double low,

            @JsonProperty("interval_high")
            @JsonPropertyDescription("Upper end of the 95 % confidence interval; null where there is none.")
            @Nullable
            Double high,

            @JsonProperty("interval_method")
            @JsonPropertyDescription(
                    "How the interval was made: student-t over replications; wilson for a share, from pooled counts; "
                            + "rule-of-three for what was never seen; null without an interval.")
            @Nullable
            String method,

            @JsonProperty("standard_deviation")
            @JsonPropertyDescription("Standard deviation between replications; null with a single one.")
            @Nullable
            Double sd,

            @JsonPropertyDescription("Replications that gave a value.")
            int replications) {}

    record Precision(
            @JsonPropertyDescription("Half-width of the interval of the share that was asked for.")
            double asked,

            @JsonProperty("half_width")
            @JsonPropertyDescription("Half-width that there is; null where nothing is left to chance.")
            @Nullable
            Double halfWidth,

            @JsonPropertyDescription("Whether it is as narrow as asked for.")
            boolean reached,

            @JsonProperty("replications_allowed") @JsonPropertyDescription("Replications that were allowed.")
            int allowed,

            @JsonProperty("replications_that_would_do")
            @JsonPropertyDescription(
                    "About so many replications would do; null when reached, or when it cannot be told.")
            @Nullable
            Integer wouldDo) {}

    record Distribution(
            @JsonPropertyDescription("Coil changes that gave a value.")
            int count,

            @JsonPropertyDescription("Mean, each replication giving its own.")
            Estimated mean,

            @JsonProperty("standard_deviation")
            @JsonPropertyDescription("Standard deviation between coil changes.")
            @Nullable
            Double sd,

            @JsonPropertyDescription("Smallest value.") @Nullable
            Double least,

            @JsonProperty("p0_5") @JsonPropertyDescription("0.5th percentile.") @Nullable
            Double p005,

            @JsonPropertyDescription("1st percentile.") @Nullable
            Double p1,

            @JsonPropertyDescription("5th percentile.") @Nullable
            Double p5,

            @JsonPropertyDescription("Median.") @Nullable Double p50,

            @JsonPropertyDescription("90th percentile.") @Nullable
            Double p90,

            @JsonPropertyDescription("95th percentile.") @Nullable
            Double p95,

            @JsonPropertyDescription("99th percentile.") @Nullable
            Double p99,

            @JsonProperty("p99_5") @JsonPropertyDescription("99.5th percentile.") @Nullable
            Double p995,

            @JsonPropertyDescription("Largest value.") @Nullable
            Double greatest) {}

    record Resolution(
            @JsonProperty("least_to_show")
            @JsonPropertyDescription(
                    "So many coil changes would show the target met if every one of them ran through; null when no "
                            + "number would, and when nothing is left to chance.")
            @Nullable
            Long leastToShow,

            @JsonProperty("to_decide")
            @JsonPropertyDescription("So many would decide if the share stayed what it is; null unless undecided.")
            @Nullable
            Long toDecide) {}

    record Changes(
            @JsonPropertyDescription("All of them.") long total,

            @JsonProperty("ran_through") @JsonPropertyDescription("The process held its rated speed.")
            long ranThrough,

            @JsonPropertyDescription("The process ran slower on a low level.")
            long slowed,

            @JsonPropertyDescription("The process stopped for want of strip.")
            long stopped) {}

    record Causes(
            @JsonPropertyDescription("Entry and process are one strip.")
            long practice,

            @JsonPropertyDescription("The joint waited for the next coil to be prepared.")
            long preparation,

            @JsonPropertyDescription("The accumulator was not full when the change began.")
            long refill,

            @JsonPropertyDescription("A full accumulator would not have lasted.")
            long capacity,

            @JsonPropertyDescription("What most are laid to; null when all ran through.") @Nullable
            String main) {}

    record Spare(
            @JsonProperty("strip_m") @JsonPropertyDescription("Strip above the stop level.") @Nullable
            Double strip,

            @JsonProperty("joint_time_s") @JsonPropertyDescription("The same as joint time.") @Nullable
            Double jointTime,

            @JsonProperty("process_speed_m_per_s")
            @JsonPropertyDescription("By how much the process could run faster, or has to run slower.")
            @Nullable
            Double processSpeed) {}

    record Stoppages(
            @JsonProperty("starved_per_100_coil_changes") @JsonPropertyDescription("Stops for want of strip.")
            Estimated starvedPerHundred,

            @JsonProperty("starved_per_8_h") @JsonPropertyDescription("Stops for want of strip.")
            Estimated starved,

            @JsonProperty("slowings_per_8_h") @JsonPropertyDescription("Slowings on a low level.")
            Estimated slowings,

            @JsonProperty("own_stops_per_8_h") @JsonPropertyDescription("Stops of the process's own.")
            Estimated own,

            @JsonProperty("lost_m_per_8_h") @JsonPropertyDescription("Strip not run for want of strip.")
            Estimated lostMetres,

            @JsonProperty("lost_s_per_8_h") @JsonPropertyDescription("The same as time at the rated speed.")
            Estimated lostTime) {}

    record Output(
            @JsonProperty("speed_m_per_s") @JsonPropertyDescription("Strip processed over time.")
            Estimated speed,

            @JsonProperty("mass_flow_kg_per_s") @JsonPropertyDescription("Mass processed over time.")
            Estimated massFlow,

            @JsonPropertyDescription("Strip processed over strip at the rated speed.")
            Estimated utilisation,

            @JsonProperty("scrap_m_per_8_h") @JsonPropertyDescription("Crops and spoilt strip.")
            Estimated scrapMetres,

            @JsonProperty("scrap_kg_per_8_h") @JsonPropertyDescription("The same by mass.")
            Estimated scrapMass,

            @JsonProperty("scrap_share") @JsonPropertyDescription("Scrap over scrap and processed strip, by mass.")
            Estimated scrapShare,

            @JsonProperty("coil_changes_per_8_h") @JsonPropertyDescription("Coil changes.")
            Estimated changes,

            @JsonProperty("counted_time_s") @JsonPropertyDescription("Simulated time of a replication that counts.")
            Estimated duration) {}

    record Joint(
            @JsonProperty("time_s") @JsonPropertyDescription("How long the strip stands.")
            Distribution time,

            @JsonProperty("waiting_s") @JsonPropertyDescription("The part of it that is waiting for preparation.")
            Distribution waiting,

            @JsonProperty("share_waiting") @JsonPropertyDescription("Share of coil changes with any waiting.")
            Estimated shareWaiting) {}

    record Storage(
            @JsonProperty("margin_m")
            @JsonPropertyDescription("Lowest level above the stop level; negative when the process had to stop.")
            Distribution margin,

            @JsonProperty("strip_drawn_m") @JsonPropertyDescription("Level at the start minus lowest level.")
            Distribution stripDrawn,

            @JsonProperty("refill_time_s")
            @JsonPropertyDescription("From the release of the joint until full again; null when that never came.")
            @Nullable
            Distribution refillTime,

            @JsonProperty("share_refilled") @JsonPropertyDescription("Share of coil changes refilled before the next.")
            Estimated shareRefilled,

            @JsonProperty("mean_level_m") @JsonPropertyDescription("Time-average level.")
            Estimated meanLevel,

            @JsonProperty("lowest_level_m") @JsonPropertyDescription("Lowest level in any replication.") @Nullable
            Double lowestLevel,

            @JsonProperty("overtravel_m") @JsonPropertyDescription("Largest excess over the capacity.") @Nullable
            Double overtravel,

            @JsonPropertyDescription("How often the level passed the capacity and its allowance.")
            long overfull,

            @JsonProperty("strip_breaks")
            @JsonPropertyDescription("How often the level fell below 0; what follows one is not physical.")
            long stripBreaks) {}

    record Coils(
            @JsonPropertyDescription("How many kinds of coil there are; in a schedule, how many rows.")
            int kinds,

            @JsonPropertyDescription("How many of them ever came to their change.")
            int seen,

            @JsonPropertyDescription(
                    "Products, those with most coil changes that did not run through first, 1000 at most; all are in "
                            + "products.csv. A coil change counts by the coil that ends with it.")
            List<Product> products,

            @JsonPropertyDescription(
                    "The coils that are hardest on the line, the worst first, 20 at most; all are in coils.csv.")
            List<HardCoil> hardest) {}

    record Product(
            @JsonPropertyDescription("Its name; null where none is given, and coils are told apart by their section.")
            @Nullable
            String name,

            @JsonProperty("thickness_m") @JsonPropertyDescription("Of its strip, where it has no name.") @Nullable
            Double thickness,

            @JsonProperty("width_m") @JsonPropertyDescription("Of its strip, where it has no name.") @Nullable
            Double width,

            @JsonPropertyDescription("Kinds of coil, in a schedule rows, that came to their change.")
            int coils,

            @JsonPropertyDescription("What came of its coil changes.")
            CoilTally outcome) {}

    record HardCoil(
            @JsonPropertyDescription("Its name.") String name,

            @JsonPropertyDescription("Its place in the scenario or schedule, from 0.")
            int kind,

            @JsonPropertyDescription("What came of its changes.")
            CoilTally outcome,

            @JsonPropertyDescription("Why, as a sentence in the user's units.")
            String why) {}

    record CoilTally(
            @JsonProperty("coil_changes") @JsonPropertyDescription("By what came of them.")
            Changes changes,

            @JsonProperty("share_run_through") @JsonPropertyDescription("Ran through over all.")
            double share,

            @JsonProperty("interval_low")
            @JsonPropertyDescription("Lower end of Wilson's 95 % interval; null where nothing is left to chance.")
            @Nullable
            Double low,

            @JsonProperty("interval_high") @JsonPropertyDescription("Its upper end.") @Nullable
            Double high,

            @JsonPropertyDescription("What those that did not run through are laid to.")
            Causes causes,

            @JsonProperty("lost_m") @JsonPropertyDescription("Strip not run for want of strip.")
            double lost) {}

    record Hand(
            @JsonPropertyDescription("Name of the kind of coil.")
            String coil,

            @JsonPropertyDescription("Its place in the scenario, from 0.")
            int kind,

            @JsonProperty("process_speed_m_per_s") @JsonPropertyDescription("Process speed with that coil.") @Nullable
            Double speed,

            @JsonProperty("coil_run_s") @JsonPropertyDescription("From one coil change to the next.") @Nullable
            Double coilRun,

            @JsonPropertyDescription(
                    "The limit that is nearest to being reached or furthest beyond: capacity, refill or preparation; "
                            + "null where entry and process are one strip.")
            @Nullable
            String binding,

            @JsonProperty("preparation_s")
            @JsonPropertyDescription("Time there is to prepare a coil, and what it takes.")
            Held preparation,

            @JsonProperty("capacity_m")
            @JsonPropertyDescription("Capacity, and what a coil change takes of it.")
            @Nullable
            Held capacity,

            @JsonProperty("joint_time_s")
            @JsonPropertyDescription("The longest that the accumulator bears, and what the joint takes.")
            @Nullable
            Held jointTime,

            @JsonProperty("speed_m_per_s")
            @JsonPropertyDescription("The fastest that the accumulator bears, and the process's speed.")
            @Nullable
            Held fastest,

            @JsonProperty("strip_before_change_m")
            @JsonPropertyDescription(
                    "Strip of a coil before its change begins, and what passes until the accumulator is full.")
            @Nullable
            Held stripBeforeChange,

            @JsonProperty("strip_drawn_m") @JsonPropertyDescription("Strip drawn at a coil change.") @Nullable
            Double stripDrawn,

            @JsonProperty("refill_time_s")
            @JsonPropertyDescription("From the release of the joint until full again.")
            @Nullable
            Double refillTime,

            @JsonPropertyDescription("What the worked calculation starts from.")
            List<Given> givens,

            @JsonPropertyDescription("The worked calculation, line by line.")
            List<Worked> steps) {}

    record Held(
            @JsonPropertyDescription("What there is; null for no limit.") @Nullable
            Double given,

            @JsonPropertyDescription("What is needed.") @Nullable
            Double needed,

            @JsonPropertyDescription("Given less needed; negative for what is missing.") @Nullable
            Double spare) {}

    record Given(
            @JsonPropertyDescription("As it stands in the formulas.")
            String symbol,

            @JsonPropertyDescription("What it is.") String name,

            @JsonPropertyDescription("In unit; null for infinite.") @Nullable
            Double value,

            @JsonPropertyDescription("SI unit; empty for a plain number.")
            String unit) {}

    record Worked(
            @JsonPropertyDescription("As it stands in later formulas.")
            String symbol,

            @JsonPropertyDescription("What it is.") String name,

            @JsonPropertyDescription("The formula in symbols.")
            String formula,

            @JsonPropertyDescription("In unit; null for infinite.") @Nullable
            Double value,

            @JsonPropertyDescription("SI unit; empty for a plain number.")
            String unit) {}
}
