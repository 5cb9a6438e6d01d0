package runthrough.report.sweep;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runthrough.report.sweep.SweepLines.Stamp;

/**
 * Puts the files of a sweep together to the one that a single machine would have written. All files are looked through first; with
 * anything foreign, damaged, doubled or missing nothing is written.
 */
public final class Merge {
    /** So many missing cases are named. */
    private static final int NAMED = 10;

    private final List<Path> files;
    private final List<String> problems = new ArrayList<>();
    private final BitSet seen = new BitSet();
    private @Nullable Stamp first;
    private String firstPlace = "";
    private @Nullable String header;
    private int failed;

    private Merge(List<Path> files) {
        this.files = List.copyOf(files);
    }

    /** Looks through {@code files}, all of them to the end. */
    public static Merge of(List<Path> files) {
        Merge merge = new Merge(files);
        files.forEach(merge::lookThrough);
        merge.lookForMissing();
        return merge;
    }

    /** What keeps the files from being put together, one line each; none when nothing does. */
    public List<String> problems() {
        return List.copyOf(problems);
    }

    /** How many cases could not be run. */
    public int failed() {
        return failed;
    }

    private void lookThrough(Path file) {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            problems.add(file + " is not an ordinary file. Name the files that sweep wrote with --out.");
            return;
        }
        try (BufferedReader reader = reader(file)) {
            int number = 0;
            int last = 0;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                number++;
                String place = file + ":" + number;
                if (number == 1 && CsvSweep.isHeader(line)) {
                    if (!isOfThis(line, place)) {
                        return;
                    }
                    continue;
                }
                Optional<Stamp> stamp = header == null ? JsonSweep.stamp(line) : CsvSweep.stamp(line);
                if (stamp.isEmpty()) {
                    problems.add(
                            place + " is damaged, or no line of a sweep: its check sum does not fit. Run the sweep that"
                                    + " made the file again; it keeps the lines before.");
                } else if (isOfThis(stamp.get(), place)) {
                    take(stamp.get(), place, last);
                    last = stamp.get().number();
                } else {
                    return;
                }
            }
        } catch (NoSuchFileException e) {
            problems.add(file + ": there is no such file. Check the name.");
        } catch (AccessDeniedException e) {
            problems.add(file + ": may not be read. Ask for permission to read it.");
        } catch (IOException e) {
            problems.add(file + " cannot be read (" + e.getMessage() + "). Check the disk.");
        }
    }

    /** Bytes that are no UTF-8 come as a sign that stands for such, so that the check sum of their line does not fit. */
    private static BufferedReader reader(Path file) throws IOException {
        return new BufferedReader(new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8));
    }

    private boolean isOfThis(String line, String place) {
        if (first == null && header == null) {
            header = line;
        } else if (!line.equals(header)) {
            problems.add(place + " is of another sweep, or in another format, than " + files.get(0)
                    + ". Merge the files of one sweep in one format.");
            return false;
        }
        return true;
    }

    private boolean isOfThis(Stamp stamp, String place) {
        Stamp known = first;
        if (known == null) {
            first = stamp;
            firstPlace = place;
            return true;
        }
        if (stamp.sweep().equals(known.sweep()) && stamp.of() == known.of()) {
            return true;
        }
        problems.add(place + " is of another sweep (" + stamp.sweep() + ") than " + firstPlace + " (" + known.sweep()
                + "). Merge files of one sweep: the same scenario, tables, cases, options and version of the program.");
        return false;
    }

    private void take(Stamp stamp, String place, int last) {
        if (seen.get(stamp.number())) {
            problems.add(place + ": case " + stamp.number() + " is doubled. Leave out one of the two.");
        } else if (stamp.number() < last) {
            problems.add(place + ": case " + stamp.number() + " stands behind case " + last
                    + ". The file was changed; run its sweep again.");
        } else {
            seen.set(stamp.number());
            failed += stamp.isFailed() ? 1 : 0;
        }
    }

    private void lookForMissing() {
        int of = first == null ? 0 : first.of();
        int missing = of - seen.cardinality();
        if (first == null && problems.isEmpty()) {
            problems.add("the files hold no line of a sweep. Name the files that sweep wrote with --out.");
        } else if (missing > 0 && problems.isEmpty()) {
            String named = IntStream.rangeClosed(1, of)
                    .filter(number -> !seen.get(number))
                    .limit(NAMED)
                    .mapToObj(Integer::toString)
                    .collect(Collectors.joining(", "));
            problems.add(missing + " of " + of + " cases" + (missing == 1 ? " is" : " are") + " missing: " + named
                    + (missing > NAMED ? ", ..." : "") + ". Name the file of their shard, too, or run it to its end.");
        }
    }

    /** A file at one of its lines. */
    private record At(BufferedReader reader, String line, int number) {}

    /**
     * Writes all lines in the order of their cases.
     *
     * @throws IOException when a file that was looked through cannot be read again, or {@code out} takes no more
     */
    public void writeTo(Appendable out) throws IOException {
        if (header != null) {
            out.append(header).append('\n');
        }
        List<BufferedReader> open = new ArrayList<>();
        try {
            PriorityQueue<At> queue = new PriorityQueue<>(Comparator.comparingInt(At::number));
            for (Path file : files) {
                BufferedReader reader = reader(file);
                open.add(reader);
                next(reader).ifPresent(queue::add);
            }
            while (!queue.isEmpty()) {
                At least = queue.remove();
                out.append(least.line()).append('\n');
                next(least.reader()).ifPresent(queue::add);
            }
        } finally {
            for (BufferedReader reader : open) {
                reader.close();
            }
        }
    }

    private Optional<At> next(BufferedReader reader) throws IOException {
        String line = reader.readLine();
        if (line != null && header != null && line.equals(header)) {
            line = reader.readLine();
        }
        if (line == null) {
            return Optional.empty();
        }
        String found = line;
        return (header == null ? JsonSweep.stamp(found) : CsvSweep.stamp(found))
                .map(stamp -> new At(reader, found, stamp.number()));
    }
}
