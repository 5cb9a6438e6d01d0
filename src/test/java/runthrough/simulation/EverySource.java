package runthrough.simulation;

import java.util.List;
import java.util.Optional;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.MeasuredRows;
import runthrough.plant.ProcessSection.JointBreak;
import runthrough.plant.ProcessSection.JointsInProcess;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;

/** A line in which everything is random that may be. */
public final class EverySource {
    private static final Distribution TIME = Distribution.uniform(10, 20);
    private static final MeasuredRows ROWS = MeasuredRows.of("tuesday.csv", List.of(List.of(5.0), List.of(6.0)));

    private EverySource() {}

    /** Two elements measured by one sheet, three of one name. */
    public static Line line() {
        Line line = new PlainLine()
                .coilSource(new CoilSource.Mix(List.of(
                        new CoilSource.Share(PlainLine.coil(Distribution.uniform(600, 700)), 0.5),
                        new CoilSource.Share(byMass(Distribution.uniform(5000, 6000)), 0.5))))
                .prepare(PlainLine.element(TIME))
                .tail(measured("cut"))
                .tail(measured("place"))
                .join(TIME)
                .join(TIME)
                .join(TIME)
                .join(PlainLine.chance(0.4, 50))
                .reject(new Reject.Chance(0.02))
                .restart(Double.NaN, TIME)
                .downtime(Distribution.exponential(900), TIME)
                .build();
        JointBreak breaks = new JointBreak(0.01, 40, TIME, 30);
        return new Line(
                line.coilSource(),
                line.entry(),
                line.process().withJoints(new JointsInProcess(Optional.empty(), Optional.of(breaks))),
                line.change(),
                line.practice(),
                line.bending());
    }

    /** A coil of a mass (kg). */
    public static Coil byMass(Distribution mass) {
        return new Coil("heavy", new Coil.Strip(0.001, 1, 7850), new CoilSize.ByMass(mass));
    }

    private static WorkElement measured(String name) {
        return new WorkElement(name, new WorkTime.FromRows(ROWS, 0, 1), new Occurrence.Always(), true);
    }
}
