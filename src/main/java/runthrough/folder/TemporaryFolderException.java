package runthrough.folder;

/** The folder for temporary files cannot be written to, or has no room; the message says which it is, and how another one is given. */
public final class TemporaryFolderException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public TemporaryFolderException(Throwable cause) {
        super(words(), cause);
    }

    /** Its message. */
    public static String words() {
        return "the folder for temporary files, " + System.getProperty("java.io.tmpdir")
                + ", cannot be written to, or is full. Give another one: java -Djava.io.tmpdir=FOLDER -jar runthrough.jar ...";
    }
}
