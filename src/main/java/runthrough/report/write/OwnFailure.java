package runthrough.report.write;

/** Why something failed, without what it was wrapped in on its way: short memory is to be called that. */
final class OwnFailure {
    private OwnFailure() {}

    /**
     * The failure that {@code wrapper} is about, to be thrown; itself where it is about none.
     *
     * @throws Error when it is about one
     */
    static RuntimeException of(RuntimeException wrapper) {
        if (wrapper.getCause() instanceof Error error) {
            throw error;
        }
        return wrapper.getCause() instanceof RuntimeException failure ? failure : wrapper;
    }
}
