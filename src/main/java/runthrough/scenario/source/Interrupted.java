package runthrough.scenario.source;

import java.util.concurrent.CancellationException;

/** A text may be long, and what reads or changes it ends soon after its thread is interrupted: whoever waited does so no more. */
public final class Interrupted {
    private Interrupted() {}

    /**
     * To be asked now and then.
     *
     * @param doing what is done, to follow "while"
     * @throws CancellationException when the thread is interrupted
     */
    public static void check(String doing) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("given up while " + doing);
        }
    }
}
