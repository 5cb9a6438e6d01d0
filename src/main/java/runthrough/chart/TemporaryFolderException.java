package runthrough.chart;

/** The folder for temporary files cannot be written to; the message says which it is, and how another one is given. */
public final class TemporaryFolderException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public TemporaryFolderException(Throwable cause) {
        super(
                "the folder for temporary files, " + System.getProperty("java.io.tmpdir")
                        + ", cannot be written to. Give another one: java -Djava.io.tmpdir=FOLDER -jar runthrough.jar ...",
                cause);
    }
}
