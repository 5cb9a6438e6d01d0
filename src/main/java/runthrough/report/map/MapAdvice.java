package runthrough.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.report.Texts;
import runthrough.report.lever.LeverWords;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.map.AxisLimit;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPoint;
import runthrough.study.map.ShareMap;
import runthrough.study.map.ShareMap.Parts;
import runthrough.study.map.ShareMap.Way;

/** How far a line is from losing or meeting the target, where hand calculation and simulation differ, what is not possible. */
final class MapAdvice {
    /** A part of the map that is hardly there is not worth a word. */
    private static final double HARDLY = 0.005;
    /** A value between points of the grid on both axes may be off by so many steps. */
    static final int OFF = 2;

    private final ShareMap map;
    private final MapWords words;
    private final Texts texts;
    private final Parts parts;

    MapAdvice(MapWords words) {
        this.map = words.map();
        this.words = words;
        this.texts = words.texts();
        this.parts = map.parts();
    }

    List<String> all() {
        List<String> advice = new ArrayList<>();
        if (map.own().isPresent()) {
            advice.add(fromOwn(true));
            advice.add(fromOwn(false));
        } else {
            advice.add("The line as it is does not lie on this map.");
        }
        if (Stream.of(words.x(), words.y())
                        .anyMatch(axis -> axis.lever().equals(Optional.of(Lever.What.JOINT_CYCLE_TIME)))
                && Stream.of(map.limitX(), map.limitY())
                        .flatMap(Optional::stream)
                        .noneMatch(AxisLimit::isTakenOff)) {
            advice.add(
                    "Along joint cycle time every pass of the join work is shorter or longer by the same seconds, so that"
                            + " it is the mean asked for.");
        }
        if (map.request().line().practice().isOneStrip()) {
            advice.add("Without an accumulator every coil change stops the process, whatever the numbers.");
        } else {
            advice.addAll(againstHandCalculation());
        }
        if (parts.possible() < 1) {
            advice.add(notPossible());
        }
        return advice;
    }

    /** How far the line is from losing or meeting the target along one axis. */
    private String fromOwn(boolean alongX) {
        MapAxis axis = alongX ? words.x() : words.y();
        return "With " + MapWords.called(axis) + " changed alone, the target is "
                + (alongX ? map.limitX() : map.limitY()).map(this::byLever).orElseGet(() -> offTheGrid(axis, alongX));
    }

    /** What limits and levers say. */
    private String byLever(AxisLimit limit) {
        LeverAnswer answer = limit.answer();
        return switch (answer.status()) {
            case NONE_NEEDED -> "met at every value that was tried.";
            case NONE_IS_ENOUGH, DOES_NOT_APPLY -> "met at no value that was tried.";
            case ENOUGH ->
                (limit.isMetNow() ? "still met with " : "met with ")
                        + LeverWords.of(map.request()).sentence(answer)
                        + (limit.isMetNow() ? ", and lost beyond." : ".");
        };
    }

    private String offTheGrid(MapAxis axis, boolean alongX) {
        double now = (alongX ? map.plan().ownX() : map.plan().ownY()).orElseThrow();
        boolean meets = map.shares()
                        .at(map.own().orElseThrow().x(), map.own().orElseThrow().y())
                >= map.target();
        List<String> limits = Stream.of(Way.values())
                .filter(way -> way.isAlongX() == alongX)
                .flatMapToDouble(way -> map.limit(way).stream())
                .mapToObj(limit -> "at about " + MapWords.text(axis, limit) + ", "
                        + MapWords.text(axis, Math.abs(limit - now)) + (limit < now ? " less" : " more"))
                .toList();
        return limits.isEmpty()
                ? (meets ? "met" : "missed") + " at every point of the grid"
                        + (parts.possible() < 1
                                ? " where a line can be so."
                                : ", from " + MapWords.text(axis, axis.from()) + " to " + MapWords.text(axis, axis.to())
                                        + ".")
                : (meets ? "lost " : "met ") + String.join(", or ", limits)
                        + ". That is read off the grid, and may be off by two of its steps, "
                        + MapWords.text(axis, OFF * axis.step()) + ".";
    }

    /** Where the closed forms say something else than the simulation, and why. */
    private List<String> againstHandCalculation() {
        List<String> said = new ArrayList<>();
        if (parts.closedFormsOnly() > HARDLY) {
            said.add("On " + MapWords.part(parts.closedFormsOnly()).text()
                    + " of the map the hand calculation finds enough, and yet the target is missed: "
                    + reason() + cause());
        }
        if (parts.simulatedOnly() > HARDLY) {
            said.add("On " + MapWords.part(parts.simulatedOnly()).text()
                    + " of the map the target is met although the hand calculation does not find enough: it holds the"
                    + " whole line against its hardest coil and against changes that follow one another at their mean"
                    + " times, and a target below 100 % leaves some coil changes to fail.");
        }
        if (said.isEmpty()) {
            said.add("The hand calculation draws the same line as the simulation, within a cell of the map.");
        }
        return said;
    }

    private String reason() {
        return texts.random()
                ? "it knows mean times only, and " + words.target()
                        + " of coil changes must run through, also those with long joints, rejects or late coils."
                : "it takes one coil change by itself, and does not see what one leaves to the next.";
    }

    private String cause() {
        return map.causeMissedByClosedForms()
                .map(cause -> " There most fail by this cause: " + cause.words() + ".")
                .orElse("");
    }

    private String notPossible() {
        String example = map.points().stream()
                .map(MapPoint::refusal)
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
        return "On " + MapWords.part(1 - parts.possible()).text() + " of the map no line can be so, such as: " + example
                + ".";
    }
}
