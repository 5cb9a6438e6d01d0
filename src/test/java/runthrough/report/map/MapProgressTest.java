package runthrough.report.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.report.write.ReportFolderException;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.map.ClosedFormPoint;
import runthrough.study.map.MapPoint;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** What an interrupted map leaves, and what is taken up of it. */
class MapProgressTest {
    private static final MapPoint ONE = new MapPoint(
            3,
            14,
            Optional.of(new MapPoint.Measured(
                    2000,
                    new Estimate(
                            0.1 + 0.2,
                            10,
                            OptionalDouble.of(1 / 3.0),
                            Optional.of(new Interval(0.29, 0.31, Interval.Method.STUDENT_T))),
                    new CauseCounts(Map.of(
                            Cause.PRACTICE,
                            1L,
                            Cause.WAITING_FOR_PREPARATION,
                            2L,
                            Cause.ACCUMULATOR_NOT_FULL,
                            3L,
                            Cause.USUAL_JOINT_TOO_LONG,
                            4L)),
                    new ClosedFormPoint(0.1, -10, 1e-17))),
            "");
    private static final MapPoint BARE = new MapPoint(
            0,
            2,
            Optional.of(new MapPoint.Measured(
                    20,
                    new Estimate(1, 1, OptionalDouble.empty(), Optional.empty()),
                    CauseCounts.none(),
                    new ClosedFormPoint(1, 1, 1))),
            "");
    private static final MapPoint REFUSED =
            new MapPoint(7, 0, Optional.empty(), "process.speed = 99 m/min; must be at most 90 m/min — \n\"no\"");

    @TempDir
    private Path folder;

    private MapProgress open() {
        return MapProgress.beside(folder.resolve("line-map"), "identity");
    }

    private Path file() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findFirst().orElseThrow();
        }
    }

    private void leave(MapPoint... points) {
        try (MapProgress progress = open()) {
            List.of(points).forEach(progress::add);
        }
    }

    @Test
    void everyPointIsTakenUpExactlyAsItWas() {
        leave(ONE, BARE, REFUSED);

        try (MapProgress progress = open()) {
            assertThat(progress.known(3, 14)).contains(ONE);
            assertThat(progress.known(0, 2)).contains(BARE);
            assertThat(progress.known(7, 0)).contains(REFUSED);
            assertThat(progress.known(14, 3)).isEmpty();
            assertThat(progress.word()).contains("going on with 3 points that were done before");
        }
    }

    @Test
    void aLineThatWasCutShortIsDroppedAndTheNextStandsOnItsOwn() throws IOException {
        leave(ONE, BARE);
        String text = Files.readString(file());
        Files.writeString(file(), text.substring(0, text.length() - 5));

        leave(REFUSED);

        try (MapProgress progress = open()) {
            assertThat(progress.known(3, 14)).contains(ONE);
            assertThat(progress.known(0, 2)).isEmpty();
            assertThat(progress.known(7, 0)).contains(REFUSED);
            assertThat(progress.word()).contains("going on with 2 points that were done before");
        }
    }

    @Test
    void aDamagedLineIsSaidOfAndRunAgain() throws IOException {
        leave(ONE, BARE);
        Files.writeString(file(), Files.readString(file()).replace("2000", "3000"));

        try (MapProgress progress = open()) {
            assertThat(progress.known(3, 14)).isEmpty();
            assertThat(progress.known(0, 2)).contains(BARE);
            assertThat(progress.word())
                    .contains("going on with 1 points that were done before; 1 line was damaged and will be run again");
        }
    }

    @Test
    void anotherMapsPointsAreNeverTakenUp() throws IOException {
        leave(ONE);

        try (MapProgress other = MapProgress.beside(folder.resolve("line-map"), "another identity")) {
            assertThat(other.known(3, 14)).isEmpty();
            assertThat(other.word()).isEmpty();
            other.delete();
        }
        Files.writeString(file(), "something else\n");
        assertThatThrownBy(this::open)
                .isInstanceOf(ReportFolderException.class)
                .hasMessageContaining("its first line is another's or damaged. Remove the file");
        assertThat(Files.readString(file())).isEqualTo("something else\n");
    }

    @Test
    void twoRunsOfTheSameMapDoNotWriteIntoOneFile() {
        try (MapProgress first = open()) {
            assertThatThrownBy(this::open)
                    .isInstanceOf(ReportFolderException.class)
                    .hasMessageContaining("is in use");
            first.add(ONE);
        }
    }

    @Test
    void nothingIsLeftOfAMapThatIsDone() throws IOException {
        MapProgress progress = open();
        progress.add(ONE);
        progress.delete();

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void bytesThatAreNoTextAreDamageToo() throws IOException {
        leave(ONE);
        Files.write(file(), new byte[] {(byte) 0xFF, 0, ' ', '\n'}, StandardOpenOption.APPEND);

        try (MapProgress progress = open()) {
            assertThat(progress.known(3, 14)).contains(ONE);
            assertThat(progress.word().orElseThrow()).contains("1 line was damaged");
        }
    }
}
