package runthrough.plant.check;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Coil;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.JointPassage;
import runthrough.plant.TravelSpeed;
import runthrough.plant.WorkElement;
import runthrough.quantity.Numbers;

/**
 * Whether a joint can pass through the process as described, and whether travel speeds are given for all joints there may be.
 *
 * <p>Rules CHECK-28, CHECK-29, CHECK-31.
 */
final class JointCheck {
    /** A chance at a joint that no run meets. */
    private static final double SELDOM = 1e-6;

    private final Line line;
    private final Messages messages;
    private final Wording in;

    private JointCheck(Line line, Messages messages) {
        this.line = line;
        this.messages = messages;
        this.in = messages.in();
    }

    static void check(Line line, Messages messages) {
        JointCheck check = new JointCheck(line, messages);
        if (!line.practice().hasJoiner()) {
            check.noJoint();
        } else {
            line.process().jointPassage().ifPresent(passage -> {
                check.passageSpeed(passage);
                check.passageLength(passage);
            });
        }
        check.travelSpeeds(LinePart.PREPARE, line.change().prepare());
        if (line.practice().hasJoiner()) {
            check.travelSpeeds(LinePart.TAIL, line.change().tail());
            check.travelSpeeds(LinePart.JOIN, line.change().join());
            check.rejects();
        }
    }

    /** Rule CHECK-38. */
    private void rejects() {
        double shortest = shortestUsable();
        double perReject = line.coils().stream()
                        .mapToDouble(Coil::tailCrop)
                        .max()
                        .orElseThrow()
                + line.coils().stream().mapToDouble(Coil::headCrop).max().orElseThrow();
        double many = Math.max(1, Math.ceil(shortest / perReject));
        double share = line.change().reject().shareOf(many);
        if (shortest > 0 && share >= SELDOM) {
            messages.warning(
                    LinePart.REJECT,
                    in.length(perReject) + " of strip for each rejected joint; " + Numbers.text(many, 3)
                            + " of them use up the shortest coil, " + in.length(shortest) + ", at 1 joint in "
                            + in.oneIn(share),
                    "A run that meets it ends with an error: give longer coils, shorter crops or fewer rejects.");
        }
    }

    private double shortestUsable() {
        return line.coils().stream()
                .mapToDouble(coil -> coil.usableLength(Distribution.LEAST_DRAW))
                .min()
                .orElseThrow();
    }

    private void noJoint() {
        String rule = "; must not be given with the practice of rethreading, which makes no joint";
        String remedy = "Leave it out, or choose another practice.";
        line.process()
                .jointPassage()
                .ifPresent(passage -> messages.error(LinePart.JOINT_PASSAGE, in.speed(passage.speed()) + rule, remedy));
        line.process()
                .jointBreak()
                .ifPresent(breaks ->
                        messages.error(LinePart.JOINT_BREAK, in.share(breaks.chance()) + " of joints" + rule, remedy));
    }

    private void passageSpeed(JointPassage passage) {
        double fastest = line.fastestRatedSpeed();
        if (Excess.isAtLeast(passage.speed(), fastest)) {
            messages.error(
                    LinePart.JOINT_PASSAGE_SPEED,
                    in.speed(passage.speed()) + "; must be less than the process speed, " + in.mostSpeed(fastest),
                    "Give a lower speed, or leave the joint passage out.");
        }
    }

    private void passageLength(JointPassage passage) {
        double length = passage.before() + passage.after();
        double shortest = shortestUsable();
        if (Excess.isMore(length, shortest)) {
            messages.warning(
                    LinePart.JOINT_PASSAGE,
                    in.length(length)
                            + " of strip before and after the joint; should be at most the usable strip of the"
                            + " shortest coil, " + in.mostLength(shortest),
                    "The process is slowed for the next joint before this one has passed: give fewer metres.");
        }
    }

    private void travelSpeeds(LinePart list, List<WorkElement> elements) {
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            if (element.time() instanceof WorkElement.WorkTime.Travel travel
                    && travel.speed() instanceof TravelSpeed.ByThickness table) {
                travelSpeeds(list.element(i) + "." + element.name() + ".travel", table);
            }
        }
    }

    private void travelSpeeds(String path, TravelSpeed.ByThickness table) {
        double[] range = jointThickness();
        if (range[0] < table.thinnest() || range[1] > table.thickest()) {
            messages.warning(
                    path,
                    in.thicknesses(table.thinnest(), table.thickest())
                            + " of strip; should cover the thicker strip of every joint, "
                            + in.thicknesses(range[0], range[1]),
                    "Outside of the table the speed of its nearest row is taken: add rows.");
        }
    }

    /** The least and the greatest thickness (m) of the thicker strip of any joint. */
    private double[] jointThickness() {
        DoubleSummaryStatistics all = IntStream.range(0, line.coils().size())
                .mapToObj(kind -> line.coilSource().joints(kind))
                .flatMapToDouble(joints ->
                        joints.all().stream().mapToDouble(share -> share.joint().thickness()))
                .summaryStatistics();
        return new double[] {all.getMin(), all.getMax()};
    }
}
