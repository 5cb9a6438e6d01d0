package runthrough.study.map;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.plant.SimulationRequest;
import runthrough.study.cause.Cause;

/**
 * Where a line meets the target, over two of its numbers.
 *
 * @param request what was asked
 * @param target share of coil changes that should run through
 * @param plan of the map
 * @param present what the line as it is gave
 * @param points that were run, row by row from the bottom
 * @param shares run through, over the map
 * @param closedForm the margin by the closed forms, over the map
 * @param limitX where the target is met along the x axis; empty where that is no lever or the line does not lie on the map
 * @param limitY the same along the y axis
 */
public record ShareMap(
        SimulationRequest request,
        double target,
        MapPlan plan,
        MapPoint.Measured present,
        List<MapPoint> points,
        Field shares,
        Field closedForm,
        Optional<AxisLimit> limitX,
        Optional<AxisLimit> limitY) {

    public ShareMap {
        points = List.copyOf(points);
    }

    /** The same with the answers of the levers that its axes are. */
    ShareMap with(Optional<AxisLimit> alongX, Optional<AxisLimit> alongY) {
        return new ShareMap(request, target, plan, present, points, shares, closedForm, alongX, alongY);
    }

    /** How much of the map, by area, is what; all in [0, 1]. */
    public record Parts(
            double possible, double meets, double enoughByClosedForms, double closedFormsOnly, double simulatedOnly) {}

    /** Which way from the line as it is. */
    public enum Way {
        LEFT(-1, 0),
        RIGHT(1, 0),
        DOWN(0, -1),
        UP(0, 1);

        private final int x;
        private final int y;

        Way(int x, int y) {
            this.x = x;
            this.y = y;
        }

        /** Whether it goes along the x axis. */
        public boolean isAlongX() {
            return x != 0;
        }
    }

    /** How much of the map meets the target, and where closed forms and simulation say different things. */
    public Parts parts() {
        return new Parts(
                shares.shareKnown(),
                shares.shareOfAtLeast(target),
                closedForm.shareOfAtLeast(0),
                partOf((share, spare) -> spare >= 0 && share < target),
                partOf((share, spare) -> spare < 0 && share >= target));
    }

    private interface Test {
        boolean holds(double share, double spare);
    }

    /** Part of the squares, each counted by its four corners. */
    private double partOf(Test test) {
        long found = 0;
        for (int column = 0; column < shares.columns(); column++) {
            for (int row = 0; row < shares.rows(); row++) {
                int squares = (column == 0 || column == shares.columns() - 1 ? 1 : 2)
                        * (row == 0 || row == shares.rows() - 1 ? 1 : 2);
                found += test.holds(shares.at(column, row), closedForm.at(column, row)) ? squares : 0;
            }
        }
        return found / (4.0 * (shares.columns() - 1) * (shares.rows() - 1));
    }

    /** Where the line as it is lies on the map, in points; empty where it lies beside it. */
    public Optional<Field.Position> own() {
        boolean isOnMap = plan.ownX().isPresent()
                && plan.ownY().isPresent()
                && plan.x().holds(plan.ownX().getAsDouble())
                && plan.y().holds(plan.ownY().getAsDouble());
        return isOnMap
                ? Optional.of(new Field.Position(
                        plan.x().position(plan.ownX().getAsDouble()),
                        plan.y().position(plan.ownY().getAsDouble())))
                : Optional.empty();
    }

    /** Where the target is met along the axis of {@code way}, see {@link #limitX}. */
    public Optional<AxisLimit> limitAlong(Way way) {
        return way.isAlongX() ? limitX : limitY;
    }

    /**
     * The value (SI) on the axis of {@code way} at which the target is lost or won, going that way from the line as it is: that of
     * the lever where the axis is one, else read off the grid.
     */
    public OptionalDouble limit(Way way) {
        Optional<Field.Position> from = own();
        if (from.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (limitAlong(way).isPresent()) {
            AxisLimit limit = limitAlong(way).get();
            double now = (way.isAlongX() ? plan.ownX() : plan.ownY()).orElseThrow();
            boolean goesUp = way == Way.RIGHT || way == Way.UP;
            return limit.value().isPresent() && limit.isUpwards(now) == goesUp ? limit.value() : OptionalDouble.empty();
        }
        OptionalDouble position = shares.passing(from.get(), way.x, way.y, target);
        MapAxis axis = way.isAlongX() ? plan.x() : plan.y();
        return position.isPresent()
                ? OptionalDouble.of(
                        axis.from() + position.getAsDouble() * (axis.to() - axis.from()) / (axis.points() - 1))
                : OptionalDouble.empty();
    }

    /** What most failures are attributed to where the closed forms see enough and the target is missed; empty where that is nowhere. */
    public Optional<Cause> causeMissedByClosedForms() {
        List<MapPoint.Measured> missed = points.stream()
                .flatMap(point -> point.measured().stream())
                .filter(found ->
                        found.closedForm().least() >= 0 && found.share().mean() < target)
                .toList();
        return Stream.of(Cause.values())
                .filter(cause -> count(missed, cause) > 0)
                .max(Comparator.comparingLong(cause -> count(missed, cause)));
    }

    private static long count(List<MapPoint.Measured> found, Cause cause) {
        return found.stream().mapToLong(point -> point.causes().count(cause)).sum();
    }
}
