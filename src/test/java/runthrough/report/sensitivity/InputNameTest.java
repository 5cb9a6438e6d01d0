package runthrough.report.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputNameTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            entry.uncoilers                                         | number of uncoilers
            accumulator.strands                                     | number of strands
            accumulator.stroke                                      | accumulator stroke
            process.slowing.level                                   | process slowing level
            joint-cycle-time                                        | joint cycle time
            coil-change.crew                                        | crew
            coil-change.shifts.night.crew                           | night crew
            coil-change.reject.chance                               | reject chance
            coil-change.tail.shear tail                             | shear tail (tail)
            coil-change.join.inspect.constant                       | inspect (join)
            coil-change.join.dress the wheel.every                  | dress the wheel (join), every
            coil-change.join.weld.travel[1].speed                   | weld (join), travel[1] speed
            coil-change.join.fit up.lognormal.mean                  | fit up (join), mean
            coil-change.prepare.fetch coil.triangular.most-likely   | fetch coil (prepare), most likely
            process.restart.delay.triangular.least                  | process restart delay, least
            process.downtime.running.exponential                    | process downtime running, mean
            process.downtime.standing.lognormal.sd                  | process downtime standing, standard deviation
            coils.mix.1.5 x 160.thickness                           | coils: 1.5 x 160 thickness
            """)
    void aSentenceNamesAnInputInWords(String path, String words) {
        assertThat(InputName.of(path)).isEqualTo(words);
    }
}
