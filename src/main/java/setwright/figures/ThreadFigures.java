package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.quantity.thread.OtherThreads;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.ThreadRow;
import setwright.quantity.thread.Threads;
import setwright.reach.BlindTap;

/** Threads and the depth of their holes. */
final class ThreadFigures {
    private static final Input THREAD = words("thread");
    private static final double TAPER = 8;
    private static final double SECOND = 4;
    private static final double BOTTOMING = 2;

    private ThreadFigures() {}

    static List<Figure> all() {
        return List.of(TapDrillFigure.FIGURE, thread(), drillDepth());
    }

    private static Figure thread() {
        return new Figure(
                "thread",
                "The thread {thread} has",
                List.of(THREAD),
                List.of("major mm", "pitch mm", "pitch-diameter mm", "minor mm", "stress-area mm²"),
                asked -> sizes(Threads.listed().read(asked.words("thread"))));
    }

    private static Answered sizes(ScrewThread thread) {
        Source source = Threads.listed()
                .row(thread)
                .map(ThreadRow::source)
                .or(() -> OtherThreads.of(thread).map(OtherThreads.Listed::source))
                .orElse(Source.of("computed: the size and pitch that were typed"));
        String row = LoadFigures.spoken(thread);
        Worked major = new Table("major", "size of the thread", Unit.MM, source).of(row, thread.major());
        Worked pitch = new Table("pitch", "pitch of the thread", Unit.MM, source).of(row, thread.pitch());
        Worked middle = pitchDiameter(thread).of(major, pitch);
        Answered answered = Answered.of(
                Answer.of("major", major, Unit.MM),
                Answer.of("pitch", pitch, Unit.MM),
                Answer.of("pitch-diameter", middle, Unit.MM),
                Answer.of("minor", minor(thread, major, pitch, middle), Unit.MM),
                thread.series().profile().hasStressArea()
                        ? Answer.of("stress-area", thread.stressAreaRule().of(major, pitch), Unit.MM2)
                        : new Answer.Nothing("stress-area", "mm²"));
        return thread.series() == ScrewThread.Series.NPT
                ? answered.noting("pitch and minor diameter at the small end; the thread tapers by 1 in 16")
                : answered;
    }

    private static Formula pitchDiameter(ScrewThread thread) {
        return switch (thread.series().profile()) {
            case SIXTY_DEGREES -> ScrewThread.PITCH_DIAMETER;
            case WHITWORTH -> ScrewThread.WHITWORTH_PITCH_DIAMETER;
            case BRITISH_ASSOCIATION -> ScrewThread.BA_PITCH_DIAMETER;
            case TAPER_PIPE -> ScrewThread.NPT_PITCH_DIAMETER;
        };
    }

    private static Worked minor(ScrewThread thread, Worked major, Worked pitch, Worked middle) {
        return switch (thread.series().profile()) {
            case SIXTY_DEGREES -> ScrewThread.MINOR.of(major, pitch);
            case WHITWORTH -> ScrewThread.WHITWORTH_MINOR.of(major, pitch);
            case BRITISH_ASSOCIATION -> ScrewThread.BA_MINOR.of(major, pitch);
            case TAPER_PIPE -> ScrewThread.NPT_MINOR.of(middle, pitch);
        };
    }

    private static Figure drillDepth() {
        return new Figure(
                "drill-depth-for-tap",
                "For {full-thread} of full thread {thread} the hole is drilled to",
                List.of(
                        THREAD,
                        measure("full-thread", Measure.LENGTH),
                        words("lead").or("4"),
                        choice("flute", "straight", "spiral").or("straight")),
                List.of("drill-depth mm"),
                ThreadFigures::depth);
    }

    private static Answered depth(Asked asked) {
        ScrewThread thread = Threads.listed().read(asked.words("thread"));
        boolean straight = asked.is("flute", "straight");
        Value room = Given.of(
                "chip room",
                straight ? thread.major() : 0,
                Unit.MM,
                straight ? "one diameter for a straight flute" : "a spiral flute lifts its chips");
        Worked depth = BlindTap.DRILL_DEPTH.of(
                asked.value("full-thread"),
                lead(asked.words("lead")),
                LoadFigures.ofThread("pitch", thread.pitch(), thread),
                room);
        return Answered.of(Answer.of("drill-depth", depth, Unit.MM)).noting("the drill's point comes below this depth");
    }

    private static Given lead(String typed) {
        return switch (typed.strip()) {
            case "taper" -> named(TAPER, typed);
            case "second" -> named(SECOND, typed);
            case "bottoming" -> named(BOTTOMING, typed);
            case "plug" ->
                throw Refusal.of(
                        "lead",
                        "'plug' means the second tap (4 threads of lead) in the US and the bottoming tap (2 threads)"
                                + " in the UK; which of the two: lead=second or lead=bottoming.");
            default -> threads(typed.strip());
        };
    }

    private static Given named(double threads, String name) {
        return Given.of("threads of lead", threads, Unit.NONE, "from memory: a " + name + " tap");
    }

    private static Given threads(String typed) {
        if (!typed.matches("\\d{1,2}(\\.\\d{1,3})?")
                || Double.parseDouble(typed) < 1
                || Double.parseDouble(typed) > 20) {
            throw Refusal.of(
                    "lead", "'" + typed + "' is not accepted; accepted: 1 to 20 threads, taper, second, bottoming.");
        }
        return Given.of("threads of lead", Double.parseDouble(typed), Unit.NONE, "typed here");
    }
}
