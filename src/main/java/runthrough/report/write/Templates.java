package runthrough.report.write;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateException;
import gg.jte.output.StringOutput;
import java.util.Map;

/** The pages that are made of templates. */
public final class Templates {
    private static final String ENDING = ".jte";

    private Templates() {}

    /** The page that the template {@code name} makes of {@code parts}; what fails in a part fails as itself. */
    public static String render(String name, Map<String, Object> parts) {
        StringOutput out = new StringOutput();
        try {
            TemplateEngine.createPrecompiled(ContentType.Html).render(name + ENDING, parts, out);
        } catch (TemplateException e) {
            throw OwnFailure.of(e);
        }
        return out.toString();
    }
}
