package runthrough.study.map;

import java.util.OptionalDouble;
import runthrough.study.StudyException;

/**
 * What is to be mapped.
 *
 * @param x from left to right
 * @param y from bottom to top
 * @param ownX the line's own number on the x axis (SI); empty where it has none
 * @param ownY the same on the y axis
 * @param stride how many points further apart the first points are, {@code >= 1}; between them it is refined where the answer
 *     changes. 1 runs every point, and all its replications
 */
public record MapPlan(MapAxis x, MapAxis y, OptionalDouble ownX, OptionalDouble ownY, int stride) {
    public MapPlan {
        if (x.name().equals(y.name())) {
            throw new StudyException(x.name() + " is on both sides of the map; name two different numbers");
        }
        if (stride < 1) {
            throw new StudyException("stride = " + stride + "; must be 1 or more");
        }
    }

    /** How many points there are at the most. */
    public int points() {
        return x.points() * y.points();
    }
}
