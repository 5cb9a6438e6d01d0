package runthrough.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import runthrough.handcalc.CoherentUnits;
import runthrough.handcalc.Step;
import runthrough.handcalc.Term;
import runthrough.report.Cell.Piece;
import runthrough.report.Cell.Style;

/** Formulas as they are set in print: powers raised, indices lowered, proper signs. */
final class FormulaText {
    private static final String PLACE = "{}";
    private static final Pattern SQUARED = Pattern.compile("\\^2");

    private FormulaText() {}

    /** The result's symbol and the formula in symbols: {@code D = V · T + V²/(2 · dₑ)}. */
    static List<Piece> symbols(Step step) {
        List<Piece> pieces = new ArrayList<>(symbol(step.result()));
        pieces.add(new Piece(" = ", Style.PLAIN));
        pieces.addAll(filled(step, FormulaText::symbol));
        return pieces;
    }

    /** The formula with its numbers put in; nothing where that would be the result again. */
    static List<Piece> numbers(Step step, CoherentUnits units) {
        if (isPlain(step)) {
            return List.of();
        }
        return filled(step, term -> List.of(new Piece(units.number(term), Style.PLAIN)));
    }

    /** Whether nothing is worked out: no terms, or one alone. */
    static boolean isPlain(Step step) {
        return step.terms().isEmpty() || step.text().equals(PLACE);
    }

    /** A symbol with its index lowered. What the user named is left as it is. */
    static List<Piece> symbol(Term term) {
        String symbol = term.symbol();
        int index = symbol.indexOf('_');
        if (symbol.equals(term.name()) || index <= 0) {
            return List.of(new Piece(symbol.equals("rho") ? "ρ" : symbol, Style.PLAIN));
        }
        return List.of(
                new Piece(symbol.substring(0, index), Style.PLAIN),
                new Piece(symbol.substring(index + 1).replace('_', ' '), Style.LOWERED));
    }

    private static List<Piece> filled(Step step, Function<Term, List<Piece>> write) {
        List<Piece> pieces = new ArrayList<>();
        String text = step.text();
        int from = 0;
        for (Term term : step.terms()) {
            int place = text.indexOf(PLACE, from);
            pieces.addAll(signs(text.substring(from, place)));
            pieces.addAll(write.apply(term));
            from = place + PLACE.length();
        }
        pieces.addAll(signs(text.substring(from)));
        return pieces;
    }

    /** Operators as in print; {@code ^2} becomes a raised 2. */
    private static List<Piece> signs(String text) {
        List<Piece> pieces = new ArrayList<>();
        String[] parts = SQUARED.split(text, -1);
        for (int i = 0; i < parts.length; i++) {
            if (i > 0) {
                pieces.add(new Piece("2", Style.RAISED));
            }
            if (!parts[i].isEmpty()) {
                String set = parts[i].replace(" * ", " · ")
                        .replace(" - ", " − ")
                        .replace("sqrt", "√")
                        .replace("pi ", "π ");
                pieces.add(new Piece(set, Style.PLAIN));
            }
        }
        return pieces;
    }
}
