package runthrough.chart;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * The colours and line styles of all charts. Colours of lines are from the set of Okabe and Ito (Color Universal Design,
 * 2008), which readers with colour-blindness can tell apart. What matters is never shown by colour alone: each line has a
 * dash pattern of its own and each kind of mark a shape of its own, so that a grey print reads as well. All are opaque; the
 * light ones are mixed with white beforehand.
 */
public final class Palette {
    /** The level: blue. */
    public static final Color LEVEL = new Color(0x0072B2);
    /** The process: black. */
    public static final Color PROCESS = new Color(0x111111);
    /** The entry: bluish green. */
    public static final Color ENTRY = new Color(0x009E73);
    /** Limits that must not be passed, and what passed them: vermilion. */
    public static final Color LIMIT = new Color(0xC24E00);
    /** Bars and marks of what had strip enough: light blue, light in a grey print. */
    public static final Color ENOUGH = new Color(0xA9D3EE);
    /** Bars and marks of what slowed: orange, a middle grey in print. */
    public static final Color SLOWED = new Color(0xD98E00);
    /** Bars and marks of what ran short: dark vermilion, dark in print. */
    public static final Color SHORT = new Color(0xA63F00);
    /** Edge of all bars and marks. */
    public static final Color EDGE = new Color(0x004B76);
    /** Second thoughts, such as the level at which the process slows: reddish purple. */
    public static final Color SECONDARY = new Color(0xA8528A);

    /** Work on the next coil: light blue. */
    public static final Color PREPARE = new Color(0x9CCBEA);
    /** Work on the tail: orange. */
    public static final Color TAIL = new Color(0xE69F00);
    /** Work on the joint: dark blue. */
    public static final Color JOIN = new Color(0x00507D);
    /** Work that counts by another coil change. */
    public static final Color OTHER = new Color(0xDDDDDD);

    /** Time of a coil change. */
    public static final Color CHANGE = new Color(0xEBEBEB);
    /** Where the process must stop: vermilion, mostly white. */
    public static final Color RUN_OUT = new Color(0xFBE9DF);

    public static final Color TEXT = new Color(0x222222);
    public static final Color FAINT = new Color(0x5F6670);
    public static final Color GRID = new Color(0xDADDE1);

    public static final BasicStroke HAIR = solid(0.6f);
    public static final BasicStroke BOLD = solid(2.2f);
    public static final BasicStroke SOLID = solid(1.8f);
    public static final BasicStroke THIN = solid(1f);
    public static final BasicStroke LONG_DASHES = dashed(1.6f, 9, 4);
    public static final BasicStroke DASHES = dashed(1.8f, 5, 3);
    public static final BasicStroke DOTS = dashed(1.4f, 1.5f, 3.5f);
    public static final BasicStroke DASH_DOT = dashed(1.4f, 8, 3, 2, 3);

    private Palette() {}

    private static BasicStroke solid(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed(float width, float... pattern) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
    }
}
