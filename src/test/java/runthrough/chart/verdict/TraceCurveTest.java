package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.data.xy.XYSeries;
import org.junit.jupiter.api.Test;
import runthrough.quantity.Unit;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.ProcessState;

class TraceCurveTest {

    @Test
    void levelCurvePassesThroughEveryBreakpoint() {
        Replication run = HandMadeRun.of(60, 97);
        XYSeries curve = levelOf(run.trace().orElseThrow());
        for (Trace.Point point : run.trace().orElseThrow().points()) {
            assertThat(at(curve, point.time())).isCloseTo(point.level(), within(1e-9));
        }
    }

    @Test
    void levelCurveFollowsTheParabolaBetweenItsPoints() {
        // 2 s of falling from 10 m at a net -0.4 m/s2: x = 10 - 0.2 t^2, so 9.8 m after 1 s and 9.55 m after 1.5 s.
        Trace trace = new Trace(List.of(point(0, 10, 1, -0.4, 1, 0), point(2, 9.2, 0.2, 0, 1, 0)), 10);
        XYSeries curve = levelOf(trace);
        double tolerance = 10.0 / 2000;
        assertThat(at(curve, 1)).isCloseTo(9.8, within(tolerance));
        assertThat(at(curve, 1.5)).isCloseTo(9.55, within(tolerance));
    }

    @Test
    void speedThatJumpsIsDrawnAsAVerticalLine() {
        Trace trace =
                new Trace(List.of(point(0, 10, 1, 0, 1, 0), point(5, 10, 0, 0, 1, 0), point(8, 7, 0, 0, 1, 0)), 10);
        XYSeries curve = curve(trace).entrySpeed(Unit.METRE_PER_SECOND);
        assertThat(points(curve)).containsExactly("0 1", "5 1", "5 0", "8 0");
    }

    @Test
    void speedsAreInTheUnitOfTheAxisAndTimeInThatOfTheClock() {
        Trace trace = new Trace(List.of(point(0, 10, 0.75, 0, 0.75, 0), point(120, 10, 0.75, 0, 0.75, 0)), 10);
        TraceCurve curve = new TraceCurve(window(trace), Unit.MINUTE, 60);
        assertThat(points(curve.processSpeed(Unit.METRE_PER_MINUTE))).containsExactly("-1 45", "1 45");
    }

    @Test
    void stretchIsCutAtItsEndsInsideAPiece() {
        Trace trace = new Trace(List.of(point(0, 10, 0, 0, 0.5, 0), point(10, 5, 0, 0, 0.5, 0)), 10);
        TraceWindow window = TraceWindow.of(trace, List.of(), 2, 4);
        XYSeries curve = new TraceCurve(window, Unit.SECOND, 0).level(Unit.METRE, 10);
        assertThat(points(curve)).containsExactly("2 9", "4 8");
    }

    @Test
    void longRunIsThinnedWithoutLosingItsLowestLevel() {
        double[] joints = new double[400];
        Arrays.fill(joints, 60);
        joints[251] = 88;
        Replication run = HandMadeRun.of(joints);
        XYSeries curve = levelOf(run.trace().orElseThrow());
        assertThat(curve.getItemCount()).isLessThanOrEqualTo(TraceCurve.MOST_POINTS);
        assertThat(curve.getMinY()).isCloseTo(run.changes().get(251).lowestLevel(), within(1e-9));
        assertThat(curve.getMaxY()).isEqualTo(HandMadeRun.CAPACITY);
    }

    private static XYSeries levelOf(Trace trace) {
        return curve(trace).level(Unit.METRE, trace.capacity());
    }

    private static TraceCurve curve(Trace trace) {
        return new TraceCurve(window(trace), Unit.SECOND, 0);
    }

    private static TraceWindow window(Trace trace) {
        return TraceWindow.of(trace, List.of(), 0, Double.MAX_VALUE);
    }

    private static Trace.Point point(double t, double x, double ve, double ae, double vp, double ap) {
        return new Trace.Point(t, x, ve, ae, vp, ap, 100, 1, EntryState.FILLING, ProcessState.RUNNING);
    }

    private static List<String> points(XYSeries series) {
        List<String> points = new ArrayList<>();
        for (int i = 0; i < series.getItemCount(); i++) {
            points.add(Math.round(series.getX(i).doubleValue() * 1e6) / 1000000
                    + " "
                    + Math.round(series.getY(i).doubleValue() * 1e6) / 1000000);
        }
        return points;
    }

    /** The drawn line at {@code x}, by linear interpolation. */
    private static double at(XYSeries series, double x) {
        for (int i = 0; i + 1 < series.getItemCount(); i++) {
            double from = series.getX(i).doubleValue();
            double to = series.getX(i + 1).doubleValue();
            if (x >= from && x <= to && to > from) {
                double y = series.getY(i).doubleValue();
                return y + (x - from) / (to - from) * (series.getY(i + 1).doubleValue() - y);
            }
        }
        throw new AssertionError("nothing drawn at " + x);
    }
}
