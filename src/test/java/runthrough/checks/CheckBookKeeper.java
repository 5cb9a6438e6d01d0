package runthrough.checks;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import runthrough.report.validation.CheckFolder;

/** Hands the book of their class to the tests that ask for it, and writes it after the last of them. */
final class CheckBookKeeper implements BeforeAllCallback, AfterAllCallback, ParameterResolver {
    private static final Namespace OWN = Namespace.create(CheckBookKeeper.class);
    /** System property: the folder to write into; nothing is written without it. */
    private static final String FOLDER = "runthrough.checks";

    @Override
    public void beforeAll(ExtensionContext context) {
        // A nested class writes into the book of the class around it.
        context.getStore(OWN).getOrComputeIfAbsent(CheckBook.class);
    }

    @Override
    public void afterAll(ExtensionContext context) throws IOException {
        String folder = System.getProperty(FOLDER);
        Class<?> type = context.getRequiredTestClass();
        if (folder != null && !type.isMemberClass()) {
            new CheckFolder(Path.of(folder)).write(type.getName(), book(context).records());
        }
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == CheckBook.class;
    }

    @Override
    public CheckBook resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return book(context);
    }

    private static CheckBook book(ExtensionContext context) {
        return context.getStore(OWN).get(CheckBook.class, CheckBook.class);
    }
}
