package runthrough.report.verdict;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Refill;
import runthrough.handcalc.Step;
import runthrough.handcalc.Storage;
import runthrough.handcalc.Term;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.report.JsonShape;
import runthrough.study.CoilOutcomes;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.statistics.RelativeHalfWidth;
import runthrough.study.statistics.Summary;

/**
 * What JSON gives of a verdict.
 *
 * <p>Long, because it is the description of the format, member by member, and nothing else.
 */
final class VerdictDocument {
    private static final int MOST_PRODUCTS = 1000;
    private static final int MOST_COILS = 20;
    private static final CoherentUnits SI = new CoherentUnits(UnitSystem.METRIC);

    private static final JsonShape<RelativeHalfWidth> PRECISION = JsonShape.<RelativeHalfWidth>named("precision")
            .number("asked", "Half-width of the interval of the share that was asked for.", RelativeHalfWidth::asked)
            .optionalNumber(
                    "half_width",
                    "Half-width that there is; null where nothing is random.",
                    RelativeHalfWidth::halfWidth)
            .flag("reached", "Whether it is as narrow as asked for.", RelativeHalfWidth::reached)
            .count("replications_allowed", "Replications that were allowed.", RelativeHalfWidth::limit)
            .optionalCount(
                    "replications_that_would_do",
                    "About so many replications would do; null when reached, or when it is not known.",
                    precision -> precision.wouldDo().isPresent()
                            ? Optional.of((long) precision.wouldDo().getAsInt())
                            : Optional.empty());

    private static final JsonShape<Verdict.Resolution> RESOLUTION = JsonShape.<Verdict.Resolution>named("resolution")
            .optionalCount(
                    "least_to_show",
                    "So many coil changes would show the target met if every one of them ran through; null when no number"
                            + " would, and when nothing is random.",
                    Verdict.Resolution::leastToShow)
            .optionalCount(
                    "to_decide",
                    "So many would decide if the share stayed what it is; null unless undecided.",
                    Verdict.Resolution::toDecide);

    private static final JsonShape<Verdict.Changes> CHANGES = JsonShape.<Verdict.Changes>named("changes")
            .count("total", "All of them.", Verdict.Changes::total)
            .count("ran_through", "The process held its rated speed.", Verdict.Changes::ranThrough)
            .count("slowed", "The process ran slower on a low level.", Verdict.Changes::slowed)
            .count("stopped", "The process stopped, starved.", Verdict.Changes::stopped);

    private static final JsonShape<CauseCounts> CAUSES = causes();

    private static JsonShape<CauseCounts> causes() {
        JsonShape<CauseCounts> shape = JsonShape.named("causes");
        for (Cause cause : Cause.values()) {
            shape = shape.count(
                    cause.name().toLowerCase(Locale.ROOT),
                    "Coil changes that did not run through because of this: " + cause.words() + ".",
                    counts -> counts.count(cause));
        }
        return shape.optionalWord(
                "main", "The cause of most; null when all ran through.", Cause.class, CauseCounts::main);
    }

    private static final JsonShape<NamedCauses.Count> NAMED_CAUSE = JsonShape.<NamedCauses.Count>named("named_cause")
            .word(
                    "cause",
                    "What would have let them run through.",
                    Cause.class,
                    count -> count.reason().cause())
            .optionalText(
                    "element",
                    "The work element that it is named by, as list/name; null where it is named by none.",
                    count -> count.reason().element().map(VerdictDocument::element))
            .count("coil_changes", "Coil changes that did not run through because of it.", NamedCauses.Count::changes)
            .count("starved_stops", "Starved stops that belong to them.", NamedCauses.Count::starvedStops)
            .number("lost_time_s", "Lost time of them.", NamedCauses.Count::lostTime);

    private static String element(Reason.Element element) {
        return element.list().name().toLowerCase(Locale.ROOT) + "/" + element.name();
    }

