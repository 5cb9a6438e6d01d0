package runthrough.simulation.random;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import runthrough.plant.MeasuredRows;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * Names of the sources of randomness. A source has its random numbers by its name and not by its place, so that an element that is
 * added or taken out leaves the others theirs.
 *
 * <p>Rule RANDOM-3.
 */
public final class SourceNames {
    public static final String COIL_KIND = "coil/kind";
    public static final String COIL_LENGTH = "coil/length";
    public static final String COIL_MASS = "coil/mass";
    public static final String REJECT = "reject";
    public static final String RETHREAD = "rethread";
    public static final String RESTART = "restart";
    public static final String DOWNTIME_RUNNING = "own-stop/running";
    public static final String DOWNTIME_STANDING = "own-stop/standing";
    /** Whether a joint breaks. */
    public static final String BREAK = "break";

    public static final String BREAK_PLACE = "break/place";
    public static final String BREAK_REPAIR = "break/repair";

    private SourceNames() {}

    /** Which of measured rows a pass of a coil change takes. */
    public static String sheet(MeasuredRows rows) {
        return "sheet/" + rows.source();
    }

    /**
     * Of an element of the work.
     *
     * @param element its name; one that comes again in its list has the number of its coming appended
     * @param time how long it takes
     * @param chance whether it is done, where that is random
     */
    public record OfElement(String element, String time, String chance) {}

    /** Of the elements of a list of the work that is done under {@code practice}, in their order. */
    public static List<OfElement> of(Practice practice, WorkList list, List<WorkElement> elements) {
        String listName = list.name().toLowerCase(Locale.ROOT);
        boolean rethreads = practice instanceof Practice.Rethread && list == WorkList.JOIN;
        Map<String, Integer> seen = new HashMap<>();
        List<OfElement> names = new ArrayList<>();
        for (WorkElement element : elements) {
            int coming = seen.merge(element.name(), 1, Integer::sum);
            String name = coming == 1 ? element.name() : element.name() + "#" + coming;
            String source = listName + "/" + name;
            names.add(new OfElement(name, rethreads ? RETHREAD : source + "/time", source + "/chance"));
        }
        return names;
    }

    /** Names of the elements of such a list alone, no two of them the same. */
    public static List<String> elements(Practice practice, WorkList list, List<WorkElement> elements) {
        return of(practice, list, elements).stream().map(OfElement::element).toList();
    }
}
