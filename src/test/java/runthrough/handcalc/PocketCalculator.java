package runthrough.handcalc;

/** Works out formulas as a reader of the worked calculation would: numbers, + - * / ^, brackets, sqrt, min, pi. */
final class PocketCalculator {
    private final String text;
    private int at;

    private PocketCalculator(String text) {
        this.text = text.replace(" ", "");
    }

    static double workOut(String formula) {
        PocketCalculator calculator = new PocketCalculator(formula);
        double result = calculator.sum();
        if (calculator.at != calculator.text.length()) {
            throw new IllegalArgumentException(
                    "cannot read '" + calculator.text.substring(calculator.at) + "' of " + formula);
        }
        return result;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take("+")) {
                value += product();
            } else if (take("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take("*")) {
                value *= power();
            } else if (take("/")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double value = atom();
        return take("^") ? Math.pow(value, atom()) : value;
    }

    private double atom() {
        if (take("sqrt(")) {
            return Math.sqrt(upTo(")"));
        } else if (take("min(")) {
            return Math.min(upTo(","), upTo(")"));
        } else if (take("max(")) {
            return Math.max(upTo(","), upTo(")"));
        } else if (take("pi")) {
            return Math.PI;
        } else if (take("(")) {
            return upTo(")");
        }
        int from = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private double upTo(String end) {
        double value = sum();
        if (!take(end)) {
            throw new IllegalArgumentException("no '" + end + "' at " + at + " of " + text);
        }
        return value;
    }

    private boolean take(String token) {
        boolean found = text.startsWith(token, at);
        at += found ? token.length() : 0;
        return found;
    }
}
