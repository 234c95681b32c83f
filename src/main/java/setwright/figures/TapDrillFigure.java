package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;
import static setwright.quantity.Symbol.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.quantity.DrillNames;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.NamedSize;
import setwright.quantity.Reading;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.quantity.thread.FormingDrill;
import setwright.quantity.thread.OtherThreads;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.TapDrill;
import setwright.quantity.thread.ThreadProfile;
import setwright.quantity.thread.Threads;
import setwright.shop.Drill;

/** The drill before a tap, out of the stand that is asked for. */
final class TapDrillFigure {
    private static final Symbol MAJOR = symbol("d", "major diameter", Unit.MM, 1, 100);
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.2, 6);
    private static final Source BRITISH = Source.of(
            "computed: trade rule, 100 % of thread is twice the depth of the bolt's thread (BS 84, BS 93, from memory)");
    private static final Symbol FULL = symbol("f", "full thread in pitches", Unit.NONE, 1.2, 1.3);

    /** Before a cutting tap of Whitworth or British Association form. */
    static final Formula BRITISH_DIAMETER = new Formula(
            "D = d - f P q / 100",
            symbol("D", "drill for the thread", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH, symbol("q", "percent of thread", Unit.PERCENT, 40, 100), FULL),
            v -> v[0] - v[3] * v[1] * v[2],
            BRITISH);

    static final Formula BRITISH_ENGAGEMENT = new Formula(
            "q = 100 (d - D) / (f P)",
            symbol("q", "percent of thread", Unit.PERCENT, 0, 120),
            List.of(MAJOR, PITCH, symbol("D", "drill", Unit.MM, 0.5, 100), FULL),
            v -> (v[0] - v[2]) / (v[3] * v[1]),
            BRITISH);

    static final Figure FIGURE = new Figure(
            "tap-drill",
            "Before the tap {thread} goes a drill of",
            List.of(
                    words("thread"),
                    measure("engagement", Measure.PERCENT).within(30, 100).or("75 %"),
                    choice("tap", "cut", "form").or("cut"),
                    choice("stand", "all", "metric", "inch", "number", "letter", "shop")
                            .or("all")),
            List.of("exact mm", "drill", "drill-diameter mm", "engagement %"),
            TapDrillFigure::answer);

    private TapDrillFigure() {}

    private static Answered answer(Asked asked) {
        ScrewThread thread = Threads.listed().read(asked.words("thread"));
        List<TapDrill.Drill> stand = stand(asked);
        if (stand.isEmpty()) {
            throw Refusal.of("stand", "the shop has no drills.");
        }
        ThreadProfile profile = thread.series().profile();
        boolean cut = asked.is("tap", "cut");
        if (!cut && profile != ThreadProfile.SIXTY_DEGREES) {
            throw Refusal.of("tap", "the rule for forming taps is for metric and unified threads; accepted here: cut.");
        }
        return profile == ThreadProfile.TAPER_PIPE ? listed(thread) : worked(asked, thread, stand, cut);
    }

    private static Answered worked(Asked asked, ScrewThread thread, List<TapDrill.Drill> stand, boolean cut) {
        Worked exact = before(thread, cut, asked.value("engagement"));
        if (exact.inside() <= 0) {
            throw Refusal.of("engagement", "so much thread leaves no hole; accepted: less.");
        }
        TapDrill.Drill drill = nearest(stand, exact);
        Worked engagement = left(thread, cut, Given.of("drill", drill.diameter(), Unit.MM, drill.name()));
        Answered answered = Answered.of(
                        Answer.of("exact", exact, Unit.MM),
                        new Answer.Words("drill", drill.name()),
                        Answer.of("drill-diameter", drill.diameter(), Unit.MM),
                        Answer.of("engagement", engagement, Unit.PERCENT))
                .noting(convention(thread, cut));
        return customary(thread, drill)
                .filter(name -> cut)
                .map(name -> answered.noting("customary before " + thread.designation() + ": " + name))
                .orElse(answered);
    }

    private static String convention(ScrewThread thread, boolean cut) {
        return cut
                ? "100 % of thread is " + Input.plain(thread.series().profile().fullThread())
                        + " P on the diameter, the trade's convention"
                : "100 % of thread is 0.68 P on the diameter, the convention for forming taps";
    }

    /** A taper pipe thread is drilled by the table: its hole is no wider than its small end. */
    private static Answered listed(ScrewThread thread) {
        OtherThreads.Listed listed = OtherThreads.of(thread)
                .orElseThrow(() -> Refusal.of("thread", "no drill is listed for " + thread.designation() + "."));
        double mm = DrillNames.published()
                .size(listed.drill())
                .map(Length::mm)
                .orElseGet(() -> new Reading(UnitSystem.INCH).inside(Measure.LENGTH, listed.drill()));
        return Answered.of(
                        new Answer.Nothing("exact", "mm"),
                        new Answer.Words("drill", listed.drill()),
                        Answer.of(
                                "drill-diameter",
                                new Table("drill-diameter", "drill before a taper pipe tap", Unit.MM, listed.source())
                                        .of(thread.designation(), mm),
                                Unit.MM),
                        new Answer.Nothing("engagement", "%"))
                .noting(
                        "a taper pipe thread has no percent of thread: the drill is the customary one, without a reamer");
    }

    private static Worked before(ScrewThread thread, boolean cut, Given engagement) {
        Given major = LoadFigures.ofThread("major diameter", thread.major(), thread);
        Given pitch = LoadFigures.ofThread("pitch", thread.pitch(), thread);
        if (thread.series().profile() != ThreadProfile.SIXTY_DEGREES) {
            return BRITISH_DIAMETER.of(major, pitch, engagement, full(thread));
        }
        return (cut ? TapDrill.DIAMETER : FormingDrill.DIAMETER).of(major, pitch, engagement);
    }

    private static Worked left(ScrewThread thread, boolean cut, Given drill) {
        Given major = LoadFigures.ofThread("major diameter", thread.major(), thread);
        Given pitch = LoadFigures.ofThread("pitch", thread.pitch(), thread);
        if (thread.series().profile() != ThreadProfile.SIXTY_DEGREES) {
            return BRITISH_ENGAGEMENT.of(major, pitch, drill, full(thread));
        }
        return (cut ? TapDrill.ENGAGEMENT : FormingDrill.ENGAGEMENT).of(major, pitch, drill);
    }

    private static Given full(ScrewThread thread) {
        return Given.of(
                "full thread in pitches",
                thread.series().profile().fullThread(),
                Unit.NONE,
                LoadFigures.spoken(thread));
    }

    private static TapDrill.Drill nearest(List<TapDrill.Drill> stand, Value exact) {
        return stand.stream()
                .min(java.util.Comparator.<TapDrill.Drill>comparingDouble(
                                drill -> Math.abs(drill.diameter() - exact.inside()))
                        .thenComparingDouble(drill -> -drill.diameter()))
                .orElseThrow();
    }

    private static Optional<String> customary(ScrewThread thread, TapDrill.Drill chosen) {
        return Threads.listed()
                .row(thread)
                .filter(row -> Math.abs(row.tapDrillDiameter() - chosen.diameter()) > 1e-6)
                .map(row -> stamped(row.tapDrill()))
                .or(() -> OtherThreads.of(thread)
                        .map(OtherThreads.Listed::drill)
                        .filter(name -> !name.isEmpty())
                        .map(TapDrillFigure::stamped)
                        .filter(name -> !name.equals(chosen.name())));
    }

    private static String stamped(String drill) {
        return drill + (drill.matches("[0-9.]+") ? " mm" : "");
    }

    private static List<TapDrill.Drill> stand(Asked asked) {
        return switch (asked.words("stand")) {
            case "metric" -> metric();
            case "inch" -> named(NamedSize.Series.FRACTION);
            case "number" -> named(NamedSize.Series.NUMBER);
            case "letter" -> named(NamedSize.Series.LETTER);
            case "shop" ->
                asked.shop().all(Drill.class).stream()
                        .map(drill -> new TapDrill.Drill(
                                drill.diameter().text(), drill.diameter().inside()))
                        .toList();
            default -> {
                List<TapDrill.Drill> all = new ArrayList<>(metric());
                DrillNames.published().all().forEach(size -> all.add(drill(size)));
                yield all;
            }
        };
    }

    private static List<TapDrill.Drill> named(NamedSize.Series series) {
        return DrillNames.published().all().stream()
                .filter(size -> size.series() == series)
                .map(TapDrillFigure::drill)
                .toList();
    }

    private static TapDrill.Drill drill(NamedSize size) {
        return new TapDrill.Drill(size.name(), size.size().mm());
    }

    /** As metric sets are sold (common practice): by 0.05 mm to 3, by 0.1 mm to 14, by 0.25 mm to 20, by 0.5 mm to 40. */
    private static List<TapDrill.Drill> metric() {
        List<TapDrill.Drill> drills = new ArrayList<>();
        for (int hundredths = 50; hundredths <= 4000; hundredths += step(hundredths)) {
            drills.add(new TapDrill.Drill(Input.plain(hundredths / 100.0) + " mm", hundredths / 100.0));
        }
        return drills;
    }

    private static int step(int hundredths) {
        if (hundredths < 300) {
            return 5;
        }
        if (hundredths < 1400) {
            return 10;
        }
        return hundredths < 2000 ? 25 : 50;
    }
}
