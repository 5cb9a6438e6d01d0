package runthrough.report.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import runthrough.chart.Chart;
import runthrough.chart.WorthCharts;
import runthrough.plant.handover.Money;
import runthrough.plant.handover.Money.Output;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.report.Table;
import runthrough.study.Verdict;
import runthrough.study.benefit.Benefit;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;
import runthrough.study.statistics.Estimate;

/** What time, strip and work of a year come to, and what alternatives are worth in money where the user said what counts. */
final class BenefitChapter {
    private static final double SHIFT = 8 * 3600.0;
    private static final double HOUR = 3600;
    private static final double TONNE = 1000;

    private final Verdict verdict;
    private final double year;
    private final List<Benefit> benefits;
    private final Optional<Money> money;
    private final Units units;

    /** Benefits may be none, where there is nothing to compare; {@code year} is the scheduled time of one (s). */
    BenefitChapter(Verdict verdict, double year, List<Benefit> benefits, Optional<Money> money, Units units) {
        this.verdict = verdict;
        this.year = year;
        this.benefits = benefits;
        this.money = money;
        this.units = units;
    }

    Chapter chapter() {
        List<Table> tables = new ArrayList<>(List.of(today()));
        if (!benefits.isEmpty()) {
            tables.add(gains());
        }
        List<Benefit> priced =
                benefits.stream().filter(benefit -> benefit.worth().isPresent()).toList();
        List<Chart> charts = new ArrayList<>();
        if (!priced.isEmpty()) {
            tables.add(values(priced));
            tables.add(returns(priced));
            Benefit best = best(priced);
            charts.addAll(WorthCharts.of(best.name(), best.worth().orElseThrow(), uncertain()));
        }
        return new Chapter("worth", "What it is worth", lead(priced), charts, tables, remarks());
    }

    /** The same in a sentence or two, for the page to decide on. */
    List<String> summary() {
        List<String> sentences = new ArrayList<>();
        List<Benefit> priced =
                benefits.stream().filter(benefit -> benefit.worth().isPresent()).toList();
        if (priced.isEmpty()) {
            sentences.add("Want of strip costs " + hours(lostTime()) + " of " + hours(year) + " a year"
                    + (benefits.isEmpty() ? "." : "; what alternatives win back of it stands under What it is worth."));
            money.ifPresent(values -> sentences.add("At the values given that is "
                    + amount(lostValue(values))
                    + " a year: no change to the coil change can bring more than that, scrap"
                    + " and work aside."));
            if (money.isEmpty()) {
                sentences.add("No values in money were given.");
            }
        } else {
            Benefit best = best(priced);
            Worth worth = best.worth().orElseThrow();
            sentences.add("Of the alternatives with a price, " + best.name()
                    + " is worth most. Against the one called today it brings " + amount(worth.yearly())
                    + " a year for "
                    + amount(worth.offer().price()) + ": " + years(worth::simplePayback, worth.yearly())
                    + " to pay back, net present value " + amount(worth.presentValue()) + ".");
        }
        return sentences;
    }

    private static Benefit best(List<Benefit> priced) {
        return priced.stream()
                .max(Comparator.comparingDouble(
                        benefit -> benefit.worth().orElseThrow().presentValue().mean()))
                .orElseThrow();
    }

