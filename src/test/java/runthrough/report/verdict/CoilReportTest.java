package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.report.write.HtmlWriter;
import runthrough.report.write.JsonWriter;
import runthrough.report.write.TerminalWriter;

/** A schedule of two products, one of which runs too fast for the accumulator. */
class CoilReportTest {
    @TempDir
    private Path folder;

    private static Coil coil(String name, double speed, String product) {
        Coil coil = Invented.coil(name);
        return new Coil(name, coil.strip(), coil.size())
                .withCrops(coil.headCrop(), coil.tailCrop())
                .withProcessSpeed(speed)
                .withProduct(product);
    }

    private static RunThroughResult result() {
        Line line = Invented.line(Distribution.lognormal(25, 6))
                .with(new CoilSource.Schedule(
                        List.of(coil("C1", 0.6, "tube 60"), coil("C2", 1.0, "=fast"), coil("C3", 0.6, "tube 60"))));
        return Invented.result(line);
    }

    @Test
    void theTerminalNamesTheWorstCoilAndWhy() {
        assertThat(TerminalWriter.render(VerdictAnswer.inWords(result()), false).replaceAll("\\s+", " "))
                .contains("Worst coil: C2: ran through in ")
                .contains("The accumulator did not last: at 60 m/min it bears a joint of ");
    }

    @Test
    void thePageHasAChartAndTablesOfProductsAndCoils() {
        String page = HtmlWriter.render(VerdictAnswer.of(result()));

        assertThat(page)
                .contains("Coil changes that did not run through, by product")
                .contains("Coil changes by product, each counting by the coil that ends")
                .contains("The coils that are hardest on the line")
                .contains("Most failures come with =fast: ");
    }

    @Test
    void theDocumentForMachinesSaysProductsAndCoils() throws IOException {
        JsonNode coils = JsonMapper.builder()
                .build()
                .readTree(JsonWriter.render(VerdictAnswer.inWords(result())))
                .get("coils");

        assertThat(coils.get("kinds").asInt()).isEqualTo(3);
        assertThat(coils.get("products")).hasSize(2);
        assertThat(coils.at("/products/0/name").asText()).isEqualTo("=fast");
        assertThat(coils.at("/products/0/outcome/coil_changes/total").asInt()
                        + coils.at("/products/1/outcome/coil_changes/total").asInt())
                .isEqualTo(200);
        assertThat(coils.at("/hardest/0/kind").asInt()).isEqualTo(1);
    }

    @Test
    void filesOfProductsAndCoilsAddUp_andCellsAreNoFormulas() throws IOException {
        RunThroughResult result = result();
        CoilFiles.write(result, name -> Files.newOutputStream(folder.resolve(name)));

        List<String> products = Files.readAllLines(folder.resolve(CoilFiles.PRODUCTS));
        List<String> coils = Files.readAllLines(folder.resolve(CoilFiles.COILS));
        assertThat(products).hasSize(3).anyMatch(row -> row.startsWith("'=fast,,,1,"));
        assertThat(coils).hasSize(4);
        assertThat(coils.get(2)).startsWith("2,C2,'=fast,2,240,");
        assertThat(coils.get(1).split(",")).hasSize(coils.get(0).split(",").length);
    }

    @Test
    void whereAllCoilsAreOfOneKindNothingIsSaidOfThem() {
        RunThroughResult result = Invented.result(Invented.line(Distribution.constant(25)));

        assertThat(CoilTexts.of(result)).isEmpty();
        assertThat(JsonWriter.render(VerdictAnswer.inWords(result))).contains("\"coils\" : null");
        assertThat(HtmlWriter.render(VerdictAnswer.of(result))).doesNotContain("by product");
    }
}
