package runthrough.checks;

import static runthrough.report.validation.Standing.COMMON_PRACTICE;
import static runthrough.report.validation.Standing.DERIVED_HERE;
import static runthrough.report.validation.Standing.FROM_MEMORY;
import static runthrough.report.validation.Standing.READ;
import static runthrough.report.validation.Standing.SECOND_HAND;

import runthrough.report.validation.Reference;

/** Where the outside values of the checks come from, and how far each was seen. */
public final class Sources {
    private Sources() {}

    /** Numbers solved for these checks; the books named hold the method, and their pages were not seen. */
    public static final Reference TWO_MACHINES = new Reference(
            "Exact solution of the two-machine line with a finite buffer, solved here at 60 digits or more and confirmed by a "
                    + "separate simulation. Method: J. Wijngaard, AIIE Transactions 11(1), 1979; S. B. Gershwin, Manufacturing "
                    + "Systems Engineering, 1994, ch. 3 (both from memory); B. Tan and S. B. Gershwin, Annals of Operations "
                    + "Research 182, 2011 (abstract read)",
            DERIVED_HERE);

    public static final Reference FLUID_QUEUE = new Reference(
            "Fluid queue with one source, solved here, the same as the two-machine solution to 12 digits. Model: D. Anick, D. "
                    + "Mitra, M. M. Sondhi, Stochastic theory of a data-handling system with multiple sources, Bell System "
                    + "Technical Journal 61(8), 1982, case of one source (from memory)",
            DERIVED_HERE);

    public static final Reference LINDLEY = new Reference(
            "Recursion of the strip missing at each joint, solved here and confirmed by a separate simulation. Theory: D. V. "
                    + "Lindley, The theory of queues with a single server, Proc. Camb. Phil. Soc. 48, 1952; L. Kleinrock, "
                    + "Queueing Systems I, 1975, ch. 5 and 6 (both from memory)",
            DERIVED_HERE);

    public static final Reference DAM = new Reference(
            "Recursion of the strip missing at each joint with a finite accumulator, solved here and confirmed by a separate "
                    + "simulation. Theory: P. A. P. Moran, The Theory of Storage, 1959, finite dam (from memory)",
            DERIVED_HERE);

    public static final Reference RENEWAL = new Reference(
            "Independent coil changes of a line that is always full again: time, strip and scrap of a mean coil change (renewal "
                    + "reward), worked out here",
            DERIVED_HERE);

    public static final Reference MECHANICS =
            new Reference("Uniform acceleration, elementary mechanics: any text on it; hand calculation", DERIVED_HERE);

    public static final Reference COIL_GEOMETRY = new Reference(
            "Annulus, L = pi (OD^2 - ID^2) / 4t, worked out here; the formula as seen on public pages", DERIVED_HERE);

    public static final Reference SPIRAL =
            new Reference("Exact length of an Archimedean spiral of pitch t, worked out here", DERIVED_HERE);

    public static final Reference GAUGES = new Reference(
            "Manufacturers' standard gauge for sheet steel: thickness in inches is weight in lb/ft2 over 41.82, a conventional "
                    + "number, not the density of steel; weights and inches as seen in public tables",
            SECOND_HAND);

    public static final Reference GAUGE_WEIGHT = new Reference(
            "Manufacturers' standard gauge for sheet steel: 501.84 lb/ft3 by convention (41.82 lb/ft2 per inch), worked back "
                    + "here to the weight of a square foot",
            SECOND_HAND);

    public static final Reference CATENARY =
            new Reference("Integral of the length along y = a cosh(x/a), by Simpson's rule here", DERIVED_HERE);

    public static final Reference BENDING = new Reference(
            "Elementary bending: the outer fibre yields when t/2 over the radius is the yield strain, so radius = E t / 2 s_y; "
                    + "hand calculation",
            DERIVED_HERE);

    public static final Reference NIST_SP_811 = new Reference(
            "B. N. Taylor and A. Thompson, Guide for the Use of the International System of Units, NIST SP 811, 2008, Appendix "
                    + "B; quoted from memory, recomputed from 1 in = 0.0254 m, 1 lb = 0.45359237 kg",
            FROM_MEMORY);

    public static final Reference NIST_SP_811_SEEN = new Reference(
            "B. N. Taylor and A. Thompson, Guide for the Use of the International System of Units, NIST SP 811, 2008, Appendix "
                    + "B.8, in a public transcription",
            SECOND_HAND);

