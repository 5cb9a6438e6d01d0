package runthrough.report.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.sensitivity.Change;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.SwingEffect;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.sensitivity.Swings;

/** What moving inputs one at a time does: to the margin or lost time, to the share run through, and all of it as a file. */
final class SwingTables {
    private static final String FILE = "inputs-one-at-a-time.csv";
    /** More rows cannot be taken in. */
    private static final int MOST_ROWS = 14;

    private final Swings swings;
    private final SwingWords words;
    private final Texts texts;
    private final boolean margin;

    SwingTables(SwingWords words) {
        this.swings = words.swings();
        this.words = words;
        this.texts = words.texts();
        this.margin = swings.measure() == ChangeMeasure.MARGIN;
    }

    /** A table for what is moved each, the inputs that are not shown to move anything, values not possible, and the file. */
    List<Table> all() {
        double furthest = swings.byStrip().stream()
                .mapToDouble(SwingEffect::stripReach)
                .max()
                .orElse(1);
        return List.of(
                moved("Changes of the " + words.measure(), swings.byStrip(), notation(furthest), AtEnd::strip),
                moved("Changes of the share run through", swings.byShare(), Notation.POINTS, AtEnd::share),
                still(),
                noted(),
                file());
    }

    private Notation notation(double greatest) {
        return texts.notation(margin ? Kind.LENGTH : Kind.TIME, greatest);
    }

    private Table moved(
            String caption, List<SwingEffect> effects, Notation notation, Function<AtEnd, Optional<Change>> change) {
        String which =
                effects.size() > MOST_ROWS ? ", first " + MOST_ROWS + " of " + effects.size() + " (all: CSV)" : "";
        return TableMaker.<SwingEffect>of(caption + which)
                .shownUpTo(MOST_ROWS)
                .words("input", effect -> effect.swing().path())
                .with(
                        Column.numbers("as it is"),
                        effect -> Cell.of(effect.swing().present()))
                .with(
                        Column.numbers("low"),
                        effect -> Cell.of(effect.low().end().text()))
                .with(changed(notation), effect -> cell(change.apply(effect.low()), notation))
                .with(
                        Column.numbers("high"),
                        effect -> Cell.of(effect.high().end().text()))
                .with(changed(notation), effect -> cell(change.apply(effect.high()), notation))
                .of(effects);
    }

    private static Column changed(Notation notation) {
        return new Column("change", Column.Holds.NUMBERS, Optional.of(notation), Column.Place.EVERYWHERE);
    }

    /** By how much, to three digits: what is not shown to differ from none is not written, and with it no interval. */
    private Cell cell(Optional<Change> change, Notation notation) {
        return new Cell.Change(
                change.filter(Change::shown)
                        .map(shown -> Value.of(shown.by().mean(), notation))
                        .orElse(Value.of(Double.NaN, notation)),
                change.isPresent() ? "not shown" : "not possible");
    }

    private Table still() {
        return TableMaker.<SwingEffect>of("Not shown to change anything")
                .words("", effect -> effect.swing().path())
                .words(
                        "",
                        effect -> effect.low().end().text() + " to "
                                + effect.high().end().text())
                .of(words.still());
    }

    private Table noted() {
        return TableMaker.<Moved>of("Inputs whose range is cut short")
                .words(
                        "",
                        moved -> moved.effect().swing().path() + " at "
                                + moved.at().end().text())
                .words(
                        "",
                        moved -> (moved.isPossible() ? "" : "not possible: ")
                                + moved.at().end().note())
                .of(ends().filter(moved -> !moved.at().end().note().isEmpty()).toList());
    }

    /** Every input and both ends, in the order of the inputs. */
    private Table file() {
        TableMaker<Moved> table = TableMaker.<Moved>of("Inputs moved one at a time")
                .intoFile(FILE)
                .shownUpTo(0)
                .words("input", moved -> moved.effect().swing().path())
                .words("as it is", moved -> moved.effect().swing().present())
                .words("range stated", moved -> word(moved.effect().swing().stated()))
                .words("end", Moved::name)
                .words("value", moved -> moved.at().end().text())
                .count("value (SI)", moved -> moved.at().end().value())
                .words("possible", moved -> word(moved.isPossible()));
        changes(table, margin ? "margin change" : "lost time change", notation(1), AtEnd::strip);
        changes(table, "share change", Notation.POINTS, AtEnd::share);
        return table.words("note", moved -> moved.at().end().note()).of(ends().toList());
    }

    private void changes(
            TableMaker<Moved> table, String heading, Notation notation, Function<AtEnd, Optional<Change>> change) {
        table.estimate(
                heading,
                notation,
                true,
                "",
                moved -> change.apply(moved.at())
                        .map(by -> texts.value(notation, by.by()))
                        .orElse(Value.of(Double.NaN, notation)));
        table.words(
                heading + " shown",
                moved -> change.apply(moved.at()).map(by -> word(by.shown())).orElse(""));
    }

    private Stream<Moved> ends() {
        List<Moved> ends = new ArrayList<>();
        for (SwingEffect effect : swings.effects()) {
            ends.add(new Moved(effect, "low", effect.low()));
            ends.add(new Moved(effect, "high", effect.high()));
        }
        return ends.stream();
    }

    private static String word(boolean yes) {
        return yes ? "yes" : "no";
    }

    /** An input at one end of its range. */
    private record Moved(SwingEffect effect, String name, AtEnd at) {
        boolean isPossible() {
            return at.strip().isPresent();
        }
    }
}
