package runthrough;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs a program with the classes of the tests in a virtual machine of its own. */
public final class OwnProcess {
    private OwnProcess() {}

    /** That of the main method of {@code program}, to be started; an option of Java may be put at place 1 of its command. */
    public static ProcessBuilder of(Class<?> program, List<String> args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                program.getName()));
        command.addAll(args);
        return new ProcessBuilder(command);
    }
}
