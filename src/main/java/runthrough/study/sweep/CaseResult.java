package runthrough.study.sweep;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import runthrough.study.Verdict;
import runthrough.study.uncertainty.Uncertainty;

/**
 * What a case gave.
 *
 * @param number of the case, from 1
 * @param values that it set, by path
 * @param verdict on it; empty where it could not be run
 * @param known how well that is known; empty where it was not asked for, or could not be run
 * @param failure why it could not be run; empty where it was
 */
public record CaseResult(
        int number,
        Map<String, String> values,
        Optional<Verdict> verdict,
        Optional<Uncertainty> known,
        String failure) {

    public CaseResult {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
}
