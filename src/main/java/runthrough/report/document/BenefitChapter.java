package runthrough.report.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import runthrough.chart.Chart;
import runthrough.chart.document.WorthCharts;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Output;
import runthrough.quantity.Amounts;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.report.Table;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** What time, strip and work of a year come to, and what alternatives are worth in money where the user said what counts. */
final class BenefitChapter {
    private final Year year;

    BenefitChapter(Year year) {
        this.year = year;
    }

    DocumentChapter chapter() {
        List<Table> tables = new ArrayList<>(List.of(today()));
        if (!year.benefits().isEmpty()) {
            tables.add(gains());
        }
        List<Benefit> priced = year.priced();
        List<Chart> charts = new ArrayList<>();
        if (!priced.isEmpty()) {
            tables.add(values(priced));
            tables.add(returns(priced));
            Benefit best = year.best().orElseThrow();
            charts.addAll(WorthCharts.of(best.name(), best.worth().orElseThrow(), uncertain()));
        }
        return new DocumentChapter("worth", "What it is worth", lead(priced), charts, tables, remarks());
    }

    private List<String> lead(List<Benefit> priced) {
        List<String> lead = new ArrayList<>();
        lead.add("For a year of " + Numbers.text(Unit.HOUR.fromSi(year.time()), 3) + " h of scheduled running time.");
        if (year.benefits().isEmpty()) {
            lead.add(
                    "No alternatives were given to compare the line with, so the document gives only what it loses today"
                            + ": it is the most that a change can win back.");
        }
        if (year.money().isEmpty()) {
            lead.add("What an hour, a tonne or a price comes to was not given, so nothing is said of money.");
        } else if (priced.isEmpty() && !year.benefits().isEmpty()) {
            lead.add("No alternative was given a price, so none is worked out in money.");
        }
        return lead;
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (year.money().isPresent()) {
            remarks.add(
                    "Net present value: the price is paid at time zero and is not discounted, gains and upkeep come at"
                            + " the end of each year. Many spreadsheets take the first flow at the end of the first year"
                            + " and so give less. Discounted payback is -ln(1 - C d/S)/ln(1 + d) for price C, yearly gain"
                            + " S and rate d. The internal rate of return is the rate at which the net present value is"
                            + " nothing.");
            remarks.add(
                    "Intervals come from the differences of the replications, each worked out in money as a whole. They do"
                            + " not hold what is uncertain about the values in money. People are paid for all scheduled hours:"
                            + " one person more costs every hour of the year, not the minutes at the joint.");
            remarks.add("Source: S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual, NIST Handbook 135, 1995.");
        }
        return remarks;
    }

    private Table today() {
        double shifts = year.shifts();
        List<List<String>> rows = List.of(
                row("Lost time (starved)", Kind.TIME, year.verdict().stoppages().lostTimePerShift(), shifts),
                row(
                        "Strip not processed while starved, slowed or recovering from it",
                        Kind.LENGTH,
                        year.verdict().stoppages().lostMetresPerShift(),
                        shifts),
                row("Good output", Kind.MASS, year.verdict().output().massFlow(), year.time()),
                yieldRow(),
                row(
                        "Scrap of coil changes and stops",
                        Kind.MASS,
                        year.verdict().output().scrapKilogramsPerShift(),
                        shifts));
        return Table.words("The line as written, in a year", List.of("", "Mean", "95 % interval"), rows, true);
    }

    private List<String> yieldRow() {
        return row(
                "Yield: good output of gross",
                Kind.SHARE,
                year.verdict().output().goodShare(),
                1);
    }

    private List<String> row(String name, Kind kind, Estimate estimate, double factor) {
        Unit unit = unit(kind, estimate.mean() * factor);
        Optional<Interval> interval =
                estimate.interval().filter(any -> year.verdict().chance());
        double half = unit.fromSi(interval.map(Interval::halfWidth).orElse(0.0) * factor);
        return List.of(
                name,
                text(unit, estimate.mean() * factor, half),
                interval.map(ends -> Amounts.text(unit.fromSi(ends.low() * factor), half) + " to "
                                + text(unit, ends.high() * factor, half))
                        .orElse(""));
    }

