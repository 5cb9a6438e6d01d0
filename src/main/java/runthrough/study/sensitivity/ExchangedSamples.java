package runthrough.study.sensitivity;

/**
 * One measure in one replication, coil change by coil change: under random numbers A, under random numbers B that has nothing in common with it,
 * and under A with the random numbers of one source exchanged for that of B.
 */
final class ExchangedSamples {
    private final double[] a;
    private final double[] b;
    private final double[][] exchanged;

    /**
     * What was seen.
     *
     * @param a under A
     * @param b under B, as many values
     * @param exchanged for each source, as many values
     */
    ExchangedSamples(double[] a, double[] b, double[][] exchanged) {
        this.a = a;
        this.b = b;
        this.exchanged = exchanged;
    }

    double[] a() {
        return a;
    }

    double[] b() {
        return b;
    }

    double[][] exchanged() {
        return exchanged;
    }
}
