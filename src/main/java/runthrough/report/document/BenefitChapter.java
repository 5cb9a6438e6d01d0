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
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Value;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;
import runthrough.study.statistics.Estimate;

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
        lead.add("For a year of " + Notation.of(Unit.HOUR).text(year.time()) + " of scheduled running time.");
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
                            + " one person more costs every hour of the year, not the minutes at the joint."
                            + (year.money()
                                            .filter(values -> values.output() instanceof Output.LineHour)
                                            .isPresent()
                                    ? " More good output is counted as line hours: those in which the line called today makes as much"
                                            + " at its rated speed."
                                    : ""));
            remarks.add("Source: S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual, NIST Handbook 135, 1995.");
        }
        return remarks;
    }

    /** A number of a year. */
    private record Yearly(String name, Value value) {}

    private Table today() {
        double shifts = year.shifts();
        return TableMaker.<Yearly>of("The line " + year.called() + ", in a year")
                .words("", Yearly::name)
                .estimate("Mean", Yearly::value)
                .of(List.of(
                        new Yearly(year.stopsByDesign() ? "Lost time" : "Lost time (starved)", year.lostTime()),
                        yearly(
                                "Strip not processed while starved, slowed or recovering from it",
                                Kind.LENGTH,
                                year.verdict().stoppages().lostMetresPerShift(),
                                shifts),
                        new Yearly("Good output", year.goodOutput()),
                        yearly(
                                "Yield: good output of gross",
                                Kind.SHARE,
                                year.verdict().output().goodShare(),
                                1),
                        yearly(
                                "Scrap of coil changes and stops",
                                Kind.MASS,
                                year.verdict().output().scrapKilogramsPerShift(),
                                shifts)));
    }

    private Yearly yearly(String name, Kind kind, Estimate estimate, double factor) {
        return new Yearly(name, year.value(kind, estimate, factor));
    }

    private Table gains() {
        TableMaker<Benefit> table = table("What alternatives gain in a year over the one called today, with intervals");
        gain(table, "Time no longer lost", Kind.TIME, Benefit::time);
        gain(table, "More output", Kind.MASS, Benefit::mass);
        gain(table, "Less scrap", Kind.MASS, Benefit::scrap);
        gain(table, "Less paid time of people", Kind.TIME, BenefitChapter::paid);
        return table.of(year.benefits());
    }

    private static Gain paid(Benefit benefit) {
        return new Gain(benefit.paid(), benefit.paid(), benefit.paid());
    }

    private void gain(TableMaker<Benefit> table, String heading, Kind kind, Function<Benefit, Gain> of) {
        double most = year.benefits().stream()
                .mapToDouble(benefit -> Math.abs(of.apply(benefit).mean()))
                .max()
                .orElse(0);
        Notation notation = year.notation(kind, most);
        table.with(column(heading, notation), benefit -> GainValues.of(of.apply(benefit), notation));
    }

    private Table values(List<Benefit> priced) {
        Money given = year.money().orElseThrow();
        return table("In " + given.currency() + ", at " + percent(given.rate()) + " a year")
                .number(
                        "Price",
                        Notation.PLAIN.with(Rounding.GIVEN_AMOUNT),
                        benefit -> worth(benefit).offer().price())
                .number(
                        "Life",
                        Notation.PLAIN.called("years"),
                        benefit -> worth(benefit).offer().life())
                .with(
                        column("Gain of a year less upkeep", GainValues.MONEY),
                        benefit -> GainValues.of(worth(benefit).yearly(), GainValues.MONEY))
                .with(
                        column("Net present value", GainValues.MONEY),
                        benefit -> GainValues.of(worth(benefit).presentValue(), GainValues.MONEY))
                .of(priced);
    }

    private static String percent(double rate) {
        return Notation.SHARE.with(Rounding.GIVEN).text(rate);
    }

    private static Table returns(List<Benefit> priced) {
        Notation years = Notation.PLAIN.called("years");
        return table("How soon the price comes back, and at what rate")
                .with(column("Simple payback", years), benefit -> GainValues.simplePayback(worth(benefit)))
                .with(column("Discounted payback", years), benefit -> GainValues.discountedPayback(worth(benefit)))
                .with(
                        column("Internal rate of return", Notation.SHARE),
                        benefit -> GainValues.internalRate(worth(benefit)))
                .of(priced);
    }

    private static Worth worth(Benefit benefit) {
        return benefit.worth().orElseThrow();
    }

    /** A table with a row for each alternative. */
    private static TableMaker<Benefit> table(String caption) {
        return TableMaker.<Benefit>of(caption).words("Alternative", Benefit::name);
    }

    private static Column column(String heading, Notation notation) {
        return new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.EVERYWHERE);
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
