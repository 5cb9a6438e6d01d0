package runthrough.handcalc;

import runthrough.plant.Line;

/**
 * Preparing the next coil, held against the time there is for it: mean times, every coil change like the other.
 *
 * <p>From one tail stopping in the joiner to the next is a cycle K; the strip stands for the work W of a joint, of which
 * the tail work t comes first, and of which preparing again after rejects, which the joint always waits for, is a part here. The tail leaves its uncoiler a time p before it stops in the joiner, taken with the strip
 * running at the process's speed before it slows down.
 *
 * <ul>
 *   <li>One uncoiler, and people enough to prepare and to work on the joint at the same time: preparing begins when the tail leaves the uncoiler and may last until the tail
 *       work is done: {@code p + t}.
 *   <li>Two uncoilers or more, and people enough for both: coils are prepared one after another while others run. However many
 *       uncoilers there are, in the long run one coil must be prepared in each cycle: {@code K}.
 *   <li>One uncoiler, and too few people to prepare and to work on the joint at the same time: what is begun when the tail
 *       leaves the uncoiler is put down when it stops; once the tail work is done, the joint waits for the rest: {@code p}.
 *   <li>Two uncoilers or more, and too few people for both: what is left of a cycle beside the work of the joint, for which
 *       preparing is put down and then taken up again: {@code K - W}.
 * </ul>
 *
 * Where people come by shifts the largest crew of any shift is taken, and breaks are left out.
 *
 * <p>What preparing takes beyond that, the joint waits for. Waiting lengthens the joint cycle time; with two uncoilers or more it may
 * also grow from change to change, when the people have more work in a cycle than time.
 *
 * <p>Rule FORM-9.
 *
 * @param rule which of these holds
 * @param needed mean time to prepare a coil (s), {@code >= 0}
 * @param withoutWaiting time there is for it before the joint must wait (s), {@code >= 0}
 * @param waiting how long the joint waits for it (s), {@code >= 0}; where it grows, this is 0
 * @param grows whether the waiting grows from change to change, so that in the end the process must stop
 */
public record Preparation(Rule rule, double needed, double withoutWaiting, double waiting, boolean grows) {

    /** How much time there is to prepare a coil without waiting; see {@link Preparation}. */
    public enum Rule {
        /** From when the tail leaves the only uncoiler until the tail work is done: {@code p + t}. */
        UNTIL_TAIL_WORK_DONE,
        /** A whole cycle: {@code K}. */
        WHOLE_CYCLE,
        /** From when the tail leaves its uncoiler until it stops in the joiner: {@code p}. */
        UNTIL_TAIL_STOPS,
        /** A cycle less the work of a joint: {@code K - W}. */
        BETWEEN_JOINTS
    }

    /**
     * The preparation of {@code line}.
     *
     * @param needed mean time to prepare a coil (s)
     * @param cycle K, without any waiting (s)
     * @param work W of a joint, without any waiting (s)
     * @param tailWork t (s)
     * @param leaving p (s)
     */
    static Preparation of(Line line, double needed, double cycle, double work, double tailWork, double leaving) {
        boolean alone = !line.work().canPrepareDuringJoint();
        boolean single = line.entry().uncoilers() == 1;
        Rule rule = alone
                ? single ? Rule.UNTIL_TAIL_STOPS : Rule.BETWEEN_JOINTS
                : single ? Rule.UNTIL_TAIL_WORK_DONE : Rule.WHOLE_CYCLE;
        double time = Math.max(
                0,
                switch (rule) {
                    case UNTIL_TAIL_WORK_DONE -> leaving + tailWork;
                    case WHOLE_CYCLE -> cycle;
                    case UNTIL_TAIL_STOPS -> leaving;
                    case BETWEEN_JOINTS -> cycle - work;
                });
        // Where waiting stretches the cycle itself, as on one strip, it cannot grow.
        boolean grows = !line.practice().isOneStrip() && !single && needed > (alone ? cycle - work : cycle);
        return new Preparation(rule, needed, time, grows ? 0 : Math.max(0, needed - time), grows);
    }
}
