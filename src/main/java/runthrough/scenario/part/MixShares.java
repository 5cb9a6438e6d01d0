package runthrough.scenario.part;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import runthrough.quantity.Dimension;
import runthrough.quantity.Quantity;
import runthrough.quantity.QuantityParser;
import runthrough.scenario.source.Raw;

/** The shares of a mix in percent, some of which are set: the others keep their proportions and make room for them. */
public final class MixShares {
    /** The key of a share. */
    public static final String WEIGHT = "weight";

    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    /** After the point of a percentage that was worked out: as few as leave each of them more than nothing. */
    private static final List<Integer> PLACES = List.of(4, 8, 12);

    private MixShares() {}

    /** The share that {@code value}, which was set at {@code path}, is or gives a coil. */
    public static Optional<Raw> in(String path, Raw value) {
        return value instanceof Raw.Mapping coil
                ? coil.find(WEIGHT)
                : Optional.of(value).filter(any -> path.strip().endsWith("." + WEIGHT));
    }

    /**
     * {@code mix} with shares that add up to 100 %; unchanged where they do, where they are not all in percent, or where nothing is left
     * for those that make room.
     *
     * @param set the shares that are set, those that were set at once together, the last ones last: where there is no room beside all of
     *     them, those that were set first make room, too
     */
    public static Raw.Sequence withRoom(Raw.Sequence mix, List<Set<Raw>> set) {
        List<Raw.Mapping> coils = mix.items().stream()
                .filter(Raw.Mapping.class::isInstance)
                .map(Raw.Mapping.class::cast)
                .toList();
        List<BigDecimal> shares =
                coils.stream().flatMap(coil -> share(coil).stream()).toList();
        if (shares.size() < mix.items().size() || sum(shares).compareTo(ALL) == 0) {
            return mix;
        }
        return IntStream.range(0, set.size())
                .mapToObj(first -> set.subList(first, set.size()).stream()
                        .flatMap(Set::stream)
                        .collect(Collectors.toSet()))
                .map(kept -> withRoom(mix, coils, shares, kept))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(mix);
    }

    /** The same where those of {@code kept} stay; empty where there is no room beside them. */
    private static Optional<Raw.Sequence> withRoom(
            Raw.Sequence mix, List<Raw.Mapping> coils, List<BigDecimal> shares, Set<Raw> kept) {
        List<Integer> others = IntStream.range(0, coils.size())
                .filter(i -> coils.get(i).find(WEIGHT).filter(kept::contains).isEmpty())
                .boxed()
                .toList();
        if (others.isEmpty() || others.size() == coils.size()) {
            return Optional.empty();
        }
        List<BigDecimal> before = others.stream().map(shares::get).toList();
        List<BigDecimal> after = filled(ALL.subtract(sum(shares)).add(sum(before)), before);
        if (after.isEmpty()) {
            return Optional.empty();
        }
        Raw.Sequence changed = mix;
        for (int i = 0; i < after.size(); i++) {
            changed = changed.with(others.get(i), with(coils.get(others.get(i)), after.get(i)));
        }
        return Optional.of(changed);
    }

    /** In percent; empty where the weight of {@code coil} is no share, or none that a coil can have. */
    private static Optional<BigDecimal> share(Raw.Mapping coil) {
        return coil.find(WEIGHT)
                .filter(Raw.Scalar.class::isInstance)
                .map(raw -> QuantityParser.read(((Raw.Scalar) raw).text(), Dimension.SHARE))
                .filter(Quantity.class::isInstance)
                .map(read -> BigDecimal.valueOf(((Quantity) read).value()))
                .filter(share -> share.signum() > 0);
    }

    private static BigDecimal sum(List<BigDecimal> shares) {
        return shares.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** {@code shares} made as large as {@code rest} (%) together; none where that is too little. */
    private static List<BigDecimal> filled(BigDecimal rest, List<BigDecimal> shares) {
        return PLACES.stream()
                .map(places -> filled(rest, shares, places))
                .filter(filled -> filled.stream().allMatch(own -> own.signum() > 0))
                .findFirst()
                .orElse(List.of());
    }

    /** To the last digit: the last of them takes what rounding left. */
    private static List<BigDecimal> filled(BigDecimal rest, List<BigDecimal> shares, int places) {
        BigDecimal sum = sum(shares);
        List<BigDecimal> filled = new ArrayList<>();
        BigDecimal left = rest;
        for (BigDecimal share : shares.subList(0, shares.size() - 1)) {
            BigDecimal own =
                    rest.multiply(share).divide(sum, MathContext.DECIMAL64).setScale(places, RoundingMode.HALF_EVEN);
            left = left.subtract(own);
            filled.add(own);
        }
        filled.add(left);
        return filled;
    }

    private static Raw.Mapping with(Raw.Mapping coil, BigDecimal share) {
        String text = share.stripTrailingZeros().toPlainString() + " %";
        return coil.with(
                WEIGHT, new Raw.Scalar(text, coil.find(WEIGHT).map(Raw::place).orElseGet(coil::place)));
    }
}
