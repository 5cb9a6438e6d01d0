package runthrough.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runthrough.report.validation.Recorded;
import runthrough.report.validation.Topic;

/** What the tests of one class have checked against outside values. */
public final class CheckBook {
    private final Map<List<Object>, Recorded> records = new LinkedHashMap<>();

    /**
     * Begins a check.
     *
     * @param id short name of the published case, such as K04
     * @param what is checked of it, unique under that id
     */
    public PublishedCheck check(Topic topic, String id, String what) {
        return new PublishedCheck(this, topic, id, what);
    }

    List<Recorded> records() {
        return List.copyOf(records.values());
    }

    void add(Recorded recorded) {
        List<Object> name = List.of(recorded.topic(), recorded.id(), recorded.what());
        if (records.putIfAbsent(name, recorded) != null) {
            throw new IllegalStateException("two checks with the same name: " + name);
        }
    }
}
