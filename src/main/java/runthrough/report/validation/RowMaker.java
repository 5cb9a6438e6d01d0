package runthrough.report.validation;

import java.util.ArrayList;
import java.util.List;
import runthrough.report.validation.ValidationPage.Row;

/** Makes the rows of one part of the page, and numbers the sources that they refer to. */
final class RowMaker {
    private final List<Reference> sources = new ArrayList<>();

    /** The sources of all rows made so far, in the order of their numbers. */
    List<Reference> sources() {
        return List.copyOf(sources);
    }

    Row row(Recorded recorded) {
        if (recorded instanceof Recorded.OfNumber number) {
            return number(number);
        } else if (recorded instanceof Recorded.OfText text) {
            return row(text, text.expected(), text.got(), text.passed() ? "0" : "differs", "0");
        }
        return errors((Recorded.OfErrors) recorded);
    }

    private Row number(Recorded.OfNumber number) {
        double tolerance = number.tolerance();
        String unit = number.unit().isEmpty() ? "" : " " + number.unit();
        String error = Digits.error(number.error(), tolerance);
        String inStandardErrors = number.standardError() > 0
                ? ", " + Digits.text(number.error() / number.standardError()) + " standard errors"
                : "";
        return row(
                number,
                Digits.value(number.expected(), tolerance) + unit,
                Digits.value(number.got(), tolerance) + unit,
                error + inStandardErrors,
                Digits.text(tolerance));
    }

    private Row errors(Recorded.OfErrors errors) {
        int power = Digits.power(errors.greatest() == 0 ? errors.tolerance() : errors.greatest()) + 1;
        String greatest = errors.greatest() == 0 ? "0" : "at most 1e" + power;
        return row(
                errors,
                "no difference",
                errors.errors().size() + " × " + errors.each(),
                greatest,
                Digits.text(errors.tolerance()));
    }

    private Row row(Recorded recorded, String expected, String got, String error, String tolerance) {
        return new Row(
                recorded.id(),
                recorded.what(),
                expected,
                got,
                error,
                tolerance,
                recorded.rule(),
                place(recorded.source()),
                recorded.source().standing(),
                recorded.passed());
    }

    private int place(Reference source) {
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return sources.indexOf(source) + 1;
    }
}
