package runthrough.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What a quantity measures; only units of the same dimension can be changed into one another. */
public enum Dimension {
    LENGTH("length", "12.5 m", "40 ft"),
    SPEED("speed", "45 m/min", "150 ft/min"),
    ACCELERATION("acceleration", "0.3 m/s2", "1 ft/s2"),
    TIME("time", "90 s", "1.5 min"),
    MASS("mass", "12 t", "26000 lb"),
    DENSITY("density", "7850 kg/m3", "0.284 lb/in3"),
    STRESS("stress", "210 GPa", "50 ksi"),
    FORCE("force", "4 kN", "900 lbf"),
    TORQUE("torque", "3 kN m", "2200 lbf ft"),
    POWER("power", "45 kW", "60 hp"),
    SHARE("share", "2 %", "99.5 %"),
    MASS_RATE("mass per time", "12.5 t/h", "13 short ton/h");

    private final String label;
    private final String example;
    private final String otherExample;

    Dimension(String label, String example, String otherExample) {
        this.label = label;
        this.example = example;
        this.otherExample = otherExample;
    }

    /** What people call it, such as "speed". */
    public String label() {
        return label;
    }

    /** Quantities as a user would write them, metric first. */
    public List<String> examples() {
        return List.of(example, otherExample);
    }

    /** Every unit of this dimension, in the order of the table. */
    public List<Unit> units() {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == this)
                .toList();
    }

    /** The unit in which a value is as it is inside, or the first where there is none: percent for shares. */
    public Unit base() {
        return units().stream().filter(unit -> unit.toSi(1) == 1).findFirst().orElse(units().get(0));
    }

    /** The symbols of all units, for messages: "mm, cm, m, km, in, ft, yd". */
    public String unitList() {
        return units().stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }
}
