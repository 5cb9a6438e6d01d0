package runthrough.plant.builder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Shifts.Break;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.LineCheck;
import runthrough.plant.check.LineRefusedException;
import runthrough.plant.check.Message;

/** Lines drawn at random of which a number is made bad: what is said of the rest holds of the line when the number is mended. */
class RefusedNumbersTest {
    private static final int LINES = 400;
    private static final double BAD = -1;

    /** Between which ends each number is drawn: so that about half of all lines have something wrong between their numbers. */
    private static final double[][] ENDS = {
        {0.001, 0.01}, // 0 thickness
        {0.1, 2}, // 1 width
        {2700, 7900}, // 2 density
        {0.5, 3}, // 3 entry top speed
        {0.05, 1}, // 4 acceleration
        {0.05, 1}, // 5 deceleration
        {1, 4}, // 6 uncoilers
        {0, 60}, // 7 path to the joiner
        {0.1, 1.5}, // 8 creep speed
        {0.1, 5}, // 9 creep length
        {1, 9}, // 10 strands
        {0, 10}, // 11 stroke
        {0.05, 1}, // 12 carriage speed
        {0.05, 1}, // 13 carriage speed when emptying
        {0, 30}, // 14 reserve
        {0.3, 2.5}, // 15 process speed
        {0.05, 1}, // 16 acceleration
        {0.02, 1}, // 17 deceleration
        {0, 60}, // 18 restart level
        {0.2, 2.5}, // 19 slowed speed
        {0, 40}, // 20 slowing level
        {0, 60}, // 21 resume level
        {0.2, 2.5}, // 22 joint passage speed
        {0, 30}, // 23 strip before the joint
        {0, 30}, // 24 strip behind it
        {0, 0.5}, // 25 chance of a break
        {1, 50}, // 26 length of the process section
        {0, 5}, // 27 scrap of a break
        {1, 4}, // 28 crew of the first shift
        {10_000, 30_000}, // 29 its hours (s)
        {0, 0.5}, // 30 chance of a reject
    };

    private static double[] drawn(SplittableRandom random) {
        double[] numbers = new double[ENDS.length];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = random.nextDouble(ENDS[i][0], ENDS[i][1]);
        }
        return numbers;
    }

    private static LineBuilder described(double[] n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Distribution length = Distribution.uniform(random.nextDouble(0, 30), random.nextDouble(30, 600));
        LineBuilder line = new LineBuilder()
                .coil("coil", n[0], n[1], n[2], length)
                .entry(n[3], n[4], n[5])
                .uncoilers((int) n[6])
                .uncoilerPath(n[7])
                .strands((int) n[10], n[11], n[12], n[13])
                .reserve(n[14])
                .process(n[15], n[16], n[17])
                .restart(n[18], Distribution.uniform(5, 20).shifted(-random.nextDouble(0, 10)))
                .jointBreak(n[25], n[26], Distribution.constant(600), n[27])
                .shift("early", n[29], (int) n[28], new Break(5000, 6000, 0), new Break(10_000, 4000, 2))
                .shift("late", 20_000, 2)
                .rejectChance(n[30])
                .prepare(element("load", random))
                .join(element("weld", random));
        if (random.nextBoolean()) {
            line.creep(n[8], n[9]);
        }
        if (random.nextBoolean()) {
            line.slowing(n[19], n[20], n[21]);
        }
        if (random.nextBoolean()) {
            line.jointPassage(n[22], n[23], n[24]);
        }
        int practice = random.nextInt(6);
        return practice == 0
                ? line.withoutAccumulator()
                : practice == 1 ? line.rethread(Distribution.constant(600)) : line;
    }

    private static WorkElement element(String name, SplittableRandom random) {
        WorkTime time = new WorkTime.Timed(Distribution.constant(random.nextInt(3) * 30));
        return new WorkElement(name, time, new Occurrence.Always(), random.nextBoolean())
                .withPeople(random.nextInt(1, 5));
    }

    private static List<Message> refused(LineBuilder line) {
        LineRefusedException refused = catchThrowableOfType(LineRefusedException.class, line::describe);
        assertThat(refused).isNotNull();
        return refused.messages();
    }

    @Test
    void nothingIsSaidThatDoesNotHoldOfTheLineWhenItIsMended() {
        // Rule CHECK-35.
        int said = 0;
        int found = 0;
        for (long seed = 0; seed < LINES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] good = drawn(random);
            double[] bad = good.clone();
            int number = random.nextInt(bad.length);
            bad[number] = BAD;
            LineBuilder refusing = described(bad, seed);
            if (isTaken(refusing)) {
                continue;
            }
            List<Message> messages = new ArrayList<>(refused(refusing));
            Message ofTheNumber = messages.remove(0);
            assertThat(ofTheNumber.what()).startsWith("-1");

            List<Message> whenMended = LineCheck.check(described(good, seed).describe());
            assertThat(whenMended)
                    .as("line %d, number %d: %s", seed, number, ofTheNumber.text())
                    .containsAll(messages);
            // However it is mended.
            bad[number] = random.nextDouble(ENDS[number][0], ENDS[number][1]);
            assertThat(LineCheck.check(described(bad, seed).describe())).containsAll(messages);
            said += messages.size();
            found += whenMended.size();
        }
        // One number of 31 is bad: most of what is wrong between the others is said.
        assertThat(found).isGreaterThan(LINES);
        assertThat(said).isGreaterThan(found * 3 / 4);
    }

    @Test
    void theSameOfTwoBadNumbers() {
        // Rule CHECK-35.
        for (long seed = 0; seed < LINES; seed++) {
            SplittableRandom random = new SplittableRandom(-1 - seed);
            double[] good = drawn(random);
            double[] bad = good.clone();
            bad[random.nextInt(bad.length)] = BAD;
            bad[random.nextInt(bad.length)] = BAD;
            LineBuilder refusing = described(bad, seed);
            if (isTaken(refusing)) {
                continue;
            }
            List<Message> messages = new ArrayList<>(refused(refusing));
            messages.removeIf(message -> message.what().startsWith("-1"));
            assertThat(LineCheck.check(described(good, seed).describe()))
                    .as("line %d", seed)
                    .containsAll(messages);
        }
    }

    /** Whether the number that is bad belongs to a part that this line does not have. */
    private static boolean isTaken(LineBuilder line) {
        try {
            line.describe();
            return true;
        } catch (LineRefusedException e) {
            return false;
        }
    }
}
