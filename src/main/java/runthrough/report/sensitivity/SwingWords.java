package runthrough.report.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.StudyWords;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.write.CsvWriter;
import runthrough.study.sensitivity.Change;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.SwingEffect;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.sensitivity.Swings;
import runthrough.study.statistics.Interval;

/** Shows what moving inputs one at a time does. */
final class SwingWords {
    private static final int NAMED = 3;
    /** More rows cannot be taken in. */
    private static final int MOST_ROWS = 14;

    private final Swings swings;
    private final StudyWords words;
    private final boolean margin;

    SwingWords(Swings swings, StudyWords words) {
        this.swings = swings;
        this.words = words;
        this.margin = swings.measure() == ChangeMeasure.MARGIN;
    }

    /** What is looked at: the margin at the target, the mean margin, or the time lost. */
    String measure() {
        return margin ? swings.atTarget() ? "margin at the target" : "mean margin" : "time lost at each coil change";
    }

    /** Its value for the line as it is. */
    String present() {
        return words.texts().mean(margin ? Kind.LENGTH : Kind.TIME, swings.strip());
    }

    /** The inputs that move the margin or lost time most, in a sentence; the share where nothing moves those. */
    String headline() {
        List<SwingEffect> most = swings.byStrip();
        if (most.isEmpty()) {
            return swings.byShare().isEmpty()
                    ? "No input is shown to move the " + measure() + (margin ? " or the share run through." : ".")
                    : shareMoves();
        }
        return "What moves the " + measure() + " most: " + named(most, this::stripPart) + ".";
    }

    /** The inputs that move the share run through most; empty where there is no share to move. */
    Optional<String> share() {
        return !margin || swings.byStrip().isEmpty() ? Optional.empty() : Optional.of(shareMoves());
    }

    private String shareMoves() {
        return swings.byShare().isEmpty()
                ? "No input is shown to move the share run through."
                : "What moves the share run through most: " + named(swings.byShare(), this::sharePart) + ".";
    }

    private static String named(List<SwingEffect> effects, Function<SwingEffect, String> part) {
        return effects.stream().limit(NAMED).map(part).collect(Collectors.joining("; "));
    }

    private String stripPart(SwingEffect effect) {
        AtEnd at = further(effect, AtEnd::strip);
        double by = at.strip().orElseThrow().by().mean();
        String amount = amount(Math.abs(by));
        String verb = margin ? by < 0 ? "costs" : "gives" : by < 0 ? "saves" : "costs";
        return moved(effect, at) + " " + verb + " " + amount;
    }

    private String sharePart(SwingEffect effect) {
        AtEnd at = further(effect, AtEnd::share);
        double by = at.share().orElseThrow().by().mean();
        return moved(effect, at) + " " + (by < 0 ? "costs " : "gives ") + points(Math.abs(by)) + " percentage points";
    }

    private static String moved(SwingEffect effect, AtEnd at) {
        return effect.swing().path() + " of " + at.end().text() + " instead of "
                + effect.swing().present();
    }

    private String amount(double si) {
        return margin ? words.texts().length(si) : words.texts().time(si);
    }

    private static String points(double share) {
        return Texts.number(Unit.PERCENT.fromSi(share));
    }

    private static AtEnd further(SwingEffect effect, Function<AtEnd, Optional<Change>> what) {
        return reach(what.apply(effect.low())) >= reach(what.apply(effect.high())) ? effect.low() : effect.high();
    }

    private static double reach(Optional<Change> change) {
        return change.filter(Change::shown).map(by -> Math.abs(by.by().mean())).orElse(-1.0);
    }

