package runthrough.study.sensitivity;

import java.util.List;
import java.util.Optional;
import runthrough.plant.SimulationRequest;
import runthrough.study.Evaluator;
import runthrough.study.Share;
import runthrough.study.StudyListener;

/** Which inputs, and which sources of randomness, move the answer. */
public final class SensitivityStudy {
    /** With fewer samples than these nothing could be said of how well the indices are known. */
    public static final int FEWEST_SAMPLES = 10;

    private final SimulationRequest request;
    private final double target;
    private final SwingStudy swings;
    private final Optional<RandomnessStudy> randomness;

    /**
     * A study of {@code request}, whose line must have passed its check.
     *
     * @param target share of coil changes that should run through, in (0, 1]
     * @param swings the inputs to move
     * @param samples how many replications of each kind for the shares of variance, at least {@value #FEWEST_SAMPLES}; 0
     *     for the usual number
     * @throws runthrough.study.StudyException when that is not so
     */
    public SensitivityStudy(SimulationRequest request, double target, List<Swing> swings, int samples) {
        this.request = request;
        this.target = Share.target(target);
        this.swings = new SwingStudy(request, swings);
        this.randomness = request.line().isDeterministic()
                ? Optional.empty()
                : Optional.of(new RandomnessStudy(request.line(), request.run(), samples));
    }

    /**
     * Runs it.
     *
     * @param threads how many replications run at once, {@code >= 1}; does not change the answer
     * @throws runthrough.study.StudyException when a replication of the line as it is cannot go on
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public Sensitivity run(int threads, StudyListener listener) {
        int samples = randomness.map(RandomnessStudy::samples).orElse(0);
        Count count = new Count(listener, swings.runs() + samples);
        Evaluator evaluator = new Evaluator(threads, listener::cancelled);
        Swings moved = swings.run(target, evaluator, count::step).withoutRepeats();
        return new Sensitivity(
                request,
                target,
                swings.chance(),
                moved,
                randomness.map(study -> study.run(evaluator, count::step)).orElse(List.of()),
                moved.causes(),
                samples,
                randomness.map(RandomnessStudy::changes).orElse(0));
    }

    /** Counts steps for a listener. */
    private static final class Count {
        private final StudyListener listener;
        private final int total;
        private int done;

        Count(StudyListener listener, int total) {
            this.listener = listener;
            this.total = total;
            listener.progress(0, total);
        }

        void step() {
            done++;
            listener.progress(done, total);
        }
    }
}
