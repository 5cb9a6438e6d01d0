package runthrough.scenario;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.plant.Finding;
import runthrough.plant.Supply;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * Finds the line and column that a finding about the line is about: those of its key, or of the nearest part around it that
 * stands in the file.
 */
final class FindingPlaces {

    private static final Pattern COIL = Pattern.compile("coils?(?:\\[(\\d+)])?(.*)");
    private static final Pattern INDEX = Pattern.compile("\\[(\\d+)](.*)");
    /** Findings count items from 0, people from 1. */
    private static final Pattern ANY_INDEX = Pattern.compile("\\[(\\d+)]");

    private final Raw scenario;
    private final Supply supply;
    private final List<Place> coils;

    /**
     * Places in one scenario.
     *
     * @param coils where each kind of coil is described
     */
    FindingPlaces(Raw scenario, Supply supply, List<Place> coils) {
        this.scenario = scenario;
        this.supply = supply;
        this.coils = coils;
    }

    /** Adds {@code finding} to {@code problems} with its place. */
    void tell(Finding finding, Problems problems) {
        Place place = place(finding.path());
        String[] parts = finding.what().split("; ", 2);
        String value = parts.length == 2 ? parts[0] : "";
        String rule = parts[parts.length - 1];
        String path = shown(finding.path());
        if (finding.severity() == Finding.Severity.ERROR) {
            problems.error(place, path, value, rule, finding.remedy());
        } else {
            problems.warning(place, path, value, rule, finding.remedy());
        }
    }

    private Place place(String path) {
        Matcher coil = COIL.matcher(path);
        if (coil.matches()) {
            int index = coil.group(1) == null ? 0 : Integer.parseInt(coil.group(1));
            return index < coils.size() ? coils.get(index) : scenario.place();
        }
        return place(scenario, path);
    }

    private String shown(String path) {
        Matcher coil = COIL.matcher(path);
        if (coil.matches() && supply instanceof Supply.Schedule) {
            return "coil" + coil.group(2);
        }
        String counted =
                ANY_INDEX.matcher(path).replaceAll(found -> "[" + (Integer.parseInt(found.group(1)) + 1) + "]");
        return coil.matches() && supply instanceof Supply.Mix ? counted.replaceFirst("^coils", "coils.mix") : counted;
    }

    private static Place place(Raw raw, String path) {
        if (raw instanceof Raw.Mapping mapping) {
            String rest = path.startsWith(".") ? path.substring(1) : path;
            for (Raw.Entry entry : mapping.entries()) {
                boolean isPrefix = rest.startsWith(entry.key())
                        && (rest.length() == entry.key().length()
                                || ".[".indexOf(rest.charAt(entry.key().length())) >= 0);
                if (isPrefix) {
                    String inner = rest.substring(entry.key().length());
                    return inner.isEmpty() ? entry.value().place() : place(entry.value(), inner);
                }
            }
        }
        Matcher index = INDEX.matcher(path);
        if (raw instanceof Raw.Sequence sequence && index.matches()) {
            int item = Integer.parseInt(index.group(1));
            if (item < sequence.items().size()) {
                return place(sequence.items().get(item), index.group(2));
            }
        }
        return raw.place();
    }
}
