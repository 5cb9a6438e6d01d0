package runthrough.report.sweep;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import runthrough.report.JsonFields;
import runthrough.report.JsonShape;
import runthrough.report.write.JsonWriter;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.cause.Reason;
import runthrough.study.statistics.Estimate;
import runthrough.study.sweep.CaseResult;

/** What a line of a sweep gives of its case: plain members, each of them a column as well. */
final class CaseDocument {
    private static final JsonShape<CaseResult> ANSWER = margins(changes(JsonShape.<CaseResult>named("answer")
                    .optionalWord(
                            "answer",
                            "Whether the target is met: meets, misses, or undecided when the interval holds the target.",
                            TargetStatus.class,
                            result -> result.verdict().map(Verdict::answer))
                    .optionalNumber("target", "Share of coil changes that should run through.", number(Verdict::target))
                    .optionalNumber(
                            "share_run_through",
                            "Share of coil changes that the process ran through.",
                            number(verdict -> verdict.shareRunThrough().mean()))
                    .optionalNumber(
                            "share_run_through_low",
                            "Lower end of its 95 % confidence interval; null where nothing is random.",
                            end(Verdict::shareRunThrough, true))
                    .optionalNumber(
                            "share_run_through_high",
                            "Upper end of its 95 % confidence interval; null where nothing is random.",
                            end(Verdict::shareRunThrough, false))))
            .optionalNumber(
                    "starved_stops_per_8_h",
                    "Starved stops.",
                    number(verdict -> verdict.stoppages().starvedPerShift().mean()))
            .optionalNumber(
                    "lost_s_per_8_h",
                    "Lost time (starved).",
                    number(verdict -> verdict.stoppages().lostTimePerShift().mean()))
            .optionalNumber(
                    "joint_cycle_time_s",
                    "Mean joint cycle time.",
                    number(verdict -> verdict.joint().time().mean().mean()))
            .optionalNumber(
                    "good_output_m_per_s",
                    "Good output: strip processed less what is scrap afterwards.",
                    number(verdict -> verdict.output().speed().mean()))
            .optionalNumber(
                    "good_output_kg_per_s",
                    "The same by mass.",
                    number(verdict -> verdict.output().massFlow().mean()))
            .optionalNumber(
                    "scrap_share",
                    "Scrap over scrap and processed strip, by mass.",
                    number(verdict -> verdict.output().scrapShare().mean()));

    private CaseDocument() {}

    /** What the lines of {@code name} give of a case. */
    static JsonShape<CaseResult> of(SweepName name) {
        return name.hasUncertainty() ? ANSWER.and(KnownDocument.MEMBERS, result -> result) : ANSWER;
    }

    private static JsonShape<CaseResult> changes(JsonShape<CaseResult> shape) {
        return shape.optionalCount("coil_changes", "Coil changes of all replications.", count(Verdict.Changes::total))
                .optionalCount("slowed", "Coil changes at which the process slowed.", count(Verdict.Changes::slowed))
                .optionalCount("stopped", "Coil changes at which it stopped.", count(Verdict.Changes::stopped))
                .optionalText(
                        "main_cause",
                        "The cause of most coil changes that did not run through; null where all did.",
                        result -> result.verdict()
                                .flatMap(verdict ->
                                        verdict.namedCauses().stream().findFirst())
                                .map(most -> most.reason())
                                .map(Reason::words));
    }

    private static JsonShape<CaseResult> margins(JsonShape<CaseResult> shape) {
        return shape.optionalNumber(
                        "margin_m",
                        "Margin at the target as strip, negative for a shortfall; null where entry and process are one strip.",
                        margin(Verdict.Spare::metres))
                .optionalNumber("margin_s", "The same as joint cycle time.", margin(Verdict.Spare::seconds))
                .optionalNumber("margin_m_per_s", "The same as process speed.", margin(Verdict.Spare::speed))
                .optionalNumber(
                        "share_without_stop",
                        "Share of coil changes run through or slowed; null where the process cannot slow.",
                        result -> optional(result.verdict()
                                .flatMap(Verdict::withoutStop)
                                .map(second -> second.share().mean())));
    }

    /** The JSON Schema (draft 7) of a line. */
    static String schema() {
        Map<String, ObjectNode> definitions = new TreeMap<>();
        ObjectNode schema = JsonNodeFactory.instance
                .objectNode()
                .put("$schema", "http://json-schema.org/draft-07/schema#")
                .put("title", "A line of runthrough sweep")
                .put(
                        "description",
                        "One case. Names carry SI units as in the other answers; shares are from 0 to 1. All members from"
                                + " answer on are null where the case could not be run. Those from answer_with_times to resamples are there"
                                + " with --uncertainty alone.");
        schema.setAll(
                JsonShape.schema(List.of(JsonSweep.HEAD, ANSWER, KnownDocument.MEMBERS, JsonSweep.TAIL), definitions));
        ArrayNode required = JsonNodeFactory.instance.arrayNode();
        schema.path("required").forEach(member -> {
            if (!KnownDocument.MEMBERS.names().contains(member.asText())) {
                required.add(member);
            }
        });
        schema.set("required", required);
        return JsonWriter.text(schema);
    }

    private static Function<CaseResult, OptionalDouble> number(ToDoubleFunction<Verdict> value) {
        return result -> optional(result.verdict().map(value::applyAsDouble));
    }

    private static Function<CaseResult, OptionalDouble> end(Function<Verdict, Estimate> value, boolean isLow) {
        return number(verdict -> JsonFields.end(value.apply(verdict), verdict.chance(), isLow));
    }

    private static Function<CaseResult, OptionalDouble> margin(ToDoubleFunction<Verdict.Spare> value) {
        return result -> optional(result.verdict().flatMap(Verdict::spare).map(value::applyAsDouble));
    }

    private static Function<CaseResult, Optional<Long>> count(ToLongFunction<Verdict.Changes> value) {
        return result -> result.verdict().map(verdict -> value.applyAsLong(verdict.changes()));
    }

    static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