    private List<String> lead(List<Benefit> priced) {
        List<String> lead = new ArrayList<>();
        lead.add("For a year of " + hours(year) + " of scheduled running time.");
        if (benefits.isEmpty()) {
            lead.add("No alternatives were given to hold the line against, so what it loses today is all that can be"
                    + " told: it is the most that a change can win back.");
        }
        if (money.isEmpty()) {
            lead.add("What an hour, a tonne or a price comes to was not given, so nothing is said of money.");
        } else if (priced.isEmpty() && !benefits.isEmpty()) {
            lead.add("No alternative was given a price, so none is worked out in money.");
        }
        return lead;
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (money.isPresent()) {
            remarks.add(
                    "Net present value: the price is paid at time zero and is not discounted, gains and upkeep come at"
                            + " the end of each year. Many spreadsheets take the first flow at the end of the first year"
                            + " and so give less. Discounted payback is -ln(1 - C d/S)/ln(1 + d) for price C, yearly gain"
                            + " S and rate d. The internal rate of return is the rate at which the net present value is"
                            + " nothing.");
            remarks.add("Intervals are those of the simulated differences, carried through; where several gains add up,"
                    + " their ends are added, which is wider than it need be. They do not hold what is uncertain"
                    + " about the values in money.");
            remarks.add("Source: S. K. Fuller and S. R. Petersen, Life-Cycle Costing Manual, NIST Handbook 135, 1995.");
        }
        return remarks;
    }

    private double lostTime() {
        return verdict.stoppages().lostTimePerShift().mean() * year / SHIFT;
    }

    private double lostValue(Money values) {
        return values.output() instanceof Output.LineHour hour
                ? lostTime() / HOUR * hour.value()
                : lostTime()
                        * verdict.output().massFlow().mean()
                        / TONNE
                        * values.output().value();
    }

    private Table today() {
        double shifts = year / SHIFT;
        List<List<String>> rows = List.of(
                row(
                        "Time lost for want of strip",
                        Kind.TIME,
                        verdict.stoppages().lostTimePerShift(),
                        shifts),
                row(
                        "Strip not run for want of strip",
                        Kind.LENGTH,
                        verdict.stoppages().lostMetresPerShift(),
                        shifts),
                row("Output", Kind.MASS, verdict.output().massFlow(), year),
                row(
                        "Scrap of coil changes and stops",
                        Kind.MASS,
                        verdict.output().scrapKilogramsPerShift(),
                        shifts));
        return new Table("The line as written, in a year", List.of("", "Mean", "95 % interval"), rows, true);
    }

    private List<String> row(String name, Kind kind, Estimate estimate, double factor) {
        double mean = estimate.mean() * factor;
        return List.of(
                name,
                of(kind, mean, mean),
                estimate.interval()
                        .filter(any -> verdict.chance())
                        .map(ends -> range(kind, ends.low() * factor, ends.high() * factor, mean))
                        .orElse(""));
    }

    private Table gains() {
        List<List<String>> rows = new ArrayList<>();
        for (Benefit benefit : benefits) {
            rows.add(List.of(
                    benefit.name(),
                    gain(Kind.TIME, benefit.time()),
                    gain(Kind.MASS, benefit.mass()),
                    gain(Kind.MASS, benefit.scrap()),
                    gain(Kind.TIME, benefit.crew())));
        }
        return new Table(
                "What alternatives gain in a year over the one called today, with intervals",
                List.of(
                        "Alternative",
                        "Time no longer lost",
                        "More output",
                        "Less scrap",
                        "Less crew time at the joint"),
                rows,
                true);
    }

    private Table values(List<Benefit> priced) {
        List<List<String>> rows = new ArrayList<>();
        for (Benefit benefit : priced) {
            Worth worth = benefit.worth().orElseThrow();
            rows.add(List.of(
                    benefit.name(), plain(worth.offer().price()), plain(worth.yearly()), plain(worth.presentValue())));
        }
        Money given = money.orElseThrow();
        return new Table(
                "In " + given.currency() + ", at " + Numbers.text(100 * given.rate()) + " % a year",
                List.of("Alternative", "Price", "Gain of a year less upkeep", "Net present value"),
                rows,
                true);
    }

