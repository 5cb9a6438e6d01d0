package runthrough.report.verdict;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Refill;
import runthrough.handcalc.Step;
import runthrough.handcalc.Storage;
import runthrough.handcalc.Term;
import runthrough.plant.RunPlan;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.study.Cause;
import runthrough.study.Verdict;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.RelativeHalfWidth;
import runthrough.study.statistics.Summary;

/** Puts a result into the shape for machines. */
final class VerdictMapping {
    private static final CoherentUnits SI = new CoherentUnits(UnitSystem.METRIC);

    private final RunThroughResult result;
    private final Verdict verdict;

    private VerdictMapping(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
    }

    static VerdictDocument document(RunThroughResult result) {
        return new VerdictMapping(result).document();
    }

    private VerdictDocument document() {
        return new VerdictDocument(
                VerdictDocument.FORMAT,
                result.provenance().program(),
                asked(),
                word(verdict.answer()),
                VerdictHeadline.of(result).sentence(),
                verdict.chance(),
                estimated(verdict.shareRunThrough()),
                result.precision().map(VerdictMapping::precision).orElse(null),
                new VerdictDocument.Resolution(
                        verdict.resolution().leastToShow().orElse(null),
                        verdict.resolution().toDecide().orElse(null)),
                changes(verdict.changes()),
                causes(verdict.causes()),
                verdict.spare().map(this::spare).orElse(null),
                stoppages(verdict.stoppages()),
                output(verdict.output()),
                new VerdictDocument.Joint(
                        distribution(verdict.joint().time()),
                        distribution(verdict.joint().waiting()),
                        estimated(verdict.joint().shareWaiting())),
                verdict.storage().map(this::storage).orElse(null),
                CoilTexts.of(result).map(CoilMapping::coils).orElse(null),
                hand(result.handCalculation()),
                result.warnings());
    }

    private static VerdictDocument.Precision precision(RelativeHalfWidth precision) {
        return new VerdictDocument.Precision(
                precision.asked(),
                precision.halfWidth().isPresent() ? precision.halfWidth().getAsDouble() : null,
                precision.reached(),
                precision.limit(),
                precision.wouldDo().isPresent() ? precision.wouldDo().getAsInt() : null);
    }

    private VerdictDocument.Asked asked() {
        RunPlan run = result.study().request().run();
        return new VerdictDocument.Asked(
                result.study().request().title(),
                result.provenance().fingerprint().orElse(null),
                result.provenance().changes(),
                result.provenance().date().orElse(null),
                result.line().practice().words().replace(' ', '-'),
                run.target(),
                run.replications(),
                run.seed(),
                run.extent() instanceof RunPlan.Extent.Changes changes ? changes.changes() : null,
                run.extent() instanceof RunPlan.Extent.Time time ? time.duration() : null,
                run.leaveOut());
    }

    static VerdictDocument.Changes changes(Verdict.Changes changes) {
        return new VerdictDocument.Changes(changes.total(), changes.ranThrough(), changes.slowed(), changes.stopped());
    }

    static VerdictDocument.Causes causes(Verdict.Causes causes) {
        return new VerdictDocument.Causes(
                causes.count(Cause.PRACTICE),
                causes.count(Cause.PREPARATION),
                causes.count(Cause.REFILL),
                causes.count(Cause.CAPACITY),
                causes.main().map(VerdictMapping::word).orElse(null));
    }

    private VerdictDocument.Spare spare(Verdict.Spare spare) {
        return new VerdictDocument.Spare(finite(spare.metres()), finite(spare.seconds()), finite(spare.speed()));
    }

    private VerdictDocument.Stoppages stoppages(Verdict.Stoppages stoppages) {
        return new VerdictDocument.Stoppages(
                estimated(stoppages.starvedPerHundredChanges()),
                estimated(stoppages.starvedPerShift()),
                estimated(stoppages.slowingsPerShift()),
                estimated(stoppages.downtimesPerShift()),
                estimated(stoppages.lostMetresPerShift()),
                estimated(stoppages.lostTimePerShift()));
    }

