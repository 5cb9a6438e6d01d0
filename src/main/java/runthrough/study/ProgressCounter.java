package runthrough.study;

/** Reports to a listener how far a study is of which only the rough number of steps is known beforehand. */
public final class ProgressCounter {
    private final StudyListener listener;
    private final int expected;
    private int done;

    /** Begins; {@code expected} is a rough number of steps, {@code >= 1}. */
    public ProgressCounter(StudyListener listener, int expected) {
        this.listener = listener;
        this.expected = expected;
        listener.progress(0, expected);
    }

    /** One step more; however many there are, the study is not reported as done before {@link #finish}. */
    public void next() {
        done++;
        listener.progress(Math.min(done, expected - 1), expected);
    }

    /** The study is done. */
    public void finish() {
        listener.progress(expected, expected);
    }
}
