package setwright.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One run of the program in this process, with what it printed. */
record Run(int code, String out, String err, List<Optional<Path>> opened) {
    static Run of(String... words) {
        return with("", words);
    }

    static Run with(String input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Path.of(""));
        List<Optional<Path>> opened = new ArrayList<>();
        int code = new Commands(terminal, job -> opened.add(job)).run(words);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8), opened);
    }
}
