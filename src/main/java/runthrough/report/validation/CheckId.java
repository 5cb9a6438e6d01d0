package runthrough.report.validation;

import java.util.Comparator;

/** A check's short name, such as K04 or Q5, sorted as people do: letters first, then the number. */
record CheckId(String letters, int number, String rest) implements Comparable<CheckId> {
    private static final Comparator<CheckId> ORDER = Comparator.comparing(CheckId::letters)
            .thenComparingInt(CheckId::number)
            .thenComparing(CheckId::rest);

    static CheckId of(String id) {
        int digits = 0;
        while (digits < id.length() && !isDigit(id.charAt(digits))) {
            digits++;
        }
        int end = digits;
        while (end < id.length() && isDigit(id.charAt(end))) {
            end++;
        }
        int number = end > digits ? Integer.parseInt(id, digits, end, 10) : 0;
        return new CheckId(id.substring(0, digits), number, id.substring(end));
    }

    @Override
    public int compareTo(CheckId other) {
        return ORDER.compare(this, other);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
