package runthrough.cli.terminal;

/**
 * Lets the program clean up when the user interrupts it (Ctrl-C) or the system ends it: the thread that works is interrupted,
 * and the virtual machine waits for it to let go, but not for ever.
 */
public final class Interruption {
    private static final long LONGEST_WAIT_MILLIS = 10_000;
    private static final long PAUSE_MILLIS = 20;

    private final Thread hook;
    private volatile boolean isOver;

    private Interruption(Thread worker) {
        hook = new Thread(() -> passOn(worker), "interruption");
    }

    /** Watches over the calling thread until its end. */
    public static Interruption watch() {
        Interruption interruption = new Interruption(Thread.currentThread());
        try {
            Runtime.getRuntime().addShutdownHook(interruption.hook);
        } catch (IllegalStateException e) {
            // The virtual machine is ending before anything was begun.
            Thread.currentThread().interrupt();
        }
        return interruption;
    }

    /** Again and again: what reads fonts in Java forgets an interrupt. Nothing here needs memory, of which there may be none. */
    private void passOn(Thread worker) {
        try {
            long waited = 0;
            do {
                worker.interrupt();
                Thread.sleep(PAUSE_MILLIS);
                waited += PAUSE_MILLIS;
            } while (!isOver && waited < LONGEST_WAIT_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The work is over: nothing is left to interrupt. */
    public void end() {
        isOver = true;
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The virtual machine is ending already: that is what was watched for.
        }
    }
}