    private static final JsonShape<Verdict.Spare> MARGIN = JsonShape.<Verdict.Spare>named("margin")
            .optionalNumber(
                    "strip_m",
                    "Strip above the level at which the target fails, the process at its rated speed.",
                    margin -> known(margin.metres()))
            .optionalNumber("joint_cycle_time_s", "The same as joint cycle time.", margin -> known(margin.seconds()))
            .optionalNumber(
                    "process_speed_m_per_s",
                    "By how much the process could run faster, or has to run slower.",
                    margin -> known(margin.speed()));

    private static final JsonShape<Verdict.WithoutStop> WITHOUT_STOP = JsonShape.<Verdict.WithoutStop>named(
                    "without_stop")
            .estimateInFull("share", "Share of coil changes without a stop.", Verdict.WithoutStop::share)
            .optionalNumber(
                    "target",
                    "Share that should go without a stop; null where none is set.",
                    Verdict.WithoutStop::target)
            .optionalWord(
                    "answer",
                    "Whether the target is met; null where none is set.",
                    TargetStatus.class,
                    Verdict.WithoutStop::answer)
            .optional(
                    "margin",
                    "What all but the share 1 - target have as margin; negative for a shortfall.",
                    MARGIN,
                    Verdict.WithoutStop::spare);

    private static final JsonShape<Verdict.Stoppages> STOPPAGES = JsonShape.<Verdict.Stoppages>named("stoppages")
            .estimateInFull(
                    "starved_per_100_coil_changes", "Starved stops.", Verdict.Stoppages::starvedPerHundredChanges)
            .estimateInFull("starved_per_8_h", "Starved stops.", Verdict.Stoppages::starvedPerShift)
            .estimateInFull("slowings_per_8_h", "Slowings on a low level.", Verdict.Stoppages::slowingsPerShift)
            .estimateInFull("downtime_per_8_h", "Stops of process downtime.", Verdict.Stoppages::downtimesPerShift)
            .estimateInFull("lost_m_per_8_h", "Strip not run, starved.", Verdict.Stoppages::lostMetresPerShift)
            .estimateInFull(
                    "lost_s_per_8_h", "The same as time at the rated speed.", Verdict.Stoppages::lostTimePerShift);

    private static final JsonShape<Verdict.Output> OUTPUT = JsonShape.<Verdict.Output>named("output")
            .estimateInFull(
                    "speed_m_per_s",
                    "Good output over time: strip processed less what is scrap afterwards.",
                    Verdict.Output::speed)
            .estimateInFull("mass_flow_kg_per_s", "The same by mass.", Verdict.Output::massFlow)
            .estimateInFull("gross_speed_m_per_s", "Strip processed over time.", Verdict.Output::grossSpeed)
            .estimateInFull("gross_mass_flow_kg_per_s", "Mass processed over time.", Verdict.Output::grossMassFlow)
            .estimateInFull("yield", "Good output over what was processed, by mass.", Verdict.Output::goodShare)
            .estimateInFull(
                    "utilisation", "Strip processed over strip at the rated speed.", Verdict.Output::utilisation)
            .estimateInFull("scrap_m_per_8_h", "Crops and scrapped strip.", Verdict.Output::scrapMetresPerShift)
            .estimateInFull("scrap_kg_per_8_h", "The same by mass.", Verdict.Output::scrapKilogramsPerShift)
            .estimateInFull("scrap_share", "Scrap over scrap and good output, by mass.", Verdict.Output::scrapShare)
            .estimateInFull("coil_changes_per_8_h", "Coil changes.", Verdict.Output::changesPerShift)
            .estimateInFull("counted_time_s", "Simulated time of a replication that counts.", Verdict.Output::duration);

    private static final JsonShape<Summary> DISTRIBUTION = JsonShape.<Summary>named("distribution")
            .count("count", "Coil changes that gave a value.", Summary::count)
            .estimateInFull("mean", "Mean, each replication giving its own.", Summary::mean)
            .optionalNumber("standard_deviation", "Standard deviation between coil changes.", all -> known(all.sd()))
            .optionalNumber("least", "Smallest value.", all -> known(all.least()))
            .optionalNumber("p0_5", "0.5th percentile.", all -> known(all.p005()))
            .optionalNumber("p1", "1st percentile.", all -> known(all.p01()))
            .optionalNumber("p5", "5th percentile.", all -> known(all.p05()))
            .optionalNumber("p50", "Median.", all -> known(all.p50()))
            .optionalNumber("p90", "90th percentile.", all -> known(all.p90()))
            .optionalNumber("p95", "95th percentile.", all -> known(all.p95()))
            .optionalNumber("p99", "99th percentile.", all -> known(all.p99()))
            .optionalNumber("p99_5", "99.5th percentile.", all -> known(all.p995()))
            .optionalNumber("greatest", "Largest value.", all -> known(all.greatest()));

