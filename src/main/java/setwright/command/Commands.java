package setwright.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import setwright.figures.Refusal;

/** The commands of the program; they end with a code and never end the process. */
public final class Commands {
    private static final int COLUMNS = 100;

    private final Terminal terminal;
    private final Launcher launcher;

    public Commands(Terminal terminal, Launcher launcher) {
        this.terminal = terminal;
        this.launcher = launcher;
    }

    /** Runs the command that the words name. */
    public int run(String... words) {
        CommandLine line = line();
        line.setOut(writer(terminal.out()));
        line.setErr(writer(terminal.err()));
        int code = line.execute(words);
        terminal.flush();
        return code;
    }

    /** What the first command prints where there is no display: the check of a demonstration job; its stops do not count. */
    public int demonstrate(String name, String job) {
        try {
            new Demonstration(terminal).print(name, job);
            return Exit.CLEAN.code();
        } catch (Complaint complaint) {
            terminal.complain(String.valueOf(complaint.getMessage()));
            return Exit.UNREADABLE.code();
        } finally {
            terminal.flush();
        }
    }

    private static PrintWriter writer(java.io.PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    private CommandLine line() {
        CommandLine line = new CommandLine(new RootCommand(terminal));
        for (Object command : List.of(
                new OpenCommand(terminal, launcher),
                new CheckCommand(terminal),
                new SheetCommand(terminal),
                new KitCommand(terminal),
                new CompareCommand(terminal),
                new SuggestCommand(terminal),
                new FigureCommand(terminal),
                new ExplainCommand(terminal),
                new ShopCommand(terminal),
                new SchemaCommand(terminal))) {
            line.addSubcommand(command);
        }
        return line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpWidth(COLUMNS)
                .setExpandAtFiles(false)
                .setInterpolateVariables(false)
                .setParameterExceptionHandler(this::misspelt)
                .setExecutionExceptionHandler(this::failed);
    }

    private int misspelt(ParameterException wrong, String[] words) {
        terminal.complain(String.valueOf(wrong.getMessage()));
        terminal.complain(
                "'" + wrong.getCommandLine().getCommandSpec().qualifiedName() + " --help' says what it takes.");
        return Exit.UNREADABLE.code();
    }

    private int failed(Exception failure, CommandLine line, CommandLine.ParseResult words) throws Exception {
        if (failure instanceof Complaint || failure instanceof Refusal) {
            terminal.complain(String.valueOf(failure.getMessage()));
            return Exit.UNREADABLE.code();
        }
        throw failure;
    }
}
