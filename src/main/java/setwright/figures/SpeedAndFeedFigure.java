package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Cooling;
import setwright.cutting.FeedForCut;
import setwright.cutting.LimitName;
import setwright.cutting.Limits;
import setwright.cutting.SafeSpeed;
import setwright.cutting.Selector;
import setwright.cutting.SpeedAndFeed;
import setwright.cutting.SpeedForCut;
import setwright.cutting.ToolLife;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.ToolMaterial;

/** What a material asks for, in the steps that a machine has. */
final class SpeedAndFeedFigure {
    /** Every form of cutter, as it is typed. */
    private static String[] forms() {
        return Arrays.stream(Cutter.Form.values())
                .map(form -> form.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .toArray(String[]::new);
    }

    static final Figure FIGURE = new Figure(
            "speed-and-feed",
            "A {cutter} of {diameter} in {material} runs at",
            List.of(
                    words("material"),
                    choice("cutter", forms()),
                    measure("diameter", Measure.LENGTH).upTo(1000),
                    count("teeth").upTo(200).maybe("as the nearest cutter of the shop"),
                    choice("tool", "HSS", "carbide").or("HSS"),
                    measure("width", Measure.LENGTH).maybe("no depth is worked out"),
                    measure("depth", Measure.LENGTH).maybe("the largest is worked out"),
                    measure("stick-out", Measure.LENGTH).maybe("the tool's spring is left out"),
                    words("machine").maybe("the speed that the material asks for")),
            List.of("speed rev/min", "feed mm/min", "seconds-per-turn s", "largest-depth mm", "governing"),
            asked -> new SpeedAndFeedFigure(asked).answer());

    private final Asked asked;
    private final Material material;
    private final CuttingSpeed row;
    private final Optional<Cutter> like;
    private final @Nullable Machine machine;

    private SpeedAndFeedFigure(Asked asked) {
        this.asked = asked;
        material = asked.material();
        row = row();
        like = asked.shop().all(Cutter.class).stream()
                .filter(cutter -> cutter.form() == form() && cutter.material() == tool())
                .min(Comparator.comparingDouble(
                        cutter -> Math.abs(cutter.diameter().inside() - asked.number("diameter"))));
        machine = asked.has("machine") ? machine() : null;
    }

    private Cutter.Form form() {
        return Cutter.Form.valueOf(
                asked.words("cutter").toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private ToolMaterial tool() {
        return asked.is("tool", "HSS") ? ToolMaterial.HSS : ToolMaterial.CARBIDE;
    }

    private CuttingSpeed row() {
        List<CuttingSpeed> here = asked.shop().all(CuttingSpeed.class).stream()
                .filter(speed -> speed.material().equals(material.id()))
                .toList();
        return here.stream()
                .filter(speed -> speed.tool() == tool())
                .filter(speed -> speed.form() == form() || speed.form() == form().cutsLike())
                .min(Comparator.comparing(speed -> speed.form() != form()))
                .orElseThrow(() -> Refusal.of(
                        "cutter",
                        "the shop has no cutting speed of " + asked.words("tool") + " " + asked.words("cutter") + " in "
                                + material.name() + "; it has: "
                                + here.stream().map(CuttingSpeed::id).collect(Collectors.joining(", ")) + "."));
    }

    private Machine machine() {
        String called = asked.words("machine");
        return asked.shop().all(Machine.class).stream()
                .filter(one -> one.id().equalsIgnoreCase(called) || one.name().equalsIgnoreCase(called))
                .findFirst()
                .orElseThrow(() -> Refusal.of(
                        "machine",
                        "the shop has no '" + called + "'; accepted: "
                                + asked.shop().all(Machine.class).stream()
                                        .map(Machine::id)
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    private boolean mills() {
        return switch (form()) {
            case SPOT_DRILL, DRILL, REAMER, TAP, CENTRE_DRILL, COUNTERSINK, COUNTERBORE, BORING_BAR -> false;
            case END_MILL,
                    FACE_MILL,
                    FLY_CUTTER,
                    SHELL_MILL,
                    SLITTING_SAW,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    FORM_CUTTER,
                    SCRIBER -> true;
        };
    }

    private Given teeth() {
        return asked.valueOr(
                "teeth",
                like.map(cutter -> Given.of("teeth", cutter.teeth(), Unit.NONE, "shop/" + cutter.id() + "/teeth"))
                        .orElse(Given.of("teeth", 2, Unit.NONE, "common practice: two where nothing is known")));
    }

    private Answered answer() {
        if (asked.has("width")) {
            MotionFigures.requireWithin(asked);
        }
        Worked speed = speed();
        Worked feed = feed(speed);
        Optional<Depth> depth = depth(speed, feed);
        Answered answered = Answered.of(
                Answer.of("speed", speed, Unit.RPM),
                Answer.of("feed", feed, Unit.MM_PER_MIN),
                secondsPerTurn(feed),
                depth.<Answer>map(Depth::answer).orElse(new Answer.Nothing("largest-depth", "mm")),
                new Answer.Words(
                        "governing",
                        depth.map(Depth::governing)
                                .orElse(LimitName.CUTTING_EDGE)
                                .words()));
        return machine == null
                ? answered.noting("no machine is named: the speed is what the material asks for")
                : answered;
    }

    private Worked speed() {
        Worked wanted = SpeedAndFeed.SPINDLE_SPEED.of(cuttingSpeed(), asked.value("diameter"));
        if (machine == null) {
            return wanted;
        }
        double ceiling = like.flatMap(cutter -> SafeSpeed.of(cutter, null))
                .map(SafeSpeed::most)
                .orElse(Double.POSITIVE_INFINITY);
        double set = Selector.spindle(machine)
                .choose(new Selector.Wanted(wanted.inside(), Selector.Wanted.mostOver(tool()), ceiling))
                .value();
        return new Table("speed", "the speeds that the machine has", Unit.RPM, Source.of(machine.source()))
                .of("nearest to what is wanted, on " + machine.name(), set, wanted);
    }

    /** As the plan starts from it: oil by the brush, carbide dry, clean metal, an hour of life. */
    private Worked cuttingSpeed() {
        double share = form() == Cutter.Form.COUNTERSINK
                ? SpeedForCut.COUNTERSINK
                : form() == Cutter.Form.COUNTERBORE || form() == Cutter.Form.BORING_BAR ? SpeedForCut.WIDE_EDGE : 1;
        return SpeedForCut.of(
                row,
                material.group(),
                new SpeedForCut.Conditions(
                        SpeedForCut.KIND.of(asked.words("cutter"), share),
                        tool() == ToolMaterial.HSS ? Cooling.BRUSHED : Cooling.DRY,
                        false,
                        Given.of("tool life asked", ToolLife.ASKED, Unit.MINUTE, "as the tables count on")));
    }

    private Worked feed(Value speed) {
        Worked each = feedPerEdge();
        Worked wanted =
                mills() ? SpeedAndFeed.TABLE_FEED.of(speed, teeth(), each) : SpeedAndFeed.AXIAL_FEED.of(speed, each);
        if (machine == null
                || !mills()
                || machine.x().feedGreatest() == null
                || machine.x().feedLeast() == null) {
            return wanted;
        }
        double least = machine.x().feedLeast().inside();
        double greatest = machine.x().feedGreatest().inside();
        double set = Math.min(Math.max(wanted.inside(), least), greatest);
        return set == wanted.inside()
                ? wanted
                : new Table("feed", "the feeds that the machine has", Unit.MM_PER_MIN, Source.of(machine.source()))
                        .of("the end of its range on " + machine.name(), set, wanted);
    }

    private Worked feedPerEdge() {
        double diameter = asked.number("diameter");
        boolean side = mills() && form().cutsLike() == Cutter.Form.END_MILL;
        double width = side ? Math.min(asked.numberOr("width", diameter), diameter) : diameter;
        return FeedForCut.of(row, new FeedForCut.Conditions(form(), diameter, width, asked.numberOr("stick-out", 0)));
    }

    private Answer secondsPerTurn(Value feed) {
        if (machine == null || !mills()) {
            return new Answer.Nothing("seconds-per-turn", "s");
        }
        Given turn = Given.of(
                "travel of a turn of the handle",
                machine.x().perTurn().inside(),
                Unit.MM,
                "shop/" + machine.id() + "/x/perTurn");
        return Answer.of("seconds-per-turn", SpeedAndFeed.SECONDS_PER_TURN.of(turn, feed), Unit.SECOND);
    }

    /** How deep the cut may be, and what stands in the way of more. */
    private record Depth(Answer answer, LimitName governing) {}

    private Optional<Depth> depth(Value speed, Value feed) {
        if (!mills() || !asked.has("width") || (machine == null && !asked.has("stick-out"))) {
            return Optional.empty();
        }
        DepthLimits limits = new DepthLimits(
                asked, row, material, machine, like.orElse(null), teeth().inside(), speed.inside(), feed.inside());
        Limits.Largest largest = Limits.largest(limits.range(), limits::deeper);
        LimitName governing = asked.has("depth")
                ? Limits.governing(limits.at(asked.number("depth"))).name()
                : largest.governing().name();
        Worked worked = DepthLimits.LARGEST.of(
                largest.choice(),
                largest.governing().name().words() + " stands in the way of more",
                speed,
                feed,
                asked.value("width"),
                asked.value("diameter"));
        return Optional.of(new Depth(Answer.of("largest-depth", worked, Unit.MM), governing));
    }
}
