package runthrough.web;

import java.util.List;
import runthrough.plant.Alternative;
import runthrough.scenario.ScenarioFile;

/**
 * An alternative that the file names, with the changes that make it.
 *
 * @param changes parts of the scenario, as they are sent to be edited
 */
record AlternativeView(String name, List<PageRequest.Part> changes) {

    AlternativeView {
        changes = List.copyOf(changes);
    }

    /** All that {@code file} names, but for the line as written. */
    static List<AlternativeView> all(ScenarioFile file) {
        return file.alternatives().stream()
                .filter(name -> !name.equals(Alternative.AS_WRITTEN))
                .map(name -> new AlternativeView(
                        name,
                        file.alternative(name).orElseThrow().stream()
                                .map(setting -> new PageRequest.Part(
                                        setting.path(), setting.value().text()))
                                .toList()))
                .toList();
    }
}
