package runthrough.report;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The JSON Schemas of the studies' answers, by the name of the study. */
public final class StudySchemas {
    private static final Map<String, JsonShape<?>> SHAPES = Map.ofEntries(
            Map.entry("compare", ComparisonDocument.SHAPE),
            Map.entry("limits", LimitsDocument.SHAPE),
            Map.entry("log", LogDocument.SHAPE),
            Map.entry("map", MapDocument.SHAPE),
            Map.entry("sensitivity", SensitivityDocument.SHAPE),
            Map.entry("size", SizingDocument.SHAPE),
            Map.entry("speeds", SpeedDocument.SHAPE),
            Map.entry("uncertainty", UncertaintyDocument.SHAPE));

    private StudySchemas() {}

    /** The studies that there are, in alphabetical order. */
    public static Set<String> studies() {
        return new TreeMap<>(SHAPES).keySet();
    }

    /** The schema of what {@code study} gives as JSON, if there is such a study. */
    public static Optional<String> of(String study) {
        return Optional.ofNullable(SHAPES.get(study)).map(shape -> StudyJson.schema(study, shape));
    }
}