    public static final Reference CONVERSIONS =
            new Reference("Hand calculation from the exact factors of inch, foot and pound", DERIVED_HERE);

    public static final Reference PHILOX = new Reference(
            "J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11, 2011: the "
                    + "authors' known answers, Random123, kat_vectors, rows philox4x32 10",
            READ);

    public static final Reference COMMONS_STATISTICS =
            new Reference("Apache Commons Statistics, which computes these distributions by other ways", DERIVED_HERE);

    public static final Reference NIST_STRD = new Reference(
            "National Institute of Standards and Technology, Statistical Reference Datasets (StRD), univariate summary "
                    + "statistics, certified values",
            READ);

    public static final Reference STUDENT = new Reference(
            "Quantiles of Student's t at high precision; NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, prints "
                    + "three decimals (from memory)",
            DERIVED_HERE);

    public static final Reference NORMAL_QUANTILE = new Reference(
            "0.975 quantile of the normal distribution at high precision; any table prints 1.960", DERIVED_HERE);

    public static final Reference NIST_MEAN_INTERVAL = new Reference(
            "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, confidence limits for the mean", FROM_MEMORY);

    public static final Reference NEWCOMBE = new Reference(
            "R. G. Newcombe, Two-sided confidence intervals for the single proportion: comparison of seven methods, Statistics "
                    + "in Medicine 17, 857-872, 1998, Table I, method 3 (four decimals, from memory); further digits from the "
                    + "formula at high precision",
            DERIVED_HERE);

    public static final Reference STEPHENS_1974 = new Reference(
            "M. A. Stephens, EDF statistics for goodness of fit and some comparisons, JASA 69, 730-737, 1974; tables as seen in "
                    + "the source of a general scientific library that cites them",
            SECOND_HAND);

    public static final Reference STEPHENS_1977 = new Reference(
            "M. A. Stephens, Goodness of fit for the extreme value distribution, Biometrika 64, 1977; table as seen in the "
                    + "source of a general scientific library that cites it",
            SECOND_HAND);

    public static final Reference NIST_ANDERSON_DARLING = new Reference(
            "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.14, Anderson-Darling test; as seen in a copy",
            SECOND_HAND);

    public static final Reference GOODNESS_OF_FIT_DISTRIBUTIONS = new Reference(
            "Distributions of the Kolmogorov-Smirnov and Anderson-Darling statistics with all parameters known, at high precision",
            DERIVED_HERE);

    public static final Reference NIST_RELIABILITY = new Reference(
            "NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3, maximum-likelihood fits of failure times censored at 500",
            READ);

    public static final Reference MAXIMUM_LIKELIHOOD = new Reference(
            "Maximum of the likelihood at high precision, for the data of the published example", DERIVED_HERE);

    public static final Reference BALL_BEARINGS = new Reference(
            "J. Lieblein and M. Zelen, J. Res. NBS 57(5), 273-316, 1956: lives of 23 ball bearings, data seen second-hand; the "
                    + "maximum of the likelihood worked out here at high precision",
            DERIVED_HERE);

    public static final Reference ILO_WORK_STUDY = new Reference(
            "G. Kanawaty (ed.), Introduction to Work Study, 4th ed., International Labour Office, 1992, chapter on time study",
            FROM_MEMORY);

    public static final Reference LIFE_CYCLE_COSTING = new Reference(
            "S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual, NIST Handbook 135, 1995: factors from memory; digits "
                    + "worked out here at high precision",
            DERIVED_HERE);

    public static final Reference OPEN_FORMULA = new Reference(
            "OASIS OpenDocument, part 4, OpenFormula: NPV takes the first value at the end of period 1; convention from memory, "
                    + "digits worked out here",
            DERIVED_HERE);

    public static final Reference WELD_TRAVEL =
            new Reference("Seam length over travel speed; speeds as used in the trade", COMMON_PRACTICE);

    public static final Reference CLOSED_FORMS = new Reference(
            "Closed forms of uniform acceleration, a second way that shares no code with the simulation", DERIVED_HERE);

    public static final Reference SECOND_ENGINE = new Reference(
            "The same model written anew in Python on SimPy, in process style, from the description of the model alone",
            DERIVED_HERE);
}