    private static final JsonShape<Verdict.Joint> JOINT = JsonShape.<Verdict.Joint>named("joint")
            .in("cycle_time_s", "How long the strip stands.", DISTRIBUTION, Verdict.Joint::time)
            .in("waiting_s", "The part of it that is waiting for preparation.", DISTRIBUTION, Verdict.Joint::waiting)
            .estimateInFull("share_waiting", "Share of coil changes with any waiting.", Verdict.Joint::shareWaiting);

    private static final JsonShape<Verdict.Storage> STORAGE = JsonShape.<Verdict.Storage>named("storage")
            .in(
                    "margin_m",
                    "Lowest level above the stop level; negative when the process had to stop.",
                    DISTRIBUTION,
                    Verdict.Storage::margin)
            .in("strip_drawn_m", "Level at the start minus lowest level.", DISTRIBUTION, Verdict.Storage::stripDrawn)
            .optional(
                    "refill_time_s",
                    "From the release of the joint until full again; null when that never came.",
                    DISTRIBUTION,
                    Verdict.Storage::refillTime)
            .estimateInFull(
                    "share_refilled", "Share of coil changes refilled before the next.", Verdict.Storage::shareRefilled)
            .estimateInFull("mean_level_m", "Time-average level.", Verdict.Storage::meanLevel)
            .optionalNumber(
                    "lowest_level_m", "Lowest level in any replication.", storage -> known(storage.lowestLevel()))
            .optionalNumber("overtravel_m", "Largest excess over the capacity.", storage -> known(storage.overtravel()))
            .count("overfull", "How often the level passed the capacity and its allowance.", Verdict.Storage::overfull)
            .count(
                    "strip_breaks",
                    "How often the level fell below 0; what follows one is not physical.",
                    Verdict.Storage::stripBreaks);

    private static final JsonShape<CoilOutcomes.Tally> TALLY = JsonShape.<CoilOutcomes.Tally>named("coil_tally")
            .in(
                    "coil_changes",
                    "By what came of them.",
                    CHANGES,
                    tally -> new Verdict.Changes(tally.changes(), tally.ranThrough(), tally.slowed(), tally.stopped()))
            .number("share_run_through", "Ran through over all.", CoilOutcomes.Tally::share)
            .end(
                    "interval_low",
                    "Lower end of Wilson's 95 % interval; null where nothing is random.",
                    tally -> tally.interval().low())
            .end("interval_high", "Its upper end.", tally -> tally.interval().high())
            .in("causes", "The root causes of those that did not run through.", CAUSES, CoilOutcomes.Tally::causes)
            .number("lost_m", "Strip not run, starved.", CoilOutcomes.Tally::lostMetres);

    private static final JsonShape<CoilOutcomes.Product> PRODUCT = JsonShape.<CoilOutcomes.Product>named("product")
            .optionalText(
                    "name",
                    "Its name; null where none is given, and coils are distinguished by their section.",
                    product -> Optional.of(product.name().given()).filter(name -> !name.isEmpty()))
            .optionalNumber(
                    "thickness_m",
                    "Of its strip, where it has no name.",
                    product -> unnamed(product, product.name().thickness()))
            .optionalNumber(
                    "width_m",
                    "Of its strip, where it has no name.",
                    product -> unnamed(product, product.name().width()))
            .count(
                    "coils",
                    "Kinds of coil, in a schedule rows, that came to their change.",
                    CoilOutcomes.Product::coils)
            .in("outcome", "What came of its coil changes.", TALLY, CoilOutcomes.Product::tally);

    private record HardCoil(CoilTexts texts, int kind) {}

