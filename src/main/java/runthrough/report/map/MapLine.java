package runthrough.report.map;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.map.ClosedFormPoint;
import runthrough.study.map.MapPoint;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** A point of a map as a line of text: every number in full, so that it is read back exactly, and a check sum at the end. */
final class MapLine {
    private static final String NONE = "-";
    private static final int FIELDS = 13;
    private static final int REFUSED_FIELDS = 3;

    private MapLine() {}

    static String of(MapPoint point) {
        List<String> fields = new ArrayList<>();
        fields.add(Integer.toString(point.column()));
        fields.add(Integer.toString(point.row()));
        point.measured()
                .ifPresentOrElse(
                        found -> measured(found, fields),
                        () -> fields.add(URLEncoder.encode(point.refusal(), StandardCharsets.UTF_8)));
        String line = String.join(" ", fields);
        return line + " " + checkSum(line);
    }

    /** In the order in which they are read. */
    private static void measured(MapPoint.Measured found, List<String> fields) {
        Estimate share = found.share();
        Optional<Interval> interval = share.interval();
        fields.addAll(List.of(
                Long.toString(found.changes()),
                Double.toString(share.mean()),
                Integer.toString(share.replications()),
                share.sd().isPresent() ? Double.toString(share.sd().getAsDouble()) : NONE,
                interval.map(ends -> Double.toString(ends.low())).orElse(NONE),
                interval.map(ends -> Double.toString(ends.high())).orElse(NONE),
                interval.map(ends -> ends.method().name()).orElse(NONE),
                causes(found.causes()),
                Double.toString(found.closedForm().capacity()),
                Double.toString(found.closedForm().refill()),
                Double.toString(found.closedForm().preparation())));
    }

    /** The point that {@code line} holds; empty when it is damaged. */
    static Optional<MapPoint> read(String line) {
        int end = line.lastIndexOf(' ');
        if (end < 0 || !checkSum(line.substring(0, end)).equals(line.substring(end + 1))) {
            return Optional.empty();
        }
        String[] fields = line.substring(0, end).split(" ", -1);
        try {
            int column = Integer.parseInt(fields[0]);
            int row = Integer.parseInt(fields[1]);
            if (fields.length == REFUSED_FIELDS) {
                return Optional.of(new MapPoint(
                        column, row, Optional.empty(), URLDecoder.decode(fields[2], StandardCharsets.UTF_8)));
            }
            return fields.length == FIELDS
                    ? Optional.of(new MapPoint(column, row, Optional.of(measured(fields)), ""))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static MapPoint.Measured measured(String[] fields) {
        Optional<Interval> interval = fields[8].equals(NONE)
                ? Optional.empty()
                : Optional.of(new Interval(
                        Double.parseDouble(fields[6]),
                        Double.parseDouble(fields[7]),
                        Interval.Method.valueOf(fields[8])));
        return new MapPoint.Measured(
                Long.parseLong(fields[2]),
                new Estimate(
                        Double.parseDouble(fields[3]),
                        Integer.parseInt(fields[4]),
                        fields[5].equals(NONE)
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(Double.parseDouble(fields[5])),
                        interval),
                causes(fields[9]),
                new ClosedFormPoint(
                        Double.parseDouble(fields[10]),
                        Double.parseDouble(fields[11]),
                        Double.parseDouble(fields[12])));
    }

    /** The counts in the order of the causes. */
    private static String causes(CauseCounts counts) {
        return Stream.of(Cause.values())
                .map(cause -> Long.toString(counts.count(cause)))
                .collect(Collectors.joining(","));
    }

    private static CauseCounts causes(String field) {
        String[] counts = field.split(",", -1);
        Map<Cause, Long> known = new EnumMap<>(Cause.class);
        int place = 0;
        for (Cause cause : Cause.values()) {
            long count = Long.parseLong(counts[place++]);
            if (count > 0) {
                known.put(cause, count);
            }
        }
        return new CauseCounts(known);
    }

    private static String checkSum(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
