package setwright.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Where commands read and write; UTF-8 whatever the locale.
 *
 * @param out for what was asked
 * @param err for complaints
 * @param folder in which the program was started
 */
public record Terminal(InputStream in, PrintStream out, PrintStream err, Path folder) {
    /** The streams of this process. */
    public static Terminal ofThisProcess() {
        return new Terminal(System.in, utf8(FileDescriptor.out), utf8(FileDescriptor.err), Path.of(""));
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }

    void line(String text) {
        out.print(text + "\n");
    }

    void complain(String text) {
        err.print(text + "\n");
    }

    /** What is still held back goes out now. */
    public void flush() {
        out.flush();
        err.flush();
    }
}