    private VerdictDocument.Output output(Verdict.Output output) {
        return new VerdictDocument.Output(
                estimated(output.speed()),
                estimated(output.massFlow()),
                estimated(output.utilisation()),
                estimated(output.scrapMetresPerShift()),
                estimated(output.scrapKilogramsPerShift()),
                estimated(output.scrapShare()),
                estimated(output.changesPerShift()),
                estimated(output.duration()));
    }

    private VerdictDocument.Storage storage(Verdict.Storage storage) {
        return new VerdictDocument.Storage(
                distribution(storage.margin()),
                distribution(storage.stripDrawn()),
                storage.refillTime().map(this::distribution).orElse(null),
                estimated(storage.shareRefilled()),
                estimated(storage.meanLevel()),
                finite(storage.lowestLevel()),
                finite(storage.overtravel()),
                storage.overfull(),
                storage.stripBreaks());
    }

    private VerdictDocument.Hand hand(HandCalculation hand) {
        Optional<Storage> storage = hand.storage();
        return new VerdictDocument.Hand(
                hand.coil().name(),
                hand.kind(),
                finite(hand.speed()),
                finite(hand.coilRun()),
                hand.limitingFactor().map(VerdictMapping::word).orElse(null),
                held(hand.preparationTime()),
                storage.map(s -> held(s.capacity())).orElse(null),
                storage.map(s -> held(s.jointTime())).orElse(null),
                storage.map(s -> held(s.speed())).orElse(null),
                storage.flatMap(Storage::coilStrip).map(this::held).orElse(null),
                storage.map(s -> finite(s.stripDrawn())).orElse(null),
                storage.flatMap(Storage::refill)
                        .map(Refill::timeFromRelease)
                        .map(this::finite)
                        .orElse(null),
                hand.givens().stream().map(this::given).toList(),
                hand.steps().stream().map(this::worked).toList());
    }

    private VerdictDocument.Held held(Margin margin) {
        return new VerdictDocument.Held(finite(margin.given()), finite(margin.needed()), finite(margin.spare()));
    }

    private VerdictDocument.Given given(Term term) {
        return new VerdictDocument.Given(term.symbol(), term.name(), finite(term.value()), unit(term));
    }

    private VerdictDocument.Worked worked(Step step) {
        Term result = step.result();
        return new VerdictDocument.Worked(
                result.symbol(), result.name(), step.formula(), finite(result.value()), unit(result));
    }

    private String unit(Term term) {
        return SI.unit(term.kind()).map(Unit::symbol).orElse("");
    }

    private VerdictDocument.Distribution distribution(Summary summary) {
        return new VerdictDocument.Distribution(
                summary.count(),
                estimated(summary.mean()),
                finite(summary.sd()),
                finite(summary.least()),
                finite(summary.p005()),
                finite(summary.p01()),
                finite(summary.p05()),
                finite(summary.p50()),
                finite(summary.p90()),
                finite(summary.p95()),
                finite(summary.p99()),
                finite(summary.p995()),
                finite(summary.greatest()));
    }

    /** Without an interval where nothing is left to chance: then the numbers are exact. */
    private VerdictDocument.Estimated estimated(Estimate estimate) {
        Optional<Interval> interval = estimate.interval().filter(any -> verdict.chance());
        return new VerdictDocument.Estimated(
                finite(estimate.mean()),
                interval.map(i -> finite(i.low())).orElse(null),
                interval.map(i -> finite(i.high())).orElse(null),
                interval.map(Interval::method).map(VerdictMapping::word).orElse(null),
                finite(estimate.sd()),
                estimate.replications());
    }

    private @Nullable Double finite(OptionalDouble value) {
        return value.isPresent() ? finite(value.getAsDouble()) : null;
    }

    /** JSON knows no NaN and no infinity. */
    private @Nullable Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