    private static final JsonShape<HardCoil> HARD_COIL = JsonShape.<HardCoil>named("hard_coil")
            .text("name", "Its name.", coil -> coil.texts().coil(coil.kind()).name())
            .count("kind", "Its place in the scenario or schedule, from 0.", HardCoil::kind)
            .in(
                    "outcome",
                    "What came of its changes.",
                    TALLY,
                    coil -> coil.texts().outcomes().of(coil.kind()))
            .text(
                    "why",
                    "Why, as a sentence in the user's units.",
                    coil -> coil.texts().why(coil.kind()));

    private static final JsonShape<CoilTexts> COILS = JsonShape.<CoilTexts>named("coils")
            .count(
                    "kinds",
                    "How many kinds of coil there are; in a schedule, how many rows.",
                    coils -> coils.outcomes().kinds())
            .count(
                    "seen",
                    "How many of them ever came to their change.",
                    coils -> coils.outcomes().seen())
            .list(
                    "products",
                    "Products, those with most coil changes that did not run through first, 1000 at most; all are in"
                            + " products.csv. A coil change counts by the coil that ends with it.",
                    PRODUCT,
                    coils -> coils.outcomes().products().stream()
                            .limit(MOST_PRODUCTS)
                            .toList())
            .list(
                    "hardest",
                    "The coils that are hardest on the line, the worst first, 20 at most; all are in coils.csv.",
                    HARD_COIL,
                    coils -> coils.outcomes().hardest(MOST_COILS).stream()
                            .map(kind -> new HardCoil(coils, kind))
                            .toList());

    private static final JsonShape<Margin> HELD = JsonShape.<Margin>named("held")
            .optionalNumber("given", "What there is; null for no limit.", margin -> known(margin.given()))
            .optionalNumber("needed", "What is needed.", margin -> known(margin.needed()))
            .optionalNumber("margin", "Given less needed; negative for a shortfall.", margin -> known(margin.spare()));

    private static final JsonShape<Term> GIVEN = JsonShape.<Term>named("given")
            .text("symbol", "As it stands in the formulas.", Term::symbol)
            .text("name", "What it is.", Term::name)
            .optionalNumber("value", "In unit; null for infinite.", term -> known(term.value()))
            .text("unit", "SI unit; empty for a plain number.", VerdictDocument::unit);

    private static final JsonShape<Step> WORKED = JsonShape.<Step>named("worked")
            .text(
                    "symbol",
                    "As it stands in later formulas.",
                    step -> step.result().symbol())
            .text("name", "What it is.", step -> step.result().name())
            .text("formula", "The formula in symbols.", Step::formula)
            .optionalNumber(
                    "value",
                    "In unit; null for infinite.",
                    step -> known(step.result().value()))
            .text("unit", "SI unit; empty for a plain number.", step -> unit(step.result()));

    private static final JsonShape<HandCalculation> HAND = JsonShape.<HandCalculation>named("hand")
            .text("coil", "Name of the kind of coil.", hand -> hand.coil().name())
            .count("kind", "Its place in the scenario, from 0.", HandCalculation::kind)
            .optionalNumber("process_speed_m_per_s", "Process speed with that coil.", hand -> known(hand.speed()))
            .optionalNumber("coil_run_s", "From one coil change to the next.", hand -> known(hand.coilRun()))
            .optionalWord(
                    "limiting_factor",
                    "The limit that is nearest to being reached or furthest beyond; null where entry and process are one"
                            + " strip.",
                    Limit.class,
                    HandCalculation::limitingFactor)
            .in(
                    "preparation_s",
                    "Time there is to prepare a coil, and what it takes.",
                    HELD,
                    HandCalculation::preparationTime)
            .optional(
                    "capacity_m",
                    "Capacity, and what a coil change takes of it.",
                    HELD,
                    hand -> hand.storage().map(Storage::capacity))
            .optional(
                    "joint_cycle_time_s",
                    "The longest that the accumulator bears, and what the joint takes.",
                    HELD,
                    hand -> hand.storage().map(Storage::jointCycleTime))
            .optional(
                    "speed_m_per_s",
                    "The fastest that the accumulator bears, and the process's speed.",
                    HELD,
                    hand -> hand.storage().map(Storage::speed))
            .optional(
                    "strip_before_change_m",
                    "Strip of a coil before its change begins, and what passes until the accumulator is full.",
                    HELD,
                    hand -> hand.storage().flatMap(Storage::coilStrip))
            .optionalNumber(
                    "strip_drawn_m",
                    "Strip drawn at a coil change.",
                    hand -> hand.storage()
                            .map(storage -> known(storage.stripDrawn()))
                            .orElse(OptionalDouble.empty()))
            .optionalNumber(
                    "refill_time_s",
                    "From the release of the joint until full again.",
                    hand -> hand.storage()
                            .flatMap(Storage::refill)
                            .map(Refill::timeFromRelease)
                            .map(VerdictDocument::known)
                            .orElse(OptionalDouble.empty()))
            .list("givens", "What the worked calculation starts from.", GIVEN, HandCalculation::givens)
            .list("steps", "The worked calculation, line by line.", WORKED, HandCalculation::steps);

