package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import runthrough.plant.Entry.Creep;

/** What must hold of the closed forms whatever the numbers: over 2,000 random lines, each named by its seed. */
class ClosedFormsIdentityTest {

    private static final double TOLERANCE = 1e-9;

    /** One piece of the entry's journey at constant acceleration. */
    private record Piece(double duration, double from, double to) {
        double length() {
            return duration * (from + to) / 2;
        }
    }

    private interface Check {
        void of(RandomForms random, ClosedForms forms, String seed);
    }

    private static void overRandomLines(Check check) {
        LongStream.range(0, 2000).forEach(seed -> {
            RandomForms random = new RandomForms(seed);
            check.of(random, random.forms(), "seed " + seed);
        });
    }

    private static double sum(List<Piece> pieces) {
        return pieces.stream().mapToDouble(Piece::length).sum();
    }

    private static double duration(List<Piece> pieces) {
        return pieces.stream().mapToDouble(Piece::duration).sum();
    }

    /** From V to rest, creeping where it creeps. */
    private static List<Piece> runOut(StopAndGo strip) {
        List<Piece> pieces = new ArrayList<>();
        double v = strip.speed();
        double d = strip.deceleration();
        if (strip.creep().isPresent()) {
            Creep creep = strip.creep().orElseThrow();
            pieces.add(new Piece((v - creep.speed()) / d, v, creep.speed()));
            Piece stop = new Piece(creep.speed() / d, creep.speed(), 0);
            pieces.add(new Piece((creep.length() - stop.length()) / creep.speed(), creep.speed(), creep.speed()));
            pieces.add(stop);
        } else {
            pieces.add(new Piece(v / d, v, 0));
        }
        return pieces;
    }

    @Test
    void stripDrawn_isWhatTheProcessUsesLessWhatTheEntryBrings() {
        // Rules FORM-1, FORM-8.
        overRandomLines((random, forms, seed) -> {
            double joint = random.between(0, 600);
            List<Piece> entry = runOut(forms.entry());
            entry.add(new Piece(joint, 0, 0));
            entry.add(new Piece(
                    forms.entry().speed() / forms.entry().acceleration(),
                    0,
                    forms.entry().speed()));
            double drawn = duration(entry) * forms.entry().speed() - sum(entry);
            assertThat(forms.stripDrawn(joint)).as(seed).isCloseTo(drawn, within(TOLERANCE * drawn));
            assertThat(forms.entry().runOutLength())
                    .as(seed)
                    .isCloseTo(
                            sum(runOut(forms.entry())),
                            within(TOLERANCE * (1 + forms.entry().runOutLength())));
        });
    }

    @Test
    void longestJoint_needsJustTheCapacity() {
        // Rule FORM-3.
        overRandomLines((random, forms, seed) -> assertThat(forms.capacityNeeded(forms.longestJoint()))
                .as(seed)
                .isCloseTo(forms.capacity(), within(TOLERANCE * forms.capacity())));
    }

    @Test
    void fastestSpeed_needsJustTheCapacity() {
        // Rule FORM-4.
        overRandomLines((random, forms, seed) -> {
            double joint = random.between(1, 600);
            double fastest = forms.fastestSpeed(joint);
            boolean isAboveCreep =
                    forms.entry().creep().map(c -> c.speed() < fastest).orElse(true);
            if (isAboveCreep) {
                assertThat(at(forms, fastest).capacityNeeded(joint))
                        .as(seed)
                        .isCloseTo(forms.capacity(), within(TOLERANCE * forms.capacity()));
            }
        });
    }

    private static ClosedForms at(ClosedForms forms, double speed) {
        StopAndGo entry = forms.entry();
        return new ClosedForms(
                new StopAndGo(speed, entry.acceleration(), entry.deceleration(), entry.creep()),
                forms.topSpeed(),
                forms.capacity(),
                forms.reserve(),
                forms.fillRateLimit(),
                forms.processDeceleration(),
                forms.usable());
    }

    @Test
    void refill_integratesToTheStripDrawn() {
        // Rule FORM-5.
        overRandomLines((random, forms, seed) -> {
            double joint = random.between(0, 600);
            double v = forms.entry().speed();
            Refill refill = forms.refill(joint).orElseThrow();
            Piece up = new Piece(refill.overspeed() / forms.entry().acceleration(), v, v + refill.overspeed());
            Piece down = new Piece(refill.overspeed() / forms.entry().deceleration(), v + refill.overspeed(), v);
            double held = refill.time() - up.duration() - down.duration();
            Piece hold = new Piece(held, v + refill.overspeed(), v + refill.overspeed());
            List<Piece> entry = List.of(up, hold, down);
            double drawn = forms.stripDrawn(joint);
            assertThat(held).as(seed).isGreaterThanOrEqualTo(-1e-9 * refill.time());
            assertThat(sum(entry) - v * duration(entry))
                    .as(seed)
                    .isCloseTo(drawn, within(TOLERANCE * (drawn + v * refill.time())));
            Piece start = new Piece(v / forms.entry().acceleration(), 0, v);
            assertThat(refill.entryStrip())
                    .as(seed)
                    .isCloseTo(start.length() + sum(entry), within(TOLERANCE * refill.entryStrip()));
            assertThat(refill.timeFromRelease())
                    .as(seed)
                    .isCloseTo(start.duration() + duration(entry), within(TOLERANCE * refill.timeFromRelease()));
            assertThat(refill.overspeed())
                    .as(seed)
                    .isLessThanOrEqualTo(Math.min(forms.topSpeed() - v, forms.fillRateLimit()));
        });
    }

    @Test
    void refillAtTheLongestRefilledJoint_usesJustTheCoil() {
        // Rule FORM-6.
        overRandomLines((random, forms, seed) -> {
            double joint = forms.longestRefilledJoint().orElseThrow();
            if (forms.stripDrawn(joint) > 0) {
                assertThat(forms.refill(joint).orElseThrow().entryStrip())
                        .as(seed)
                        .isCloseTo(forms.stripBeforeChange(), within(TOLERANCE * forms.usable()));
            }
        });
    }

    @Test
    void timeOfTheLastMetres_integratesToThem() {
        overRandomLines((random, forms, seed) -> {
            StopAndGo strip = forms.entry();
            double length = random.between(0, 3) * (strip.runOutLength() + 0.1);
            double left = strip.timeOfLast(length);
            // Walks back from rest.
            List<Piece> pieces = runOut(strip);
            double metres = 0;
            for (int i = pieces.size() - 1; i >= 0 && left > 0; i--) {
                Piece piece = pieces.get(i);
                double share = piece.duration() == 0 ? 0 : Math.min(1, left / piece.duration());
                double speedThere = piece.to() + share * (piece.from() - piece.to());
                metres += new Piece(share * piece.duration(), speedThere, piece.to()).length();
                left -= share * piece.duration();
            }
            metres += left * strip.speed();
            assertThat(metres).as(seed).isCloseTo(length, within(TOLERANCE * (1 + length)));
        });
    }
}
