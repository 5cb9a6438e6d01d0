package runthrough.report.times;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import runthrough.quantity.Notation;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.Correlation;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.JointTail;
import runthrough.study.times.Outliers;
import runthrough.study.times.Trend;
import runthrough.timestudy.Observation;

/** What somebody who simulates with a time-study sheet must know of it, a paragraph each. */
final class TimesAdvice {
    /** A watch read more coarsely than this part of the spread blurs the distribution. */
    private static final double COARSE = 0.5;

    /** So many pairs are named in a sentence. */
    private static final int MOST_NAMED = 3;

    private final TimesResult result;
    private final List<ElementTimes> elements;

    private TimesAdvice(TimesResult result) {
        this.result = result;
        this.elements = result.statistics().elements();
    }

    /** What calls for care before anything is simulated; none where nothing does. */
    static List<String> cautions(TimesResult result) {
        return new TimesAdvice(result).cautions();
    }

    /** How the sheet was read. */
    static List<String> readings(TimesResult result) {
        return new TimesAdvice(result).readings();
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>();
        outliers().ifPresent(all::add);
        IntStream.range(0, elements.size())
                .mapToObj(this::trend)
                .flatMap(Optional::stream)
                .forEach(all::add);
        together().ifPresent(all::add);
        few().ifPresent(all::add);
        coarse().ifPresent(all::add);
        return all;
    }

    private Optional<String> outliers() {
        List<Integer> far = elements.stream()
                .flatMap(element -> element.outliers().found().stream())
                .filter(Outliers.Outlier::farOut)
                .map(outlier -> outlier.row().number())
                .distinct()
                .sorted()
                .toList();
        return far.isEmpty()
                ? Optional.empty()
                : Optional.of("Far out of line: " + (far.size() == 1 ? "row " : "rows ") + TimesWords.list(far)
                        + ". Find out why before you leave a row out: a rare mishap is a part of the work, a slip of the watch"
                        + " is not. All rows are counted; --leave-out " + joined(far) + " counts without "
                        + (far.size() == 1 ? "it." : "them."));
    }

    private static String joined(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(","));
    }

    private Optional<String> trend(int i) {
        return elements.get(i).trend().filter(Trend::isShown).map(trend -> {
            String way = trend.slope() < 0 ? "sped up: " : "slowed down: ";
            String change = trend.slope() < 0 ? " less" : " more";
            Value slope = TimesWords.slope(trend);
            Value size = new Value(Math.abs(trend.slope()), slope.notation(), slope.interval());
            return "The crew " + way + result.label(i) + " took " + size.text() + change + " at each coil change ("
                    + slope.range()
                            .map(range -> "95 % interval of the change " + range + ", ")
                            .orElse("")
                    + "p " + TimesWords.equal(trend.adjusted())
                    + "). Its times are then not draws from one distribution: early rows may no longer hold.";
        });
    }

    private Optional<String> together() {
        List<Correlation> pairs = result.statistics().together();
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        String named = pairs.stream()
                .sorted(Comparator.comparingDouble(Correlation::p))
                .limit(MOST_NAMED)
                .map(pair -> result.label(pair.first()) + " with " + result.label(pair.second()) + " (rank correlation "
                        + TimesTables.CORRELATION.number(pair.spearman()) + ")")
                .collect(Collectors.joining(", "));
        return Optional.of("Elements go together: " + named
                + (pairs.size() > MOST_NAMED ? " and " + (pairs.size() - MOST_NAMED) + " more pairs" : "")
                + "; a sheet of elements that do not shows this once in 20 sheets at most. "
                + result.statistics().tail().map(this::tail).orElse("")
                + "To draw whole rows, as they were seen, a scenario names the sheet in the place of each time:"
                + " {sheet: FILE}.");
    }

    private String tail(JointTail tail) {
        JointTail.Percentile far = tail.percentiles().get(tail.percentiles().size() - 1);
        return Notation.SHARE.text(far.p()) + " of the joints took at most " + TimesWords.time(far.together())
                + "; with each element drawn on its own it would be " + TimesWords.time(far.apart()) + ". ";
    }

    private Optional<String> few() {
        List<String> names = named(Reason.TOO_FEW);
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of("Too few times for a distribution: " + String.join(", ", names)
                        + ". Drawn are the observations, so that nothing longer than the longest of them ever happens:"
                        + " time more coil changes.");
    }

    private List<String> named(Reason reason) {
        return IntStream.range(0, elements.size())
                .filter(i -> result.fits().get(i).recommendation().reason() == reason)
                .mapToObj(result::label)
                .toList();
    }

    private Optional<String> coarse() {
        List<String> names = IntStream.range(0, elements.size())
                .filter(i -> elements.get(i).step()
                        > COARSE * elements.get(i).moments().sd())
                .mapToObj(i -> result.label(i) + " (to "
                        + TimesWords.time(elements.get(i).step()) + ")")
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of("Read coarsely for how little they spread: " + String.join(", ", names)
                        + ". Their spread and distribution are uncertain by the rounding: read the watch more finely.");
    }

    private List<String> readings() {
        List<String> all = new ArrayList<>();
        all.add("Times: " + TimesWords.rating(result) + pace());
        List<String> unplaced = result.statistics().sheet().elements().stream()
                .filter(element -> element.part().isEmpty())
                .map(element -> element.name())
                .toList();
        if (!unplaced.isEmpty()) {
            all.add("Taken as join work, strip standing, because the header does not say: "
                    + String.join(", ", unplaced) + ". Write prepare:, tail: or join: before a name to place it.");
        }
        if (!result.leftOut().isEmpty()) {
            all.add("Left out, as asked: rows " + TimesWords.list(result.leftOut()) + ".");
        }
        return all;
    }

    private String pace() {
        return result.statistics().sheet().rows().stream()
                .map(Observation::rating)
                .filter(rating -> rating.isPresent())
                .mapToDouble(rating -> rating.getAsDouble())
                .average()
                .stream()
                .mapToObj(mean -> " Mean rating " + Texts.number(100 * mean)
                        + (result.basic()
                                ? "."
                                : "; the line meets the crew as it is, --basic-times its standard pace."))
                .findFirst()
                .orElse("");
    }
}
