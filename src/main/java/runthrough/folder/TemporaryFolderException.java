package runthrough.folder;

import java.nio.file.InvalidPathException;

/** The folder for temporary files cannot be written to, or has no room, or no name; the message says which it is, and how another one is given. */
public final class TemporaryFolderException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public TemporaryFolderException(Throwable cause) {
        super(
                cause instanceof InvalidPathException
                        ? words("has a name that the present locale cannot write")
                        : words(),
                cause);
    }

    /** Its message. */
    public static String words() {
        return words("cannot be written to, or is full");
    }

    private static String words(String why) {
        return "the folder for temporary files, " + System.getProperty("java.io.tmpdir") + ", " + why
                + ". Give another one: java -Djava.io.tmpdir=FOLDER -jar runthrough.jar ...";
    }
}
