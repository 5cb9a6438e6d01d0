package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.scenario.ScenarioGuide;
import runthrough.scenario.ScenarioSchema;

/** The commands that describe: what a scenario may say, and what the commands are. */
class DescribingCommandsTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void open() {
        session = new Session(folder);
    }

    @Test
    void keysListsAllThatAScenarioMaySay() {
        Session.Done done = session.run("keys");

        assertThat(done.code()).isZero();
        assertThat(done.out()).isEqualTo(ScenarioGuide.text());
    }

    @Test
    void keysListsOneSection() {
        Session.Done done = session.run("keys", "accumulator");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .startsWith("accumulator: ")
                .contains("stroke: the carriage travel")
                .doesNotContain("\nprocess");
    }

    @Test
    void mistypedSectionComesWithTheNearestOne() {
        Session.Done done = session.run("keys", "acumulator");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.err())
                .isEqualToIgnoringNewLines("acumulator is not a section of a scenario. Did you mean accumulator?");
        assertThat(session.run("keys", "frobnicate").err())
                .contains("There are: units, random quantity, top level, coil,");
    }

    @Test
    void schemaIsPrintedAsItIsShipped() {
        Session.Done done = session.run("schema");

        assertThat(done.code()).isZero();
        assertThat(done.out()).isEqualTo(ScenarioSchema.text());
    }

    @Test
    void schemaOfTheVerdictSaysWhatEveryMemberIs() {
        Session.Done done = session.run("schema", "verdict");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .startsWith("{")
                .contains("runthrough-verdict/3", "Share of coil changes that the process ran through.");
        assertThat(session.run("schema", "verdcit").err())
                .contains("OF = verdcit; must be one of scenario, verdict, ")
                .contains("Did you mean verdict?");
    }

    @Test
    void completionIsAScriptThatKnowsCommandsOptionsAndWords() {
        Session.Done done = session.run("completion");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .startsWith("#!/usr/bin/env bash")
                .contains(
                        "complete -F _complete_runthrough",
                        "--require-target",
                        "\"metric\" \"us\"",
                        "process.downtime");
        assertThat(done.err()).isEmpty();
    }

    /** groff_man(7): a line that begins with a point is a request; a point of ours is escaped. */
    @Test
    void theManualPageHasASectionForEachCommand() {
        String page = new Session(folder).run("completion", "--man").out();

        assertThat(page)
                .startsWith(".TH RUNTHROUGH 1 ")
                .contains(
                        ".SH NAME\nrunthrough \\- ",
                        ".SH COMMAND RUN\n",
                        ".SH COMMAND MERGE\n",
                        "\\-\\-require\\-target");
        assertThat(page.lines().filter(line -> line.startsWith(".")))
                .allMatch(line -> line.matches("\\.(TH RUNTHROUGH|SH [A-Z]).*|\\.nf|\\.fi"));
    }
}
