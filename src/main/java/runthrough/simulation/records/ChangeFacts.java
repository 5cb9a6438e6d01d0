package runthrough.simulation.records;

import java.util.Optional;

/**
 * One coil change, to be read; times in seconds of simulated time, levels and lengths in metres. {@link ChangeRecord} is one that
 * stays as it is.
 *
 * <p>Rule CREW-17.
 */
public interface ChangeFacts {

    /** Its number, from 1. */
    int number();

    /** The shift in which T0 lies, by its place in the list of shifts, from 0; 0 without shifts. */
    int shift();

    /** Index of the kind of the ending coil in {@code line.coils()}. */
    int tailCoil();

    /** Index of the kind of the next coil in {@code line.coils()}. */
    int headCoil();

    /** T0: start of the coil change. */
    double start();

    /** T1: the tail has stopped in the joiner. */
    double tailStopped();

    /** T2: the joint is released. */
    double released();

    /**
     * Time with the strip standing and no work at the joint, because the next coil was not prepared or its preparation was being
     * done again (s), {@code >= 0}.
     */
    double waitingForPreparation();

    /** The same because people lacked (s), {@code >= 0}. */
    double waitingForPeople();

    /** How often the joint was made, {@code >= 1}. */
    int passes();

    /** Level at T0 (m). */
    double levelAtStart();

    /** Strip of the ending coil that had yet to pass the joiner at T0 (m). */
    double remainingAtStart();

    /** In force at T0 (m/s). */
    double ratedSpeed();

    /** Lowest level (m) from T0 until matched again or the next T0. */
    double lowestLevel();

    /** Level (m) at which the process, at the speed rated at T0, must stop; 0 for one-strip practices. */
    double stopLevel();

    /** What it did to the process. */
    Outcome outcome();

    /** How many starved stops belong to it. */
    int starvedStops();

    /** Metres not processed while starved, slowed or recovering from it (m), {@code >= 0}. */
    double lostMetres();

    /** The same at the rated speed in force (s), {@code >= 0}. */
    double lostTime();

    /** From T2 until matched (s); NaN when the next coil change came first or the run ended. */
    double refillTime();

    /** What the cause is found from; where it did not run through and there is an accumulator. */
    Optional<WorkDone> work();

    /** The joint cycle time (s): how long the strip stood at the joiner. */
    default double jointCycleTime() {
        return released() - tailStopped();
    }

    /** All waiting with the strip standing (s). */
    default double waiting() {
        return waitingForPreparation() + waitingForPeople();
    }

    /** Strip drawn from the accumulator (m). */
    default double stripDrawn() {
        return levelAtStart() - lowestLevel();
    }

    /** How far the lowest level stayed above the stop level (m); negative when the process had to stop. */
    default double lowestAboveStopLevel() {
        return lowestLevel() - stopLevel();
    }
}
