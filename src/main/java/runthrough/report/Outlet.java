package runthrough.report;

import java.io.IOException;
import java.io.OutputStream;

/** Where files are written to, by name. */
interface Outlet {

    /** A stream into a new file of this name. */
    OutputStream open(String name) throws IOException;
}
