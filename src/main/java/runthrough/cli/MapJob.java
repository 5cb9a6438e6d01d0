package runthrough.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.report.Answer;
import runthrough.report.Provenance;
import runthrough.report.map.MapAnswer;
import runthrough.report.map.MapProgress;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.map.MapPlan;
import runthrough.study.map.MapStore;
import runthrough.study.map.MapStudy;
import runthrough.study.map.ShareMap;

/** A map to be made: points that are done are kept beside the report until it is there. */
final class MapJob implements StudyCommand.Study {
    private final Environment environment;
    private final MapStudy study;
    private final Scenario asked;
    private final double target;
    private final MapPlan plan;
    private Optional<MapProgress> progress = Optional.empty();

    MapJob(Environment environment, MapStudy study, Scenario asked, double target, MapPlan plan) {
        this.environment = environment;
        this.study = study;
        this.asked = asked;
        this.target = target;
        this.plan = plan;
    }

    @Override
    public void reportGoesTo(Path folder) {
        MapProgress opened = MapProgress.beside(folder, identity());
        progress = Optional.of(opened);
        opened.word().ifPresent(environment.err()::println);
    }

    /** All that a point depends on. */
    private String identity() {
        return String.join(
                "\n",
                ProgramVersion.text(),
                asked.fingerprint(),
                asked.settings().toString(),
                asked.request().line().toString(),
                asked.request().run().toString(),
                Double.toString(target),
                plan.toString());
    }

    @Override
    public Answer run(int threads, StudyListener listener, List<String> warnings, Provenance provenance) {
        try {
            ShareMap map = study.run(
                    threads, listener, progress.<MapStore>map(kept -> kept).orElse(MapStore.NONE));
            return MapAnswer.of(map, warnings, provenance);
        } catch (StudyException e) {
            // The same command gives no more the next time.
            progress.ifPresent(MapProgress::delete);
            throw e;
        } finally {
            progress.ifPresent(MapProgress::close);
        }
    }

    @Override
    public Optional<String> kept() {
        return progress.map(any -> "the points that were done are kept; the same command goes on from there");
    }

    @Override
    public void reportIsThere() {
        progress.ifPresent(MapProgress::delete);
    }
}
