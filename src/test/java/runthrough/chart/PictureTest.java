package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.junit.jupiter.api.Test;

class PictureTest {
    private static final int DRAWINGS = 100;

    /** As pages for a screen and pages for paper are made at the same time. */
    @Test
    void aChartIsDrawnTheSameOnSeveralThreadsAtOnce() throws Exception {
        XYSeries level = new XYSeries("level");
        level.add(0, 72);
        level.add(80, 12);
        level.add(160, 72);
        JFreeChart drawn =
                ChartFactory.createXYLineChart("Level", "time, s", "level, m", new XYSeriesCollection(level));
        Chart chart = new Chart("level", "Level", "It falls.", "A line.", new Picture(drawn, 640, 320));
        String alone = chart.svg();

        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Future<String>> beside = threads.invokeAll(Collections.nCopies(DRAWINGS, chart::svg));
        threads.shutdown();

        for (Future<String> one : beside) {
            assertThat(one.get()).isEqualTo(alone);
        }
    }
}
