package runthrough.handcalc;

import java.util.Optional;
import runthrough.quantity.Kind;

/**
 * The symbols of a {@link StopAndGo}, and the formulas made of them.
 *
 * @param acceleration a
 * @param deceleration d
 * @param creep what creeping adds, if anything
 */
record Ramps(Term acceleration, Term deceleration, Optional<Creep> creep) {

    /** The creep speed v_c, the creep length l_c, and the time t_c for which the creep speed is held. */
    record Creep(Term speed, Term length, Term time) {}

    /** Writes down the ramps of {@code strip}; where entry and process are one strip, they need no index. */
    static Ramps given(Sheet sheet, Term speed, StopAndGo strip, boolean isOneStrip) {
        String index = isOneStrip ? "" : "_e";
        String whose = isOneStrip ? "" : "entry ";
        Term a = sheet.given("a" + index, whose + "acceleration", strip.acceleration(), Kind.ACCELERATION);
        Term d = sheet.given("d" + index, whose + "deceleration", strip.deceleration(), Kind.ACCELERATION);
        return new Ramps(a, d, strip.creep().map(creep -> {
            Term v = sheet.given("v_c", "creep speed", creep.speed(), Kind.SPEED);
            Term l = sheet.given("l_c", "creep length", creep.length(), Kind.LENGTH);
            Sum held = new Sum().plus("{}", l).minusRamp(v, d);
            Term t = new Term("t_c", "creep speed held", strip.creepTime(), Kind.TIME);
            return new Creep(v, l, sheet.step(t, held.over(v)));
        }));
    }

    /** {@code V S + V^2/(2 d) + V^2/(2 a) + (V - v_c) t_c}, see {@link StopAndGo#missed}. */
    Sum missed(Term speed, Term standing) {
        Sum sum = new Sum()
                .plus("{} * {}", speed, standing)
                .plusRamp(speed, deceleration)
                .plusRamp(speed, acceleration);
        creep.ifPresent(c -> sum.plus("({} - {}) * {}", speed, c.speed(), c.time()));
        return sum;
    }

    /** {@code V^2/(2 d)}, or with creep {@code l_c + (V^2 - v_c^2)/(2 d)}, see {@link StopAndGo#runOutLength}. */
    Sum runOut(Term speed) {
        if (creep.isEmpty()) {
            return new Sum().plusRamp(speed, deceleration);
        }
        Creep c = creep.orElseThrow();
        return new Sum().plus("{}", c.length()).plusRamp(speed, deceleration).minusRamp(c.speed(), deceleration);
    }

    /** The time in which the last {@code length} run, see {@link StopAndGo#timeOfLast}: the formula that applies. */
    Sum timeOfLast(Term length, Term speed, Term runOut) {
        Sum sum = new Sum();
        if (length.value() >= runOut.value()) {
            sum.plusQuotient(speed, deceleration);
            creep.ifPresent(c -> sum.plus("{}", c.time()));
            return sum.plus("({} - {}) / {}", length, runOut, speed);
        } else if (creep.isEmpty()) {
            return sum.plus("sqrt(2 * {} / {})", length, deceleration);
        }
        Creep c = creep.orElseThrow();
        if (length.value() <= c.length().value()) {
            return creepingOnly(length, c);
        }
        return sum.plus(
                        "sqrt({}^2 + 2 * {} * ({} - {})) / {}",
                        c.speed(),
                        deceleration,
                        length,
                        c.length(),
                        deceleration)
                .plus("{}", c.time());
    }

    private Sum creepingOnly(Term length, Creep c) {
        double stop = c.speed().value() * c.speed().value() / (2 * deceleration.value());
        if (length.value() <= stop) {
            return new Sum().plus("sqrt(2 * {} / {})", length, deceleration);
        }
        Sum held =
                new Sum().plus("{}", length).minusRamp(c.speed(), deceleration).over(c.speed());
        return held.plusQuotient(c.speed(), deceleration);
    }
}
