package runthrough.simulation.motion;

import static runthrough.simulation.records.SimulationException.text;

import runthrough.plant.Line;
import runthrough.simulation.account.ObservedLine;
import runthrough.simulation.records.Trace.EntryState;

/**
 * The state of the line: speeds, level, what is left of the running coil, and what holds the process. Between events it is
 * integrated in closed form. SI units; accelerations are signed.
 *
 * <p>Rules MOTION-1, MOTION-4, NUM-3.
 */
public final class LineState implements ObservedLine {
    private final Line line;

    /** Whether there is an accumulator; without one entry and process are one strip. */
    final boolean hasAccumulator;
    /** Capacity C of the accumulator (m); 0 without one. */
    final double capacity;
    /** What rounding may do to a level (m): beyond it a crossing is a crossing. */
    final double tolerance;

    final StripEnd entry;
    final StripEnd process;

    /** Level above the accumulator's empty position. */
    double level;
    /** Usable strip of the running coil that has yet to pass the joiner. */
    double remaining;
    /** Rated speed V in force. */
    double rated;
    /** The process is held on a low level, or in a coil change where it is one strip with the entry. */
    boolean starved;

    boolean slowed;
    /** The process is held by downtime. */
    boolean down;
    /** The process is held by a joint that broke in it. */
    boolean broken;
    /** The speed (m/s) that joints passing through the process allow; infinite while none passes. */
    double passageSpeed = Double.POSITIVE_INFINITY;
    /** No joint is under way. */
    boolean released = true;

    EntryState entryState = EntryState.MATCHED;

    private double entered;
    private double processed;
    private double lowest;
    private double highest;
    private double levelIntegral;

    /** The state of {@code line}, at rest. */
    public LineState(Line line) {
        this.line = line;
        hasAccumulator = !line.practice().isOneStrip();
        capacity = line.accumulator().capacity();
        tolerance = line.accumulator().levelTolerance();
        entry = new StripEnd(line.entry().acceleration(), line.entry().deceleration());
        process = new StripEnd(line.startingAcceleration(), line.stoppingDeceleration());
    }

    /** Whether there is an accumulator. */
    public boolean hasAccumulator() {
        return hasAccumulator;
    }

    /** The speed v* that the process is heading for: its present one when it is not ramping. */
    double target() {
        return process.goal;
    }

    /** Whether the process has its rated speed, and nothing holds it or slows it. */
    boolean isAtRated() {
        return process.acceleration == 0
                && process.speed == rated
                && process.goal == rated
                && !(starved || slowed || down || broken || isInJointPassage());
    }

    /** Rate of change of the level (m/s). */
    double levelRate() {
        return entry.speed - process.speed;
    }

    /** Half the rate of change of that rate (m/s2). */
    double levelBend() {
        return (entry.acceleration - process.acceleration) / 2;
    }

    /** Moves on by {@code dt} seconds, {@code >= 0}, at the present accelerations. */
    public void advance(double dt) {
        double rate = levelRate();
        double bend = levelBend();
        double endLevel = levelAfter(dt);
        double turn = turnWithin(dt, endLevel);
        lowest = Math.min(Math.min(level, endLevel), turn);
        highest = Math.max(Math.max(level, endLevel), turn);
        levelIntegral = dt * (level + dt * (rate / 2 + dt * bend / 3));
        level = endLevel;

        double in = entry.advance(dt);
        entered += in;
        remaining -= in;
        processed += process.advance(dt);
    }

    private double levelAfter(double dt) {
        return level + dt * (levelRate() + dt * levelBend());
    }

    /** The level (m) at which it turns within {@code dt} seconds; {@code endLevel} where it does not. */
    private double turnWithin(double dt, double endLevel) {
        double rate = levelRate();
        double bend = levelBend();
        double endRate = rate + 2 * bend * dt;
        return rate * endRate < 0 ? level - rate * rate / (4 * bend) : endLevel;
    }

    /** The lowest level (m) within {@code dt} seconds, {@code >= 0}, at the present accelerations, both ends included. */
    double lowestWithin(double dt) {
        double endLevel = levelAfter(dt);
        return Math.min(Math.min(level, endLevel), turnWithin(dt, endLevel));
    }

    @Override
    public double level() {
        return level;
    }

    @Override
    public double capacity() {
        return capacity;
    }

    @Override
    public double tolerance() {
        return tolerance;
    }

    @Override
    public double lowestLevel() {
        return lowest;
    }

    @Override
    public double highestLevel() {
        return highest;
    }

    @Override
    public double levelIntegral() {
        return levelIntegral;
    }

    @Override
    public double entered() {
        return entered;
    }

    @Override
    public double processed() {
        return processed;
    }

    @Override
    public double remaining() {
        return remaining;
    }

    @Override
    public double entrySpeed() {
        return entry.speed;
    }

    @Override
    public double entryAcceleration() {
        return entry.acceleration;
    }

    @Override
    public double processSpeed() {
        return process.speed;
    }

    @Override
    public double processAcceleration() {
        return process.acceleration;
    }

    @Override
    public double ratedSpeed() {
        return rated;
    }

    @Override
    public double stopLevelAtRated() {
        return hasAccumulator ? line.stopLevel(rated) : 0;
    }

    @Override
    public boolean isStarved() {
        return starved;
    }

    @Override
    public boolean isSlowed() {
        return slowed;
    }

    @Override
    public boolean isDown() {
        return down;
    }

    @Override
    public boolean isBroken() {
        return broken;
    }

    @Override
    public boolean isInJointPassage() {
        return passageSpeed < Double.POSITIVE_INFINITY;
    }

    @Override
    public boolean processStands() {
        return process.stands();
    }

    @Override
    public boolean isEntryBlocked() {
        boolean free = entryState != EntryState.RUNNING_OUT && entryState != EntryState.STANDING;
        return hasAccumulator && free && entry.stands();
    }

    @Override
    public EntryState entryState() {
        return entryState;
    }

    /** How the line stands, for error messages. */
    public String describe(int coil) {
        return "entry " + entryState + " at " + text(entry.speed) + " m/s, process at " + text(process.speed)
                + " m/s heading for " + text(target()) + " m/s, level " + text(level) + " m, " + text(remaining)
                + " m of coil " + coil
                + " left, joint " + (released ? "released" : "under way");
    }
}
