package runthrough.study.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import runthrough.study.StudyException;
import runthrough.study.sweep.Cases.Span;
import runthrough.study.sweep.Cases.Steps;

/** Which cases a sweep has, and who does which. */
class CasesTest {

    @Test
    void aGridGoesThroughTheLastInputFirst() {
        Cases grid =
                Cases.grid(List.of(new Steps("crew", List.of("1", "2")), new Steps("speed", List.of("a", "b", "c"))));

        assertThat(grid.count()).isEqualTo(6);
        assertThat(grid.values().apply(1)).isEqualTo(Map.of("crew", "1", "speed", "b"));
        assertThat(grid.values().apply(3)).isEqualTo(Map.of("crew", "2", "speed", "a"));
    }

    /** Joe and Kuo (2008): the points that their program sobol.cc prints first in three dimensions with new-joe-kuo-6.21201. */
    @Test
    void aDesignIsTheSobolSequenceAsPublished() {
        Cases design = Cases.filling(
                List.of(
                        new Span("x", Double::toString),
                        new Span("y", Double::toString),
                        new Span("z", Double::toString)),
                10);

        assertThat(IntStream.range(0, 10)
                        .mapToObj(i -> String.join(" ", design.values().apply(i).values())))
                .containsExactly(
                        "0.0 0.0 0.0",
                        "0.5 0.5 0.5",
                        "0.75 0.25 0.25",
                        "0.25 0.75 0.75",
                        "0.375 0.375 0.625",
                        "0.875 0.875 0.125",
                        "0.625 0.125 0.875",
                        "0.125 0.625 0.375",
                        "0.1875 0.3125 0.9375",
                        "0.6875 0.8125 0.4375");
    }

    /** The file beside the class holds the first rows of the library's. */
    @Test
    void aDesignOfAHundredInputsIsThatOfTheLibrary_ofMoreIsRefused() {
        List<Span> hundred = IntStream.range(0, 100)
                .mapToObj(i -> new Span("x" + i, Double::toString))
                .toList();
        SobolSequenceGenerator library = new SobolSequenceGenerator(100);
        IntStream.range(0, 777).forEach(i -> library.nextVector());

        assertThat(Cases.filling(hundred, 778).values().apply(777).values())
                .containsExactlyElementsOf(DoubleStream.of(library.nextVector())
                        .mapToObj(Double::toString)
                        .toList());
        assertThatThrownBy(() -> Cases.filling(
                        IntStream.range(0, 101).mapToObj(i -> hundred.get(0)).toList(), 2))
                .hasMessage("101 inputs in a design; at most 100 have direction numbers here");
    }

    @Test
    void moreCasesThanCanBeCountedAreRefused() {
        List<String> thousand =
                IntStream.range(0, 1000).mapToObj(Integer::toString).toList();

        assertThatThrownBy(() -> Cases.grid(List.of(
                        new Steps("a", thousand),
                        new Steps("b", thousand),
                        new Steps("c", thousand),
                        new Steps("d", thousand))))
                .isInstanceOf(StudyException.class)
                .hasMessageContaining("a sweep has 1 to 10000000");
    }

    /** 2, 5 and 8 of nine cases; shards take turns, so that each has as much to do. */
    @Test
    void everyCaseIsOfOneShard() {
        assertThat(new Shard(2, 3).indices(9)).containsExactly(1, 4, 7);
        assertThat(new Shard(3, 3).indices(2)).isEmpty();
        assertThat(IntStream.rangeClosed(1, 4)
                        .flatMap(number -> IntStream.of(new Shard(number, 4).indices(10)))
                        .sorted())
                .containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 9);
    }
}
