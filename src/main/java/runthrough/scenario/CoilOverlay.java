package runthrough.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import runthrough.scenario.source.Raw;

/** A coil with what it does not say itself taken from the defaults. */
final class CoilOverlay {

    private static final Set<String> BY_LENGTH_OR_MASS = Set.of(CoilKeys.LENGTH.name(), CoilKeys.MASS.name());
    private static final Set<String> BY_DIAMETERS =
            Set.of(CoilKeys.OUTER.name(), CoilKeys.INNER.name(), CoilKeys.WINDING_FACTOR.name());

    private CoilOverlay() {}

    /** {@code coil} over {@code defaults}; its own size wins over a default that gives the size in another way. */
    static Raw.Mapping over(List<Raw.Entry> defaults, Raw.Mapping coil) {
        Set<String> own = coil.entries().stream().map(Raw.Entry::key).collect(Collectors.toSet());
        boolean saysLengthOrMass = own.stream().anyMatch(BY_LENGTH_OR_MASS::contains);
        boolean saysDiameters = own.stream().anyMatch(BY_DIAMETERS::contains);
        List<Raw.Entry> entries = new ArrayList<>(coil.entries());
        for (Raw.Entry entry : defaults) {
            boolean isLengthOrMass = BY_LENGTH_OR_MASS.contains(entry.key());
            boolean isDiameter = BY_DIAMETERS.contains(entry.key());
            boolean isOverruled =
                    (saysLengthOrMass && (isLengthOrMass || isDiameter)) || (saysDiameters && isLengthOrMass);
            if (!own.contains(entry.key()) && !isOverruled) {
                entries.add(entry);
            }
        }
        return new Raw.Mapping(entries, coil.place());
    }
}
