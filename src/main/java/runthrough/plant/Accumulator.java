package runthrough.plant;

/**
 * The strip accumulator between joiner and process section.
 *
 * <p>Rules ACC-6, ACC-8, ACC-9.
 *
 * @param form how it holds strip
 * @param ownFillRateLimit limit on entry speed minus process speed (m/s), {@code > 0}, infinite for none; the form may set
 *     a lower one
 * @param reserve metres that are never planned to be used, {@code >= 0}
 * @param overtravelAllowance metres above the capacity at which the level counts as overfull, {@code >= 0}; infinite when
 *     it is not counted
 */
public record Accumulator(StorageForm form, double ownFillRateLimit, double reserve, double overtravelAllowance) {

    public Accumulator {
        Ranges.of("accumulator")
                .positive("fill-rate limit", ownFillRateLimit, Ranges.Of.SPEED_LIMIT)
                .notNegative("reserve", reserve, Ranges.Of.LENGTH)
                .notBelowZero("overtravel allowance", overtravelAllowance, Ranges.Of.ALLOWANCE)
                .refuse();
    }

    /** An accumulator of given capacity (m) without limits or reserve. */
    public static Accumulator ofCapacity(double capacity) {
        return of(new StorageForm.Direct(capacity));
    }

    /** An accumulator of the given form without limits of its own or reserve. */
    public static Accumulator of(StorageForm form) {
        return new Accumulator(form, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY);
    }

    /** No accumulator. */
    public static Accumulator none() {
        return of(new StorageForm.None());
    }

    /** The same made to hold {@code capacity} (m), {@code > 0}; reserve and allowance stay. */
    public Accumulator resizedTo(double capacity) {
        return new Accumulator(form.resizedTo(capacity), ownFillRateLimit, reserve, overtravelAllowance);
    }

    /** The same in another form; reserve and allowance stay. */
    public Accumulator with(StorageForm other) {
        return new Accumulator(other, ownFillRateLimit, reserve, overtravelAllowance);
    }

    /** The same with {@code factor} times its fill-rate limit, {@code > 0}. */
    public Accumulator fillingTimesAsFast(double factor) {
        return new Accumulator(
                form.fillingTimesAsFast(factor), ownFillRateLimit * factor, reserve, overtravelAllowance);
    }

    /** Usable capacity C (m). */
    public double capacity() {
        return form.capacity();
    }

    /**
     * What rounding may do to a level (m): a level is below a threshold only when it is so by more, and a margin is lacking only
     * when it is negative by more.
     *
     * <p>Rules NUM-3, CAUSE-1.
     */
    public double levelTolerance() {
        return 1e-10 * Math.max(1, capacity());
    }

    /** Fill-rate limit F in force (m/s): the lower of its own and the form's; infinite for none. */
    public double fillRateLimit() {
        return Math.min(ownFillRateLimit, form.fillRateLimit());
    }
}
