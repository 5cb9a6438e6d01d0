package runthrough.handcalc;

import java.util.Optional;
import runthrough.plant.Line;
import runthrough.quantity.Kind;

/** Works the hand calculation on a sheet, in the order in which an engineer would: givens, coil, preparation, joint, stop. */
final class Working {
    private final LineCase lineCase;
    private final Line line;
    private final StopAndGo strip;
    private final Sheet sheet = new Sheet();
    private final WorkWorking workWorking;
    private final GivenWorking givenWorking = new GivenWorking(sheet);

    private final Term speed;
    private final Ramps ramps;
    private final Term runOut;

    private Working(LineCase lineCase) {
        this.lineCase = lineCase;
        this.line = lineCase.line();
        this.strip = lineCase.forms().entry();
        this.workWorking = new WorkWorking(sheet, line.change(), lineCase.joints());
        boolean isOneStrip = lineCase.isOneStrip();
        this.speed = sheet.given("V", isOneStrip ? "strip speed" : "process speed", strip.speed(), Kind.SPEED);
        this.ramps = Ramps.given(sheet, speed, strip, isOneStrip);
        this.runOut = sheet.step(length("L_out", "strip that runs out", strip.runOutLength()), ramps.runOut(speed));
    }

    static Sheet of(LineCase lineCase) {
        Working working = new Working(lineCase);
        working.work();
        return working.sheet;
    }

    private void work() {
        workWorking.givens();
        Term usable = givenWorking.usable(
                lineCase.coil(), ClosedForms.extraPasses(line), lineCase.forms().usable());
        if (lineCase.isOneStrip()) {
            Term work = jointWork();
            Standstill standstill = lineCase.standstill();
            Term standing = standing(work);
            Term lost = sheet.step(
                    length("M", "strip not run at a coil change", strip.missed(standing.value())),
                    ramps.missed(speed, standing));
            Term cycle = sheet.step(
                    time("K", "from one coil change to the next", lineCase.idealCycle()),
                    "({} + {}) / {}",
                    usable,
                    lost,
                    speed);
            Optional<Term> waiting = waiting(cycle, work);
            waiting.ifPresent(wait -> sheet.step(
                    length("M_w", "strip not run, with waiting", standstill.lostMetres()),
                    "{} + {} * {}",
                    lost,
                    speed,
                    wait));
            Term whole = waiting.map(wait -> sheet.step(
                            time("K_w", "from one coil change to the next, with waiting", lineCase.cycle()),
                            "{} + {}",
                            cycle,
                            wait))
                    .orElse(cycle);
            sheet.step(new Term("O", "output", standstill.output(), Kind.RATE_LENGTH), "{} / {}", usable, whole);
        } else {
            Term cycle = sheet.step(
                    time("K", "from one coil change to the next", lineCase.idealCycle()), "{} / {}", usable, speed);
            Term work = jointWork();
            Optional<Term> waiting = waiting(cycle, work);
            Term joint = waiting.map(wait -> sheet.step(
                            time("T", "joint cycle time", lineCase.joint().total()), "{} + {}", work, wait))
                    .orElseGet(() -> sheet.step(time("T", "joint cycle time", work.value()), "{}", work));
            new StorageWorking(sheet, lineCase, speed, ramps, usable, runOut).work(joint, givenWorking);
        }
    }

    /** The work W of a joint; with what is prepared again after rejects where there is that. */
    private Term jointWork() {
        JointCycleTime joint = lineCase.work();
        if (!line.practice().hasJoiner()) {
            return sheet.given("W", "rethreading, on average", joint.work(), Kind.TIME);
        }
        Sum sum = new Sum()
                .plus(
                        "{}",
                        workWorking.list(
                                "T_tail", "work on the tail", line.change().tail()))
                .plus(
                        "{}",
                        workWorking.list(
                                "T_join",
                                "work that needs both coils",
                                line.change().join()));
        if (joint.redo() > 0) {
            sum.plus("{}", workWorking.redo(joint));
        }
        if (joint.saved() > 0) {
            sum.minus("{}", sheet.given("T_off", "time off every pass of the join work", joint.saved(), Kind.TIME));
        }
        Term work = sheet.step(time("W", "work while the strip stands", joint.work()), sum);
        return joint.waiting() > 0
                ? sheet.step(
                        time("W_a", "strip stands, the next coil prepared in time", joint.total()),
                        "{} + {}",
                        work,
                        workWorking.preparedAgain(joint))
                : work;
    }

    /** How long the strip stands, but for waiting. */
    private Term standing(Term work) {
        double delay = lineCase.restartDelay();
        if (delay == 0) {
            return work;
        }
        return sheet.step(
                time("S", "strip stands", work.value() + delay),
                "{} + {}",
                work,
                time("T_r", "restart delay, on average", delay));
    }

    /** The time to prepare a coil, the time there is, and what is waited for, if anything. */
    private Optional<Term> waiting(Term cycle, Term work) {
        Preparation preparation = lineCase.preparation();
        if (line.change().prepare().isEmpty()) {
            return Optional.empty();
        }
        Term needed =
                workWorking.list("T_prep", "preparing a coil", line.change().prepare());
        Term time = available(preparation, cycle, work);
        if (!(preparation.waiting() > 0)) {
            return Optional.empty();
        }
        return Optional.of(
                sheet.step(time("T_wait", "waiting for preparation", preparation.waiting()), "{} - {}", needed, time));
    }

    private Term available(Preparation preparation, Term cycle, Term work) {
        Term result = time("T_free", "time to prepare without waiting", preparation.withoutWaiting());
        Margin margin = new Margin(Kind.TIME, preparation.withoutWaiting(), preparation.needed());
        return switch (preparation.rule()) {
            case WHOLE_CYCLE -> sheet.step(result, margin, new Sum().plus("{}", cycle));
            case BETWEEN_JOINTS -> sheet.step(result, margin, new Sum().plus("{} - {}", cycle, work));
            case UNTIL_TAIL_STOPS -> sheet.step(result, margin, leaving(cycle, work));
            case UNTIL_TAIL_WORK_DONE -> sheet.step(result, margin, untilTailWorkDone(cycle, work));
        };
    }

    private Sum untilTailWorkDone(Term cycle, Term work) {
        Sum sum = leaving(cycle, work);
        double tail = lineCase.work().tail();
        return tail > 0 ? sum.plus("{}", time("T_tail", "work on the tail", tail)) : sum;
    }

    /** From when the tail leaves its uncoiler until it stops in the joiner; nothing without a path between them. */
    private Sum leaving(Term cycle, Term work) {
        double path = line.entry().uncoilerPath();
        if (path == 0) {
            return new Sum();
        }
        Term term = sheet.given("P", "strip path from uncoiler to joiner", path, Kind.LENGTH);
        Sum formula = path < lineCase.forms().usable()
                ? ramps.timeOfLast(term, speed, runOut)
                : new Sum().plus("{} - {}", cycle, work);
        return new Sum()
                .plus(
                        "{}",
                        sheet.step(
                                time("T_p", "from the tail leaving its uncoiler until it stops", lineCase.leaving()),
                                formula));
    }

    private static Term time(String symbol, String name, double value) {
        return new Term(symbol, name, value, Kind.TIME);
    }

    private static Term length(String symbol, String name, double value) {
        return new Term(symbol, name, value, Kind.LENGTH);
    }
}