    private static String text(Unit unit, double si, double halfWidth) {
        return Amounts.text(unit.fromSi(si), halfWidth) + " " + unit.symbol();
    }

    private Table gains() {
        return table(
                "What alternatives gain in a year over the one called today, with intervals",
                year.benefits(),
                List.of(
                        gain("Time no longer lost", Kind.TIME, Benefit::time),
                        gain("More output", Kind.MASS, Benefit::mass),
                        gain("Less scrap", Kind.MASS, Benefit::scrap),
                        gain("Less paid time of people", Kind.TIME, BenefitChapter::paid)));
    }

    private static Gain paid(Benefit benefit) {
        return new Gain(benefit.paid(), benefit.paid(), benefit.paid());
    }

    private Column gain(String name, Kind kind, Function<Benefit, Gain> of) {
        double most = year.benefits().stream()
                .mapToDouble(benefit -> Math.abs(of.apply(benefit).mean()))
                .max()
                .orElse(0);
        Unit unit = unit(kind, most);
        return new Column(
                name + ", " + unit.symbol(),
                benefit -> GainText.of(of.apply(benefit).times(unit.fromSi(1))));
    }

    private Table values(List<Benefit> priced) {
        Money given = year.money().orElseThrow();
        return table(
                "In " + given.currency() + ", at " + Numbers.text(100 * given.rate()) + " % a year",
                priced,
                List.of(
                        inMoney("Price", worth -> Amounts.exact(worth.offer().price())),
                        inMoney(
                                "Life, years",
                                worth -> Integer.toString(worth.offer().life())),
                        inMoney("Gain of a year less upkeep", worth -> GainText.of(worth.yearly())),
                        inMoney("Net present value", worth -> GainText.of(worth.presentValue()))));
    }

    private static Table returns(List<Benefit> priced) {
        return table(
                "How soon the price comes back, and at what rate",
                priced,
                List.of(
                        inMoney(
                                "Simple payback, years",
                                worth -> GainText.from(worth.yearly(), worth::simplePayback, "never", true)),
                        inMoney(
                                "Discounted payback, years",
                                worth -> GainText.from(worth.yearly(), worth::discountedPayback, "never", true)),
                        inMoney(
                                "Internal rate of return, %",
                                worth -> GainText.from(worth.yearly(), worth::internalPercent, "none", false))));
    }

    /** A column of a table with a row for each alternative. */
    private record Column(String heading, Function<Benefit, String> cell) {}

    private static Column inMoney(String heading, Function<Worth, String> cell) {
        return new Column(heading, benefit -> cell.apply(benefit.worth().orElseThrow()));
    }

    private static Table table(String caption, List<Benefit> benefits, List<Column> columns) {
        List<String> head = new ArrayList<>(List.of("Alternative"));
        columns.forEach(column -> head.add(column.heading()));
        List<List<String>> rows = new ArrayList<>();
        for (Benefit benefit : benefits) {
            List<String> row = new ArrayList<>(List.of(benefit.name()));
            columns.forEach(column -> row.add(column.cell().apply(benefit)));
            rows.add(row);
        }
        return Table.words(caption, head, rows, true);
    }

    private Unit unit(Kind kind, double size) {
        return kind == Kind.TIME ? Unit.HOUR : year.units().unitFor(kind, size);
    }

    private String uncertain() {
        Money values = year.money().orElseThrow();
        return switch (values.leastCertain()) {
            case OUTPUT ->
                values.output() instanceof Output.LineHour ? "value of a line hour" : "contribution of a tonne";
            case SCRAP -> "cost of a tonne of scrap";
            case LABOUR -> "cost of an hour of work";
            default -> values.leastCertain().name().toLowerCase(Locale.ROOT);
        };
    }
}
