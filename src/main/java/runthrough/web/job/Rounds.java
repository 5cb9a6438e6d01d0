package runthrough.web.job;

/**
 * Work that is done again and again beside all else. What one round ends with, such as a shortage of memory, does not end the rounds; an
 * executor repeats nothing that has failed, and needs memory itself.
 */
public final class Rounds implements AutoCloseable {
    private final Thread thread;
    private volatile boolean isClosed;

    /** What is done in each of them. */
    @FunctionalInterface
    public interface Round {
        void make() throws Exception;
    }

    /**
     * Begins the rounds.
     *
     * @param name of their thread, which does not keep the program from ending
     * @param pause before each (ms)
     */
    public Rounds(String name, int pause, Round round) {
        thread = new Thread(() -> repeat(pause, round), name);
        thread.setDaemon(true);
        thread.start();
    }

    private void repeat(int pause, Round round) {
        while (!isClosed) {
            try {
                Thread.sleep(pause);
                round.make();
            } catch (InterruptedException e) {
                return;
            } catch (Exception | OutOfMemoryError e) {
                // The next may do better.
            }
        }
    }

    /** No further round is begun; one that is being made is interrupted. */
    @Override
    public void close() {
        isClosed = true;
        thread.interrupt();
    }
}
