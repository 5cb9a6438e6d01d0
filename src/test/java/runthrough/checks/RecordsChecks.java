package runthrough.checks;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** On a test class: its tests may take a {@link CheckBook}, which is written when the last of them has run. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(CheckBookKeeper.class)
public @interface RecordsChecks {}
