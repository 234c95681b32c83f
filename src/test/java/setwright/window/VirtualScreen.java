package setwright.window;

import static org.junit.jupiter.api.extension.ConditionEvaluationResult.disabled;
import static org.junit.jupiter.api.extension.ConditionEvaluationResult.enabled;

import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/**
 * The screen of window tests: installs the virtual one before anything asks for a screen, keeps a picture of it when a
 * test fails, and clears it after each test.
 */
final class VirtualScreen implements ExecutionCondition, AfterTestExecutionCallback, AfterEachCallback {
    private static final String NO_VIRTUAL_SCREEN =
            "Window tests wait for a display (-Dscreen=real): the virtual screen does not start on Java ";
    /** From here on Java lacks what the virtual screen builds on. */
    private static final int FIRST_JAVA_WITHOUT = 25;

    private static final boolean IS_VIRTUAL = "virtual".equals(System.getProperty("screen"));
    private static final boolean STARTS = !IS_VIRTUAL || Runtime.version().feature() < FIRST_JAVA_WITHOUT;

    static {
        if (IS_VIRTUAL && STARTS) {
            install();
        }
    }

    /** The toolkit is exchanged by the static initializer of this class, and by nothing else in it. */
    private static void install() {
        try {
            Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        } catch (ClassNotFoundException missing) {
            throw new IllegalStateException("The virtual screen is not on the class path of the tests.", missing);
        }
    }

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (STARTS) {
            return enabled("there is a screen");
        }
        String reason = NO_VIRTUAL_SCREEN + Runtime.version().feature() + ".";
        context.getRoot()
                .getStore(Namespace.create(VirtualScreen.class))
                .getOrComputeIfAbsent("said", key -> say(reason));
        return disabled(reason);
    }

    private static boolean say(String reason) {
        System.out.println(reason);
        return true;
    }

    @Override
    public void afterTestExecution(ExtensionContext context) throws Exception {
        if (context.getExecutionException().isPresent()) {
            keepPicture(context.getRequiredTestClass().getSimpleName() + "." + context.getDisplayName());
        }
    }

    private static void keepPicture(String test) throws Exception {
        Path folder = Files.createDirectories(Path.of("target", "failed-gui-tests"));
        Path file = folder.resolve(test.replaceAll("[^A-Za-z0-9._-]+", "") + ".png");
        var screen = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
        if (!ImageIO.write(new Robot().createScreenCapture(screen), "png", file.toFile())) {
            throw new IOException("no writer for " + file);
        }
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        EventQueue.invokeAndWait(() -> {
            for (Window window : Window.getWindows()) {
                window.dispose();
            }
        });
    }
}
