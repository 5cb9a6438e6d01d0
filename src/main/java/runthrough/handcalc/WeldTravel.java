package runthrough.handcalc;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.WorkTime;

/**
 * How long a tool travels across strip of one thickness and width, joined to its like: width over travel speed.
 *
 * @param element whose tool travels
 * @param thickness of the strip (m)
 * @param width of the strip (m)
 * @param speed of the tool (m/s)
 * @param time for the way across (s), without what the element takes beside it
 */
public record WeldTravel(String element, double thickness, double width, double speed, double time) {

    /** One for each element that travels and each thickness and width, in the order of the line. */
    public static List<WeldTravel> of(Line line) {
        List<WeldTravel> travels = new ArrayList<>();
        Stream.of(line.work().tail(), line.work().join())
                .flatMap(List::stream)
                .forEach(element -> travels.addAll(of(element, line.coils())));
        return List.copyOf(travels);
    }

    private static Set<WeldTravel> of(WorkElement element, List<Coil> coils) {
        Set<WeldTravel> each = new LinkedHashSet<>();
        if (element.time() instanceof WorkTime.Travel travel) {
            coils.forEach(coil -> each.add(new WeldTravel(
                    element.name(),
                    coil.thickness(),
                    coil.width(),
                    travel.speed().at(coil.thickness()),
                    coil.width() / travel.speed().at(coil.thickness()))));
        }
        return each;
    }
}
