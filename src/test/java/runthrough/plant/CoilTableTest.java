package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CoilTableTest {
    private final SplittableRandom random = new SplittableRandom(11);

    private Coil any(int index) {
        double number = 1 + random.nextInt(5);
        CoilSize size = switch (random.nextInt(4)) {
            case 0 -> new CoilSize.ByLength(Distribution.constant(500 * number));
            case 1 -> new CoilSize.ByMass(Distribution.constant(1000 * number));
            case 2 -> new CoilSize.ByDiameters(1 + number / 10, 0.508, 0.98);
            default -> new CoilSize.ByMass(Distribution.normal(5000, 10 * number));
        };
        return new Coil(
                random.nextBoolean() ? CoilTable.nameByPlace(index) : "Ä" + random.nextInt(),
                new Coil.Strip(0.001 * number, 0.1 * random.nextInt(1, 4), 7850),
                size,
                new Coil.Crops(random.nextInt(3), index < 5000 ? 0 : 0.3),
                random.nextBoolean() ? OptionalDouble.of(number) : OptionalDouble.empty(),
                random.nextInt(3) == 0 ? "" : "tube " + random.nextInt(20),
                Optional.empty());
    }

    @Test
    void everyCoilComesOutAsItWentIn() {
        List<Coil> given = new ArrayList<>();
        CoilTable.Builder builder = new CoilTable.Builder();
        for (int i = 0; i < 15_000; i++) {
            given.add(any(i));
            builder.add(given.get(i));
        }

        List<Coil> table = builder.build();

        assertThat(table).isInstanceOf(CoilTable.class);
        assertThat(table.equals(given)).isTrue();
        assertThat(new CoilSource.Schedule(table).sizesVary()).isTrue();
        List<Coil> twice = new CoilSource.Schedule(table)
                .withEach(coil -> coil.withLengthTimes(2))
                .coils();
        for (int i = 0; i < given.size(); i++) {
            assertThat(twice.get(i).length(0.3))
                    .isEqualTo(given.get(i).withLengthTimes(2).length(0.3));
            assertThat(twice.get(i).name()).isEqualTo(given.get(i).name());
        }
        assertThatThrownBy(() -> table.get(15_000)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> table.get(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void aLongScheduleOfCoilsThatAreAllAlikeIsKnownNotToVary() {
        Coil coil = new Coil("a", new Coil.Strip(0.002, 0.24, 7850), new CoilSize.ByMass(Distribution.constant(5000)));
        CoilTable.Builder builder = new CoilTable.Builder();
        for (int i = 0; i < 20_000; i++) {
            builder.add(coil);
        }

        CoilSource.Schedule schedule = new CoilSource.Schedule(builder.build());

        assertThat(schedule.coils()).isInstanceOf(CoilTable.class);
        assertThat(schedule.sizesVary()).isFalse();
        assertThat(schedule.isRandom()).isFalse();
        assertThat(schedule.coils().get(19_999)).isEqualTo(coil);
    }
}