    private static final JsonShape<Verdict> VERDICT = JsonShape.<Verdict>named("numbers")
            .estimateInFull(
                    "share_run_through",
                    "Share of coil changes that the process ran through.",
                    Verdict::shareRunThrough)
            .in("resolution", "How many coil changes it takes to decide.", RESOLUTION, Verdict::resolution)
            .in("coil_changes", "Coil changes of all replications, by what came of them.", CHANGES, Verdict::changes)
            .in("causes", "Coil changes that did not run through, by cause.", CAUSES, Verdict::causes)
            .list(
                    "named_causes",
                    "The same by cause and named work element, those of most coil changes first.",
                    NAMED_CAUSE,
                    Verdict::namedCauses)
            .optional(
                    "margin_at_target",
                    "What all but the share 1 - target of coil changes have as margin; negative for a shortfall; null where"
                            + " entry and process are one strip.",
                    MARGIN,
                    Verdict::spare)
            .optional(
                    "without_stop",
                    "The second target: coil changes run through or slowed; null where the process cannot slow and no such"
                            + " target is set.",
                    WITHOUT_STOP,
                    Verdict::withoutStop)
            .in("stoppages", "Stops, and what they cost.", STOPPAGES, Verdict::stoppages)
            .in("output", "What comes out, and what is lost as scrap.", OUTPUT, Verdict::output)
            .in("joint", "The strip standing at the joiner.", JOINT, Verdict::joint)
            .optional(
                    "storage",
                    "What the accumulator goes through; null where entry and process are one strip.",
                    STORAGE,
                    Verdict::storage);

    static final JsonShape<RunThroughResult> SHAPE = JsonShape.<RunThroughResult>named("verdict")
            .word(
                    "answer",
                    "Whether the target is met: meets, misses, or undecided when the interval holds the target.",
                    TargetStatus.class,
                    result -> result.verdict().answer())
            .number(
                    "target",
                    "Share of coil changes that should run through.",
                    result -> result.verdict().target())
            .text(
                    "practice",
                    "join-with-accumulator, join-without-accumulator or rethread.",
                    result -> result.line().practice().words().replace(' ', '-'))
            .optional(
                    "precision",
                    "Whether the share is known as well as was asked for; null when no precision was asked for.",
                    PRECISION,
                    RunThroughResult::precision)
            .and(VERDICT, RunThroughResult::verdict)
            .optional(
                    "coils",
                    "What came of the coil changes by coil and product; null where all coils are of one kind.",
                    COILS,
                    CoilTexts::of)
            .in(
                    "hand_calculation",
                    "The closed forms for the kind of coil that is hardest on the line, with mean times.",
                    HAND,
                    RunThroughResult::handCalculation);

    private VerdictDocument() {}

    private static OptionalDouble unnamed(CoilOutcomes.Product product, double section) {
        return product.name().given().isEmpty() ? OptionalDouble.of(section) : OptionalDouble.empty();
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static String unit(Term term) {
        return SI.unit(term.kind()).map(Unit::symbol).orElse("");
    }
}
