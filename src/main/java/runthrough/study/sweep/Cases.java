package runthrough.study.sweep;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;
import org.hipparchus.random.SobolSequenceGenerator;
import runthrough.study.StudyException;

/**
 * The cases of a sweep.
 *
 * @param paths of all that any case sets, in the order in which they are written
 * @param count of the cases
 * @param values from the index of a case, from 0, to what it sets: texts as a scenario would have them, by path. May be called on
 *     several threads
 */
public record Cases(List<String> paths, int count, IntFunction<Map<String, String>> values) {
    /** So many cases a sweep may have. */
    public static final int MOST = 10_000_000;

    private static final int MOST_SPANS = 100;
    private static final String DIRECTION_NUMBERS = "new-joe-kuo-6.101";

    public Cases {
        paths = List.copyOf(paths);
        if (count < 1 || count > MOST) {
            throw new StudyException(count + " cases; a sweep has 1 to " + MOST);
        }
    }

    /**
     * Values that an input takes one after the other.
     *
     * @param path of the input
     * @param values as a scenario would have them
     */
    public record Steps(String path, List<String> values) {
        public Steps {
            values = List.copyOf(values);
        }
    }

    /**
     * Values that an input takes from a point of the unit interval.
     *
     * @param path of the input
     * @param at from a number in [0, 1) to the value as a scenario would have it
     */
    public record Span(String path, DoubleFunction<String> at) {}

    /** Cases that are named one by one. */
    public static Cases listed(List<Map<String, String>> cases) {
        Set<String> paths = new LinkedHashSet<>();
        cases.forEach(one -> paths.addAll(one.keySet()));
        return new Cases(List.copyOf(paths), cases.size(), cases::get);
    }

    /** Every value with every value of the others; those of the last input change fastest. */
    public static Cases grid(List<Steps> inputs) {
        long count = 1;
        for (Steps input : inputs) {
            count = Math.min(count * input.values().size(), MOST + 1L);
        }
        return new Cases(inputs.stream().map(Steps::path).toList(), Math.toIntExact(count), index -> {
            List<String> values = new ArrayList<>();
            int rest = index;
            for (int i = inputs.size() - 1; i >= 0; i--) {
                List<String> steps = inputs.get(i).values();
                values.add(0, steps.get(rest % steps.size()));
                rest /= steps.size();
            }
            return values(inputs.stream().map(Steps::path).toList(), values);
        });
    }

    /**
     * The first {@code count} points of the Sobol sequence with the direction numbers of S. Joe and F. Y. Kuo, Constructing Sobol
     * sequences with better two-dimensional projections, SIAM J. Sci. Comput. 30 (2008), 2635-2654. Its first point, where all
     * inputs have their least values, is kept (A. B. Owen, On dropping the first Sobol' point, 2020, advises so): a power of two as
     * count fills the space best.
     */
    public static Cases filling(List<Span> inputs, int count) {
        SobolSequenceGenerator sequence = sobol(inputs.size());
        double[][] points = new double[Math.min(count, MOST)][];
        for (int i = 0; i < points.length; i++) {
            points[i] = sequence.nextVector();
        }
        List<String> paths = inputs.stream().map(Span::path).toList();
        return new Cases(paths, count, index -> {
            List<String> values = new ArrayList<>();
            for (int i = 0; i < inputs.size(); i++) {
                values.add(inputs.get(i).at().apply(points[index][i]));
            }
            return values(paths, values);
        });
    }

    /** Of the direction numbers that Joe and Kuo give for 21201 dimensions the first ones are in a file beside this class. */
    private static SobolSequenceGenerator sobol(int dimensions) {
        if (dimensions > MOST_SPANS) {
            throw new StudyException(
                    dimensions + " inputs in a design; at most " + MOST_SPANS + " have direction numbers here");
        }
        try (InputStream numbers = Objects.requireNonNull(Cases.class.getResourceAsStream(DIRECTION_NUMBERS))) {
            return new SobolSequenceGenerator(dimensions, numbers);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> values(List<String> paths, List<String> values) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < paths.size(); i++) {
            map.put(paths.get(i), values.get(i));
        }
        return map;
    }
}