    private Table returns(List<Benefit> priced) {
        List<List<String>> rows = new ArrayList<>();
        for (Benefit benefit : priced) {
            Worth worth = benefit.worth().orElseThrow();
            Gain yearly = worth.yearly();
            rows.add(List.of(
                    benefit.name(),
                    withInterval(gain -> bareYears(worth.simplePayback(gain)), yearly.high(), yearly.low(), yearly),
                    withInterval(gain -> bareYears(worth.discountedPayback(gain)), yearly.high(), yearly.low(), yearly),
                    withInterval(gain -> percent(worth.internalRate(gain)), yearly.low(), yearly.high(), yearly)));
        }
        return new Table(
                "How soon the price comes back, and at what rate",
                List.of(
                        "Alternative",
                        "Simple payback, years",
                        "Discounted payback, years",
                        "Internal rate of return, %"),
                rows,
                true);
    }

    private String gain(Kind kind, Gain gain) {
        String mean = of(kind, gain.mean(), gain.mean());
        return gain.low() < gain.high() ? mean + " (" + range(kind, gain.low(), gain.high(), gain.mean()) + ")" : mean;
    }

    /** What the mean gain gives, and in brackets what the ends of its interval give, where it has one. */
    private static String withInterval(DoubleFunction<String> of, double first, double last, Gain yearly) {
        String mean = of.apply(yearly.mean());
        return yearly.low() < yearly.high() ? mean + " (" + of.apply(first) + " to " + of.apply(last) + ")" : mean;
    }

    private static String percent(OptionalDouble rate) {
        return rate.isPresent() ? Numbers.text(100 * rate.getAsDouble(), 3) : "none";
    }

    /** Little gain takes long to pay back: the low end of the gain is the high end of the time. */
    private static String years(DoubleFunction<OptionalDouble> payback, Gain yearly) {
        return withInterval(gain -> years(payback.apply(gain)), yearly.high(), yearly.low(), yearly);
    }

    private static String years(OptionalDouble years) {
        return bareYears(years) + (years.isPresent() ? " years" : "");
    }

    private static String bareYears(OptionalDouble years) {
        return years.isPresent() ? Numbers.text(years.getAsDouble(), 3) : "never";
    }

    private String amount(Gain gain) {
        String mean = amount(gain.mean());
        return gain.low() < gain.high() ? mean + " (" + plain(gain.low()) + " to " + plain(gain.high()) + ")" : mean;
    }

    private static String plain(Gain gain) {
        String mean = plain(gain.mean());
        return gain.low() < gain.high() ? mean + " (" + plain(gain.low()) + " to " + plain(gain.high()) + ")" : mean;
    }

    private String amount(double value) {
        return plain(value) + " " + money.map(Money::currency).orElse("");
    }

    /** To three digits, thousands apart. */
    private static String plain(double value) {
        double power = value == 0 ? 1 : Math.pow(10, Math.max(0, Math.floor(Math.log10(Math.abs(value))) - 2));
        String digits = Numbers.text(Math.rint(value / power) * power, 3);
        return digits.contains(".") ? digits : digits.replaceAll("(?<=\\d)(?=(\\d{3})+$)", "\u00a0");
    }

    private String hours(double seconds) {
        return Numbers.text(seconds / HOUR, 3) + " h";
    }

    private String of(Kind kind, double si, double size) {
        Unit unit = kind == Kind.TIME ? Unit.HOUR : units.unitFor(kind, size);
        return Numbers.text(unit.fromSi(si), 3) + " " + unit.symbol();
    }

    private String range(Kind kind, double low, double high, double size) {
        Unit unit = kind == Kind.TIME ? Unit.HOUR : units.unitFor(kind, size);
        return Numbers.text(unit.fromSi(low), 3) + " to " + Numbers.text(unit.fromSi(high), 3) + " " + unit.symbol();
    }

    private String uncertain() {
        Money values = money.orElseThrow();
        return switch (values.leastCertain()) {
            case OUTPUT ->
                values.output() instanceof Output.LineHour ? "value of a line hour" : "contribution of a tonne";
            case SCRAP -> "cost of a tonne of scrap";
            case LABOUR -> "cost of an hour of work";
            default -> values.leastCertain().name().toLowerCase(Locale.ROOT);
        };
    }
}
