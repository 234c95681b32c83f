package setwright;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import setwright.command.Commands;
import setwright.command.Terminal;
import setwright.window.Workbench;

/** Where the program starts: without arguments the window, else a command. */
public final class Setwright {
    private static final String DEMONSTRATION = "demo-jobs/bearing-block.setwright.json";

    private Setwright() {}

    /** Ends the process on every path; a window is waited for first. */
    public static void main(String[] arguments) {
        int code = 2;
        try {
            code = run(arguments, new Launcher(Setwright::window), Terminal.ofThisProcess());
        } catch (RuntimeException | Error fault) {
            fault.printStackTrace();
        } finally {
            System.exit(code);
        }
    }

    /** Opens the window and waits until it is closed. */
    private static boolean window(Optional<Path> job) {
        try {
            Workbench.open(job.orElse(null)).untilClosed();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return true;
    }

    static int run(String[] arguments, Launcher launcher, Terminal terminal) {
        Commands commands = new Commands(terminal, launcher);
        if (arguments.length > 0) {
            return commands.run(arguments);
        }
        return launcher.open(Optional.empty()) ? 0 : commands.demonstrate(DEMONSTRATION, demonstration());
    }

    private static String demonstration() {
        try (InputStream packed = Setwright.class.getResourceAsStream("/" + DEMONSTRATION)) {
            if (packed == null) {
                throw new IllegalStateException("The program was packed without " + DEMONSTRATION + ".");
            }
            return new String(packed.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unread) {
            throw new IllegalStateException(DEMONSTRATION + " cannot be read.", unread);
        }
    }
}
