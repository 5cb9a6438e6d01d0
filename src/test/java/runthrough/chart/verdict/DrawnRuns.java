package runthrough.chart.verdict;

import java.awt.Color;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.UnitSystem;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.StudyResult;

/** Charts of runs, and what can be read of them. */
final class DrawnRuns {

    static final Line LINE = HandMadeRun.line();

    private DrawnRuns() {}

    static ChartContext context() {
        return new ChartContext(new ChartStyle(), LINE, ChartUnits.of(UnitSystem.METRIC), 1);
    }

    static StudyResult study(Line line, UnitSystem system) {
        RunPlan plan = new RunPlan(new RunPlan.Extent.Changes(12), 0, 3, 7, 0.99);
        return new RunThroughStudy(new SimulationRequest("invented", List.of(), line, plan, system))
                .run(StudyOptions.forReport(), StudyListener.NONE);
    }

    static Chart chart(StudyResult result, String id) {
        return Charts.of(result).stream()
                .filter(chart -> chart.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static List<String> texts(Chart chart) throws Exception {
        NodeList nodes = parsed(chart.svg()).getElementsByTagName("text");
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent().strip());
        }
        return texts;
    }

    static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    static String rgb(Color colour) {
        return "rgb(" + colour.getRed() + "," + colour.getGreen() + "," + colour.getBlue() + ")";
    }
}
