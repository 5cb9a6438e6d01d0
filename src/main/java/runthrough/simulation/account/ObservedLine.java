package runthrough.simulation.account;

import runthrough.simulation.records.Trace.EntryState;

/** The line as the account sees it: to be read, never moved. SI units; accelerations are signed. */
public interface ObservedLine {

    /** Strip above the accumulator's empty position (m). */
    double level();

    /** Capacity C of the accumulator (m); 0 without one. */
    double capacity();

    /** What rounding may do to a level (m). */
    double tolerance();

    /** Lowest level of the last stretch between two events, its ends included (m). */
    double lowestLevel();

    /** Highest level of the last stretch (m). */
    double highestLevel();

    /** Integral of the level over the last stretch (m s). */
    double levelIntegral();

    /** Strip past the joiner since time 0 (m). */
    double entered();

    /** Strip through the process section since time 0 (m). */
    double processed();

    /** Usable strip of the running coil that has yet to pass the joiner (m). */
    double remaining();

    /** Entry speed (m/s). */
    double entrySpeed();

    /** From here on (m/s2). */
    double entryAcceleration();

    /** Process speed (m/s). */
    double processSpeed();

    /** From here on (m/s2). */
    double processAcceleration();

    /** The rated speed V in force (m/s). */
    double ratedSpeed();

    /** The level (m) at which the process must stop when it runs at its rated speed; 0 without an accumulator. */
    double stopLevelAtRated();

    /** Whether the process is held on a low level, standing or on its way there. */
    boolean isStarved();

    /** Whether the process is slowed on a low level. */
    boolean isSlowed();

    /** Whether the process is held by downtime. */
    boolean isDown();

    /** Whether the process is held by a joint that broke in it, until it is repaired. */
    boolean isBroken();

    /** Whether a joint passage is open. */
    boolean isInJointPassage();

    /** Whether the process is at rest and will stay so until something lets it go. */
    boolean processStands();

    /** Whether the entry could run but stands, the accumulator being full. */
    boolean isEntryBlocked();

    /** What the entry section is doing. */
    EntryState entryState();
}
