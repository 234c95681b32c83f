package setwright.window;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/** A test that opens windows: it runs in a JVM apart from the others, on the virtual screen unless {@code -Dscreen=real}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("ui")
@ExtendWith(VirtualScreen.class)
public @interface WindowTest {}
