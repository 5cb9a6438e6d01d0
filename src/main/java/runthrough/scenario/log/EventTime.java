package runthrough.scenario.log;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading.Unreadable;

/**
 * The time of an event: seconds, hours and minutes as a clock shows them, or a date with a time. All rows of a log use the same
 * form. A clock that steps back by more than half a day has passed midnight.
 */
final class EventTime {
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,4}):([0-5]?[0-9])(?::([0-5]?[0-9](?:\\.[0-9]+)?))?");
    private static final double DAY = 86_400;
    private static final String MEND = "Mend the row, or put it where it belongs.";

    private @org.jspecify.annotations.Nullable Form form;
    private double days;
    private double before = Double.NaN;

    /** How time is written. */
    enum Form {
        SECONDS("seconds"),
        CLOCK("h:mm:ss"),
        DATE("a date with a time");

        private final String words;

        Form(String words) {
            this.words = words;
        }
    }

    /** A time (s), or what is wrong with it. */
    record Read(double seconds, Optional<Unreadable> wrong) {}

    /** Reads the time of the next row. */
    Read read(String text) {
        Optional<Double> seconds = QuantityParser.readNumber(text);
        if (seconds.isPresent()) {
            return as(Form.SECONDS, seconds.get());
        }
        Matcher clock = CLOCK.matcher(text);
        if (clock.matches()) {
            double last = clock.group(3) == null ? 0 : Double.parseDouble(clock.group(3));
            return as(
                    Form.CLOCK,
                    3600 * Double.parseDouble(clock.group(1)) + 60 * Double.parseDouble(clock.group(2)) + last);
        }
        return date(text)
                .map(date -> as(Form.DATE, date))
                .orElseGet(() -> new Read(Double.NaN, Optional.of(unreadable(text))));
    }

    private Read as(Form found, double value) {
        if (form == null) {
            form = found;
        }
        if (form != found) {
            return outOfPlace("is written as " + found.words + ", the rows before as " + form.words);
        }
        double time = value + days;
        if (form == Form.CLOCK && time < before - DAY / 2) {
            days += DAY;
            time += DAY;
        }
        if (time < before) {
            return outOfPlace("is earlier than the row before");
        }
        before = time;
        return new Read(time, Optional.empty());
    }

    private static Read outOfPlace(String rule) {
        return new Read(Double.NaN, Optional.of(new Unreadable(rule, MEND)));
    }

    private static Unreadable unreadable(String text) {
        // What has a colon is no number of seconds, but a clock or a date that is wrong.
        return Optional.of(text)
                .filter(seconds -> seconds.indexOf(':') < 0)
                .flatMap(seconds -> QuantityParser.oddNumber(
                        seconds, number -> QuantityParser.readNumber(number).isPresent()))
                .orElseGet(() -> new Unreadable(
                        "is not a time; write seconds, h:mm:ss or a date like 2026-03-01T06:13:05", MEND));
    }

    private static Optional<Double> date(String text) {
        String iso = text.replaceFirst("^([0-9]{4}-[0-9]{2}-[0-9]{2}) ", "$1T");
        try {
            return Optional.of(seconds(
                    OffsetDateTime.parse(iso).atZoneSameInstant(ZoneOffset.UTC).toLocalDateTime()));
        } catch (DateTimeException e) {
            // Without an offset, then.
        }
        try {
            return Optional.of(seconds(LocalDateTime.parse(iso)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static double seconds(LocalDateTime date) {
        Instant instant = date.toInstant(ZoneOffset.UTC);
        return instant.getEpochSecond() + instant.getNano() / 1e9;
    }
}
