package runthrough.scenario.coil;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import runthrough.scenario.source.Raw;

/** A coil with what it does not say itself taken from the defaults. */
final class CoilOverlay {

    private static final Set<String> BY_LENGTH_OR_MASS = Set.of(CoilKeys.LENGTH.name(), CoilKeys.MASS.name());

    private CoilOverlay() {}

    /**
     * {@code coil} over {@code defaults}. Its own size wins over a default that gives the size in another way. An inner diameter
     * goes with every way, and overrules only where it completes an outer one. A winding factor of the defaults is for the coils
     * that have an inner diameter.
     */
    static Raw.Mapping over(List<Raw.Entry> defaults, Raw.Mapping coil) {
        Set<String> own = keys(coil.entries());
        Set<String> shared = keys(defaults);
        boolean ownLength = own.stream().anyMatch(BY_LENGTH_OR_MASS::contains);
        boolean ownDiameters = own.contains(CoilKeys.OUTER.name())
                || (own.contains(CoilKeys.INNER.name()) && shared.contains(CoilKeys.OUTER.name()));
        boolean hasInner = own.contains(CoilKeys.INNER.name()) || shared.contains(CoilKeys.INNER.name());
        Set<String> overruled = new HashSet<>(own);
        if (ownLength || ownDiameters) {
            overruled.addAll(BY_LENGTH_OR_MASS);
        }
        if (ownLength) {
            overruled.add(CoilKeys.OUTER.name());
        }
        if (!hasInner) {
            overruled.add(CoilKeys.WINDING_FACTOR.name());
        }
        List<Raw.Entry> entries = new ArrayList<>(coil.entries());
        defaults.stream().filter(entry -> !overruled.contains(entry.key())).forEach(entries::add);
        return new Raw.Mapping(entries, coil.place());
    }

    private static Set<String> keys(List<Raw.Entry> entries) {
        return entries.stream().map(Raw.Entry::key).collect(Collectors.toSet());
    }
}
