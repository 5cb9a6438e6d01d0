package runthrough.report.write;

import java.io.IOException;
import java.io.OutputStream;

/** Where files are written to, by name. */
@FunctionalInterface
public interface Outlet {
    /** A stream into a new file of this name. */
    OutputStream stream(String name) throws IOException;
}
