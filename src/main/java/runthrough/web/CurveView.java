package runthrough.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.study.StudyListener;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing;
import runthrough.study.sizing.SizingOptions;
import runthrough.study.sizing.SizingStudy;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Share run through against capacity.
 *
 * @param points smallest capacity first
 * @param target share asked for
 * @param present capacity (m)
 * @param words what the curve says
 */
record CurveView(List<PointView> points, double target, double present, String words) {

    CurveView {
        points = List.copyOf(points);
    }

    /** One capacity (m) and the share seen with it, with its interval. */
    record PointView(double capacity, double share, double low, double high) {
        static @Nullable PointView of(Sizing.Point point, boolean chance) {
            Estimate share = point.share().orElse(null);
            Optional<Interval> interval =
                    point.share().flatMap(Estimate::interval).filter(any -> chance);
            return share == null
                    ? null
                    : new PointView(
                            point.size().capacity(),
                            share.mean(),
                            interval.map(Interval::low).orElse(share.mean()),
                            interval.map(Interval::high).orElse(share.mean()));
        }
    }

    static CurveView of(SimulationRequest request, int threads, StudyListener listener) {
        // As size itself does, so that both say the same.
        SizingOptions usual = SizingOptions.usual(
                AnswerPrecision.target(request), request.run().replications());
        Sizing sizing = new SizingStudy(request, usual).run(threads, listener);
        String words = switch (sizing.answer()) {
            case FOUND -> "The target takes " + found(sizing) + ".";
            case NONE_IS_ENOUGH ->
                "No capacity is enough: in the long run the accumulator runs empty whatever it" + " holds.";
            case NOT_APPLICABLE -> "";
        };
        return new CurveView(
                sizing.curve().stream()
                        .map(point -> PointView.of(point, sizing.chance()))
                        .filter(point -> point != null)
                        .toList(),
                request.run().target(),
                request.line().accumulator().capacity(),
                words);
    }

    /** The smallest capacity, as every command says it: in whole strands where there are any. */
    private static String found(Sizing sizing) {
        Notation least = Notation.of(Kind.LENGTH, 1, sizing.request().resultsIn())
                .atLeast()
                .setting();
        String smallest = least.text(sizing.smallest().orElseThrow().capacity());
        OptionalDouble strands = sizing.strands().map(Crossing::answer).orElse(OptionalDouble.empty());
        return strands.isPresent()
                ? least.text(strands.getAsDouble()) + " in whole strands, and " + smallest + " with another stroke"
                : smallest;
    }
}
