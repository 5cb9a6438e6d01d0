package runthrough.report.speeds;

import runthrough.quantity.Kind;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Texts;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedPoint;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * Says at which speed most comes out.
 *
 * @param curve what was found
 * @param texts for its numbers
 */
record SpeedHeadline(SpeedCurve curve, Texts texts) {

    Headline headline() {
        return switch (curve.peak().where()) {
            case INSIDE -> headline("OUTPUT HAS A PEAK", inside());
            case AT_FASTEST ->
                headline(
                        "FASTER GIVES MORE",
                        "Output rises up to " + texts.speed(fastest()) + ", the fastest speed "
                                + (isBounded() ? "that is possible" : "tried") + ", where it is " + most()
                                + ".");
            case AT_SLOWEST ->
                headline(
                        "SLOWER GIVES MORE",
                        "Output rises down to " + texts.speed(curve.from()) + ", the slowest speed tried, where it is "
                                + most() + ".");
        };
    }

    private static Headline headline(String word, String sentence) {
        return new Headline(Tone.NEUTRAL, word, sentence);
    }

    private String inside() {
        return "Most comes out at a process speed of "
                + SpeedTables.speed(texts, best().speed()).text() + ": " + most() + ". Faster gives "
                + (isLossSure() ? "less" : "no more") + ": at " + texts.speed(fastest()) + " "
                + texts.share(lostAtFastest()) + " of that is lost.";
    }

    /** Output at the best speed less that at the fastest, as a share of the former. */
    double lostAtFastest() {
        return curve.peak().lossAtFastest().mean() / best().output().mean();
    }

    private double fastest() {
        return curve.peak().fastest();
    }

    /** Whether the line cannot be run at a faster speed that was tried. */
    private boolean isBounded() {
        return curve.notPossible().stream().anyMatch(one -> one.speed() > fastest());
    }

    private SpeedPoint best() {
        return curve.peak().at();
    }

    private String most() {
        return texts.mean(Kind.RATE_LENGTH, best().output()) + ", "
                + texts.of(Kind.RATE_MASS, best().massFlow().mean());
    }

    /** Whether less output is shown at the fastest speed than at the best. */
    private boolean isLossSure() {
        Estimate loss = curve.peak().lossAtFastest();
        return texts.known(loss.interval()).map(Interval::low).orElse(loss.mean()) > 0;
    }
}
