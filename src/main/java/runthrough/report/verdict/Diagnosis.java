package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.handcalc.ClosedForms;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.plant.Accumulator;
import runthrough.plant.Line;
import runthrough.quantity.Kind;
import runthrough.report.Texts;
import runthrough.report.lever.LeverWords;
import runthrough.report.lever.WayWords;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.Goal;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.cause.Cause;
import runthrough.study.cause.NamedCauses;
import runthrough.study.lever.Levers;

/** The limiting factor, the margin or shortfall, and what to change, in sentences. */
final class Diagnosis {
    /** When the accumulator is full again less often than this, what it held at first may be what the run lives on. */
    private static final double SELDOM = 0.01;

    private final RunThroughResult result;
    private final Verdict verdict;
    private final HandCalculation hand;
    private final Texts texts;

    Diagnosis(RunThroughResult result) {
        this.result = result;
        this.verdict = result.verdict();
        this.hand = result.handCalculation();
        this.texts = result.texts();
    }

    /** What keeps the line from running through, or comes nearest to it. */
    String limiting() {
        if (result.isOneStrip()) {
            return result.line().practice().hasJoiner()
                    ? "the practice; without an accumulator the process stands while the joint is made."
                    : "the practice; without a joiner the line stops and is threaded anew at every coil change.";
        }
        long failed = verdict.changes().failed();
        if (failed == 0) {
            return "no coil change failed; nearest to failing is "
                    + hand.limitingFactor().map(Diagnosis::named).orElse("none") + ", by the hand calculation.";
        }
        NamedCauses.Count main = verdict.namedCauses().get(0);
        String which = main.changes() < failed
                ? Texts.count(main.changes()) + " of the " + Texts.count(failed) + " coil changes"
                : failed == 1 ? "the one coil change" : "all " + Texts.count(failed) + " coil changes";
        return main.reason().words() + ", at " + which + " that did not run through.";
    }

    /** Why the removal of a cause may show more stops in a year; empty where none does. */
    Optional<String> moreStops() {
        boolean isMore =
                result.worths().stream().anyMatch(worth -> worth.stops().mean() < 0);
        return isMore
                ? Optional.of(
                        "Fewer stops below 0: without that cause less time is lost, so that more coil changes come in a"
                                + " year, and with them a few more stops.")
                : Optional.empty();
    }

    /** Where the accumulator is hardly ever full again: a run begins with it full, so that a longer one may do worse. */
    Optional<String> fallingLevel() {
        return verdict.storage()
                .map(storage -> storage.shareRefilled().mean())
                .filter(share -> verdict.answer() == TargetStatus.MEETS && share < SELDOM)
                .map(share -> "The accumulator is full again at " + texts.share(share)
                        + " of coil changes, and the run begins with it full: a longer run may do worse. Try more coil changes,"
                        + " or the study of size, which looks at the long run.");
    }

    /** The margin or shortfall at the target; empty where entry and process are one strip. */
    Optional<String> margin() {
        return verdict.spare().map(spare -> {
            boolean enough = spare.metres() >= 0;
            String lengths = texts.marginSize(Kind.LENGTH, spare.metres()).text() + " of strip, which is "
                    + texts.marginSize(Kind.TIME, spare.seconds()).text() + " of " + result.joint() + " or "
                    + texts.marginSize(Kind.SPEED, spare.speed()).text() + " of process speed";
            return (enough ? "Margin at the target of " : "Shortfall at the target of ")
                    + Texts.target(verdict.target()) + ": " + lengths + ".";
        });
    }

    /** What would help, most direct first, then which coil is the worst. */
    List<String> changes() {
        List<String> changes = new ArrayList<>(remedies());
        CoilTexts.of(result).ifPresent(coils -> {
            coils.worst().ifPresent(worst -> changes.add("The coil that is hardest on the line is " + worst));
            coils.notSeen().ifPresent(changes::add);
        });
        return changes;
    }

    List<String> remedies() {
        if (result.isOneStrip()) {
            return forOneStrip();
        }
        if (verdict.answer() == TargetStatus.MEETS) {
            return List.of(
                    verdict.meetsAll()
                            ? "Nothing needs to change to meet the target."
                            : "Nothing needs to change to run through; the target without a stop is not met.");
        }
        List<String> changes = new ArrayList<>();
        forRejects().ifPresent(changes::add);
        Cause main = verdict.causes().main().orElse(limitingFactor());
        if (main == Cause.WAITING_FOR_PREPARATION) {
            changes.addAll(forPreparation());
        } else if (main == Cause.ACCUMULATOR_NOT_FULL) {
            changes.addAll(forRefill());
        }
        result.levers()
                .ifPresentOrElse(
                        levers -> changes.addAll(enough(levers)),
                        () -> changes.add(
                                "What would meet the target, each change on its own, is found by the study of limits."));
        if (verdict.answer() == TargetStatus.UNDECIDED) {
            changes.add("Run more coil changes: those that were run do not decide.");
        }
        return changes;
    }

