package runthrough.report.validation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.chart.validation.DeviationChart;
import runthrough.chart.validation.ErrorChart;
import runthrough.report.validation.ValidationPage.Count;
import runthrough.report.validation.ValidationPage.Part;
import runthrough.report.validation.ValidationPage.Row;

/** Makes the page from the records. */
final class PageOfChecks {
    private final List<Recorded> records;

    PageOfChecks(List<Recorded> records) {
        this.records = List.copyOf(records);
    }

    ValidationPage page() {
        int failed = count(recorded -> !recorded.passed());
        String answer = failed == 0
                ? "All " + records.size() + " checks agree with their outside values within their tolerances."
                : failed + " of " + records.size() + " checks do not agree with their outside values.";
        List<Part> parts = Arrays.stream(Topic.values())
                .map(this::part)
                .filter(part -> !part.rows().isEmpty())
                .toList();
        return new ValidationPage(
                failed == 0,
                answer,
                figures(),
                standings(),
                deviations(),
                parts,
                NotYet.beside(records),
                List.of(LeftOut.values()));
    }

    private List<Count> figures() {
        int comparisons = records.stream()
                .mapToInt(recorded -> recorded instanceof Recorded.OfErrors errors
                        ? errors.errors().size()
                        : 1)
                .sum();
        return List.of(
                new Count("Checks", records.size(), ""),
                new Count("Agree", count(Recorded::passed), ""),
                new Count("Single comparisons", comparisons, "a check over random lines makes one for each"));
    }

    private List<Count> standings() {
        return Arrays.stream(Standing.values())
                .map(standing -> new Count(
                        standing.word(),
                        count(recorded -> recorded.source().standing() == standing),
                        standing.meaning()))
                .toList();
    }

    private int count(Predicate<Recorded> which) {
        return (int) records.stream().filter(which).count();
    }

    /** A chart of all that was sampled; none where nothing was. */
    private List<Chart> deviations() {
        List<Double> deviations = numbers()
                .filter(number -> number.standardError() > 0)
                .map(number -> (number.got() - number.expected()) / number.standardError())
                .toList();
        return deviations.isEmpty() ? List.of() : List.of(DeviationChart.of("deviations", deviations));
    }

    private Stream<Recorded.OfNumber> numbers() {
        return records.stream().filter(Recorded.OfNumber.class::isInstance).map(Recorded.OfNumber.class::cast);
    }

    private Part part(Topic topic) {
        RowMaker maker = new RowMaker();
        List<Recorded> own =
                records.stream().filter(recorded -> recorded.topic() == topic).toList();
        List<Row> rows = own.stream().map(maker::row).toList();
        List<Chart> charts = own.stream()
                .filter(Recorded.OfErrors.class::isInstance)
                .map(recorded -> chart((Recorded.OfErrors) recorded))
                .toList();
        String anchor = topic.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Part(anchor, topic.title(), topic.about(), topic.rules(), rows, maker.sources(), charts);
    }

    private static Chart chart(Recorded.OfErrors errors) {
        return ErrorChart.of(
                "errors-" + errors.id().toLowerCase(Locale.ROOT),
                errors.id() + ": " + errors.what(),
                errors.each(),
                errors.tolerance(),
                errors.errors());
    }
}
