package runthrough.study.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import runthrough.study.map.Field.Position;

class FieldTest {

    private static Field field(int columns, int rows, DoubleBinaryOperator number) {
        double[][] values = new double[columns][rows];
        for (int column = 0; column < columns; column++) {
            for (int row = 0; row < rows; row++) {
                values[column][row] = number.applyAsDouble(column, row);
            }
        }
        return new Field(values);
    }

    /** x + y over 4 x 2 squares passes 3 on a straight line from (1, 2) to (3, 0): below it lie 2 x 1 + 2 of 8. */
    @Test
    void contourAndAreaOfAPlane() {
        Field plane = field(5, 3, (x, y) -> x + y);

        assertThat(plane.contour(3)).isNotEmpty().allSatisfy(piece -> {
            assertThat(piece.from().x() + piece.from().y()).isEqualTo(3);
            assertThat(piece.to().x() + piece.to().y()).isEqualTo(3);
        });
        assertThat(plane.shareOfAtLeast(3)).isCloseTo(4 / 8.0, within(1e-12));
        assertThat(plane.shareKnown()).isEqualTo(1);
        assertThat(plane.at(1.25, 0.5)).isCloseTo(1.75, within(1e-12));
    }

    /** A coil that never ends leaves an endless margin: the level is passed where the number ends. */
    @Test
    void anEndlessNumberIsFarFromAnyLevel() {
        Field right = field(3, 2, (x, y) -> x == 2 ? Double.POSITIVE_INFINITY : -1);
        Field left = field(3, 2, (x, y) -> x == 0 ? Double.NEGATIVE_INFINITY : 1);
        Field both = field(2, 2, (x, y) -> x == 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);

        assertThat(right.contour(0))
                .allMatch(piece -> piece.from().x() == 1 && piece.to().x() == 1);
        assertThat(right.shareOfAtLeast(0)).isEqualTo(0.5);
        assertThat(left.contour(0))
                .allMatch(piece -> piece.from().x() == 1 && piece.to().x() == 1);
        assertThat(left.shareOfAtLeast(0)).isEqualTo(0.5);
        assertThat(both.contour(0)).isNotEmpty().allMatch(piece -> piece.from().x() == 0.5);
        assertThat(right.passing(new Position(0, 0), 1, 0, 0)).hasValue(1);
        assertThat(right.at(1.5, 0.5)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void neighbouringSquaresAgreeWhereTheContourPassesBetweenThem() {
        Field curved = field(6, 6, (x, y) -> Math.sin(x) + 0.37 * y * y);

        long ends = curved.contour(1.3).stream()
                .flatMap(piece -> java.util.stream.Stream.of(piece.from(), piece.to()))
                .filter(end -> curved.contour(1.3).stream()
                                .flatMap(piece -> java.util.stream.Stream.of(piece.from(), piece.to()))
                                .filter(end::equals)
                                .count()
                        == 1)
                .filter(end -> end.x() > 0 && end.x() < 5 && end.y() > 0 && end.y() < 5)
                .count();

        assertThat(ends).isZero();
    }

    /** A square that is high at two opposite corners: its part is one piece with two contours beside it. */
    @Test
    void aSaddleIsCutInTheSameWayByContourAndPart() {
        Field saddle = field(2, 2, (x, y) -> x == y ? 1 : 0);

        assertThat(saddle.part(0, 0, 0.5)).hasSize(6);
        assertThat(saddle.shareOfAtLeast(0.5)).isCloseTo(0.75, within(1e-12));
        assertThat(saddle.contour(0.5))
                .hasSize(2)
                .allSatisfy(piece ->
                        assertThat(Math.abs(piece.from().x() - piece.to().x())).isEqualTo(0.5));
        assertThat(saddle.contour(0.5)).allSatisfy(piece -> {
            // Each cuts off a low corner: (1, 0) or (0, 1).
            double across = (piece.from().x() + piece.to().x()) / 2;
            double up = (piece.from().y() + piece.to().y()) / 2;
            assertThat(Math.abs(across - up)).isEqualTo(0.5);
        });
    }

    @Test
    void squaresWithAPointThatIsNotKnownAreLeftOut() {
        Field field = field(4, 2, (x, y) -> x == 3 ? Double.NaN : x);

        assertThat(field.shareKnown()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(field.contour(2.5)).isEmpty();
        assertThat(field.at(2.5, 0.5)).isNaN();
        assertThat(field.at(2, 0.5)).isEqualTo(2);
    }

    @Test
    void theNextPassingIsFoundInEachDirectionAndNoneBeyondTheEdge() {
        Field valley = field(7, 3, (x, y) -> (x - 3) * (x - 3));
        Position middle = new Position(3.2, 1.5);

        assertThat(valley.passing(middle, 1, 0, 4).orElseThrow()).isCloseTo(5, within(1e-12));
        // Straight between 4 at 1 and 9 at 0.
        assertThat(valley.passing(middle, -1, 0, 6.5).orElseThrow()).isCloseTo(0.5, within(1e-12));
        assertThat(valley.passing(middle, 0, 1, 4)).isEmpty();
        assertThat(valley.passing(middle, 1, 0, 10)).isEmpty();
    }
}