    /** What would meet the target to run through, the numbers those of every other command. */
    private List<String> enough(Levers levers) {
        LeverWords words = LeverWords.of(result.study().request());
        List<String> ways = levers.enough().stream()
                .filter(lever -> lever.goal().what() == Goal.What.RUN_THROUGH)
                .map(words::sentence)
                .toList();
        return ways.isEmpty()
                ? List.of("Nothing that was tried on its own meets the target.")
                : Stream.concat(
                                ways.stream().map(way -> "On its own would meet the target: " + way + "."),
                                together(levers))
                        .toList();
    }

    private Stream<String> together(Levers levers) {
        WayWords words = WayWords.of(result.study().request());
        return levers.pairs().stream()
                .filter(pair -> pair.goal().what() == Goal.What.RUN_THROUGH)
                .map(pair -> "Together would meet the target: " + words.sentence(pair) + ".");
    }

    /** Whether most failures are coil changes whose joint was made more than once, as far as the first replication shows. */
    private Optional<String> forRejects() {
        List<ChangeRecord> failed = result.study().first().changes().stream()
                .filter(change -> change.outcome() != Outcome.RAN_THROUGH)
                .toList();
        long again = failed.stream().filter(change -> change.passes() > 1).count();
        return 2 * again > failed.size()
                ? Optional.of("Fewer rejected joints: " + again + " of the " + failed.size()
                        + " coil changes that failed in the first replication had their joint made more than once.")
                : Optional.empty();
    }

    private List<String> forOneStrip() {
        Line line = result.line();
        if (!line.practice().hasJoiner()) {
            return List.of(
                    "A joiner in place of rethreading saves the threading; with an accumulator as well, the process need not "
                            + "stop at all.");
        }
        double joint = hand.joint().total();
        Line joined = line.with(Accumulator.none());
        double needed = ClosedForms.of(joined, hand.coil()).capacityNeeded(joint);
        return List.of("An accumulator: to run through a joint of " + texts.time(joint) + " takes at least "
                + texts.length(needed)
                + " of strip, by the hand calculation, and an entry that is faster than the process.");
    }

    private List<String> forPreparation() {
        List<String> changes = new ArrayList<>();
        changes.add("Have the next coil ready sooner: preparing takes "
                + texts.time(hand.preparation().needed())
                + " on average, and there is " + texts.time(hand.preparation().withoutWaiting())
                + " for it before the joint waits.");
        if (result.line().entry().uncoilers() == 1) {
            changes.add("A second uncoiler lets the next coil be prepared while this one runs.");
        }
        if (result.line().change().crew() == 1) {
            changes.add("A second person lets preparing and joining overlap.");
        }
        return changes;
    }

    private List<String> forRefill() {
        Line line = result.line();
        boolean limited = line.accumulator().fillRateLimit() < line.entry().topSpeed() - hand.speed();
        List<String> changes = new ArrayList<>();
        changes.add(
                limited
                        ? "Fill faster: the accumulator's fill-rate limit of "
                                + texts.speed(line.accumulator().fillRateLimit())
                                + " is the limiting factor, not the entry's top speed."
                        : "Fill faster: the entry's top speed is "
                                + texts.speed(line.entry().topSpeed()) + ", the process runs at "
                                + texts.speed(hand.speed()) + ".");
        changes.add("Longer coils leave more time to fill, shorter joints less to fill.");
        return changes;
    }

    private Cause limitingFactor() {
        return hand.limitingFactor()
                .flatMap(limit -> Stream.of(Cause.values())
                        .filter(cause -> cause.limit().equals(Optional.of(limit)))
                        .findFirst())
                .orElse(Cause.USUAL_JOINT_TOO_LONG);
    }

    private static String named(Limit limit) {
        return switch (limit) {
            case CAPACITY -> "the capacity of the accumulator";
            case REFILL -> "the time to fill the accumulator again";
            case PREPARATION -> "the time to prepare the next coil";
        };
    }
}