    /** What else must be known of the swings. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        List<String> still = swings.effects().stream()
                .filter(effect -> !effect.isShown() && possible(effect))
                .map(effect -> effect.swing().path())
                .toList();
        if (!still.isEmpty()) {
            remarks.add(still.size() + " of " + swings.effects().size()
                    + " inputs are not shown to move anything within their ranges; the table names them.");
        }
        return remarks;
    }

    private static boolean possible(SwingEffect effect) {
        return effect.low().strip().isPresent() || effect.high().strip().isPresent();
    }

    /** One table for each thing moved, the inputs that are not shown to move anything, and the values not possible. */
    List<Table> tables() {
        List<Table> tables = new ArrayList<>();
        if (!swings.byStrip().isEmpty()) {
            tables.add(table("Moves the " + measure(), swings.byStrip(), this::strip));
        }
        if (!swings.byShare().isEmpty()) {
            tables.add(table("Moves the share run through, percentage points", swings.byShare(), this::share));
        }
        List<List<String>> still = swings.effects().stream()
                .filter(effect -> !effect.isShown() && possible(effect))
                .map(effect -> List.of(effect.swing().path(), range(effect)))
                .toList();
        if (!still.isEmpty()) {
            tables.add(Table.words("Not shown to move anything", List.of("", ""), still, false));
        }
        List<List<String>> noted = swings.effects().stream()
                .flatMap(effect -> Stream.of(effect.low(), effect.high())
                        .filter(at -> !at.end().note().isEmpty())
                        .map(at -> List.of(
                                effect.swing().path() + " at " + at.end().text(),
                                (at.strip().isEmpty() ? "not possible: " : "")
                                        + at.end().note())))
                .toList();
        if (!noted.isEmpty()) {
            tables.add(Table.words("Values not possible, or nearer than the rest", List.of("", ""), noted, false));
        }
        return tables;
    }

    private static String range(SwingEffect effect) {
        return effect.low().end().text() + " to " + effect.high().end().text();
    }

    private Table table(String caption, List<SwingEffect> effects, Function<AtEnd, String> cell) {
        String which =
                effects.size() > MOST_ROWS ? ", first " + MOST_ROWS + " of " + effects.size() + " (all: CSV)" : "";
        return Table.words(
                caption + which,
                List.of("input", "as it is", "low", "high"),
                effects.stream()
                        .limit(MOST_ROWS)
                        .map(effect -> List.of(
                                effect.swing().path(),
                                effect.swing().present(),
                                effect.low().end().text() + ": " + cell.apply(effect.low()),
                                effect.high().end().text() + ": " + cell.apply(effect.high())))
                        .toList(),
                true);
    }

    private String strip(AtEnd at) {
        return at.strip()
                .map(change -> change.shown()
                        ? signed(change.by().mean(), amount(change.by().mean()))
                        : "not shown")
                .orElse("not possible");
    }

    private String share(AtEnd at) {
        return at.share()
                .map(change -> change.shown()
                        ? signed(change.by().mean(), points(change.by().mean()))
                        : "not shown")
                .orElse("not possible");
    }

    private static String signed(double value, String text) {
        return value > 0 ? "+" + text : text;
    }

    /** Every input and both ends, in the order of the inputs. */
    String csv() {
        Unit unit = margin ? words.units().unit(Kind.LENGTH) : Unit.SECOND;
        String name = margin ? "margin" : "lost time";
        List<String> header =
                new ArrayList<>(List.of("input", "as it is", "range stated", "end", "value", "value (SI)"));
        header.add("possible");
        for (String what : List.of(name + " change (" + unit.symbol() + ")", "share change")) {
            header.addAll(List.of(what, what + " low", what + " high", what + " shown"));
        }
        header.add("note");
        List<List<String>> rows = new ArrayList<>();
        for (SwingEffect effect : swings.effects()) {
            rows.add(row(effect, "low", effect.low(), unit));
            rows.add(row(effect, "high", effect.high(), unit));
        }
        return CsvWriter.of(header, rows);
    }

    private List<String> row(SwingEffect effect, String end, AtEnd at, Unit unit) {
        List<String> cells = new ArrayList<>();
        cells.add(CsvWriter.text(effect.swing().path()));
        cells.add(CsvWriter.text(effect.swing().present()));
        cells.add(effect.swing().stated() ? "yes" : "no");
        cells.add(end);
        cells.add(CsvWriter.text(at.end().text()));
        cells.add(CsvWriter.number(at.end().value()));
        cells.add(at.strip().isPresent() ? "yes" : "no");
        cells.addAll(cells(at.strip(), unit::fromSi));
        cells.addAll(cells(at.share(), share -> share));
        cells.add(CsvWriter.text(at.end().note()));
        return cells;
    }

    private List<String> cells(Optional<Change> change, Function<Double, Double> shown) {
        if (change.isEmpty()) {
            return List.of("", "", "", "");
        }
        Optional<Interval> interval = change.get().by().interval().filter(any -> words.random());
        return List.of(
                CsvWriter.number(shown.apply(change.get().by().mean())),
                CsvWriter.number(interval.map(Interval::low).map(shown).orElse(Double.NaN)),
                CsvWriter.number(interval.map(Interval::high).map(shown).orElse(Double.NaN)),
                change.get().shown() ? "yes" : "no");
    }
}
