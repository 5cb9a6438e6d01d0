package runthrough.timestudy;

/**
 * Time that a job is given, from time that it was seen to take: G. Kanawaty (ed.), Introduction to Work Study, 4th ed.,
 * International Labour Office, 1992, part on time study (from memory).
 *
 * <p>The allowance is a share of the basic time and is added. (An allowance that is a share of the shift would divide instead,
 * by 1 less the share, and give more.)
 *
 * @param basic observed time x rating / 100 (s), {@code >= 0}
 * @param allowance for rest and contingencies as a share of the basic time, {@code >= 0}
 */
public record StandardTime(double basic, double allowance) {

    public StandardTime {
        if (!(basic >= 0 && allowance >= 0)) {
            throw new IllegalArgumentException(
                    "basic time " + basic + " s and allowance " + allowance + " must be 0 or more");
        }
    }

    /**
     * From one observed time.
     *
     * @param observed as seen (s)
     * @param rating of the performance seen, as a share of standard performance
     */
    public static StandardTime of(double observed, double rating, double allowance) {
        return new StandardTime(observed * rating, allowance);
    }

    /** Basic time and allowance together (s). */
    public double standard() {
        return basic * (1 + allowance);
    }
}
