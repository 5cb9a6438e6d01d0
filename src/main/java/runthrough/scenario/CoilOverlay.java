package runthrough.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import runthrough.scenario.source.Raw;

/** A coil with what it does not say itself taken from the defaults. */
final class CoilOverlay {

    private static final Set<String> BY_LENGTH_OR_MASS = Set.of(CoilKeys.LENGTH.name(), CoilKeys.MASS.name());
    /** Without the inner diameter, which may stand beside a length or mass. */
    private static final Set<String> BY_DIAMETERS = Set.of(CoilKeys.OUTER.name(), CoilKeys.WINDING_FACTOR.name());

    private CoilOverlay() {}

    /**
     * {@code coil} over {@code defaults}. Its own size wins over a default that gives the size in another way; among the
     * defaults a length or mass wins over diameters of which the outer one is not there. An inner diameter goes with every
     * way, and overrules only where it completes an outer one.
     */
    static Raw.Mapping over(List<Raw.Entry> defaults, Raw.Mapping coil) {
        Set<String> own = keys(coil.entries());
        Set<String> shared = keys(defaults);
        boolean ownLength = own.stream().anyMatch(BY_LENGTH_OR_MASS::contains);
        boolean ownDiameters = own.stream().anyMatch(BY_DIAMETERS::contains)
                || (own.contains(CoilKeys.INNER.name()) && shared.contains(CoilKeys.OUTER.name()));
        boolean sharedLength =
                shared.stream().anyMatch(BY_LENGTH_OR_MASS::contains) && !shared.contains(CoilKeys.OUTER.name());
        List<Raw.Entry> entries = new ArrayList<>(coil.entries());
        for (Raw.Entry entry : defaults) {
            boolean isOverruled = BY_LENGTH_OR_MASS.contains(entry.key())
                    ? ownLength || ownDiameters
                    : BY_DIAMETERS.contains(entry.key()) && (ownLength || (sharedLength && !ownDiameters));
            if (!own.contains(entry.key()) && !isOverruled) {
                entries.add(entry);
            }
        }
        return new Raw.Mapping(entries, coil.place());
    }

    private static Set<String> keys(List<Raw.Entry> entries) {
        return entries.stream().map(Raw.Entry::key).collect(Collectors.toSet());
    }
}
