package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.list;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.cutting.Engagement;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.rigidity.stability.Mode;
import setwright.rigidity.stability.ToothCut;
import setwright.rigidity.stability.Waves;
import setwright.rigidity.stability.ZeroOrder;

/** How deep a cut stays quiet, by how the tip rings along the feed (x) and across it (y). */
final class ChatterLimitFigure {
    private static final int SPEEDS = 200;
    private static final double MOST_WAVES = 10;
    private static final double LEAST_WAVES = 0.4;

    static final Figure FIGURE = new Figure(
            "chatter-limit",
            "A tip that rings at {natural-frequency} with a damping of {damping} and a stiffness of {stiffness}, with"
                    + " {teeth} teeth cutting from {start-angle} to {exit-angle} at {kt} with a radial share of {kr}, stays"
                    + " quiet down to",
            List.of(
                    list("natural-frequency", Measure.FREQUENCY).above(),
                    list("damping", Measure.RATIO).above(),
                    list("stiffness", Measure.STIFFNESS).above(),
                    count("teeth"),
                    measure("kt", Measure.STRESS),
                    measure("kr", Measure.RATIO).from(0),
                    measure("start-angle", Measure.ANGLE).within(0, 180),
                    measure("exit-angle", Measure.ANGLE).within(0, 180),
                    measure("speed", Measure.SPINDLE_SPEED).maybe("the lobes alone")),
            List.of("smallest-stable-depth mm", "depth-at-speed mm", "waves-between-teeth", "lobes [{speed, depth}]"),
            ChatterLimitFigure::answered);

    private ChatterLimitFigure() {}

    private static Answered answered(Asked asked) {
        Mode x = mode(asked, 0);
        Mode y = mode(asked, 1);
        ToothCut cut = new ToothCut(asked.count("teeth"), arc(asked), asked.number("kt"), asked.number("kr"));
        ZeroOrder border = ZeroOrder.of(cut, x, y);
        Given[] from = {
            axis(asked, "natural-frequency", 0),
            axis(asked, "natural-frequency", 1),
            axis(asked, "damping", 0),
            axis(asked, "damping", 1),
            axis(asked, "stiffness", 0),
            axis(asked, "stiffness", 1),
            asked.value("teeth"),
            asked.value("kt"),
            asked.value("kr"),
            asked.value("start-angle"),
            asked.value("exit-angle")
        };
        String deciding = "rings at " + Math.round(border.chatterFrequency() / (2 * Math.PI)) + " Hz";
        Answered found = Answered.of(
                depth("smallest-stable-depth", border.smallestDepth(), deciding, from),
                atSpeed(asked, border, deciding, from),
                waves(asked, ringing(border, x, y)),
                new Answer.Rows("lobes", lobes(border, cut, Math.max(x.frequency(), y.frequency()))));
        return cut.immersion() < ZeroOrder.LEAST_IMMERSION
                ? found.noting("a cut narrower than a tenth of the cutter: between these lobes there are others, where"
                        + " single teeth hit; the depths may be too large")
                : found;
    }

    private static Mode mode(Asked asked, int axis) {
        double damping = axis(asked, "damping", axis).inside();
        if (damping >= 1) {
            throw Refusal.of("damping", Input.plain(damping) + " is out of range; accepted: above 0 and below 1.");
        }
        return new Mode(
                2 * Math.PI * axis(asked, "natural-frequency", axis).inside(),
                damping,
                axis(asked, "stiffness", axis).inside());
    }

    /** Of two, along and across the feed; one counts for both. */
    private static Given axis(Asked asked, String key, int axis) {
        List<Given> both = asked.list(key);
        if (both.size() > 2) {
            throw Refusal.of(
                    key, both.size() + " values; accepted: one, or two with a comma: along the feed, across it.");
        }
        return both.get(Math.min(axis, both.size() - 1));
    }

    private static Engagement arc(Asked asked) {
        double start = asked.number("start-angle");
        double exit = asked.number("exit-angle");
        if (!(exit > start)) {
            throw Refusal.of("exit-angle", "it does not lie behind start-angle; accepted: above it up to 180 °.");
        }
        return new Engagement(start, Math.min(exit, Math.PI));
    }

    private static Answer depth(String name, double depth, String deciding, Given... from) {
        return Double.isInfinite(depth)
                ? new Answer.Nothing(name, "mm")
                : Answer.of(name, ZeroOrder.DEPTH.of(depth, deciding, from), Unit.MM);
    }

    private static Answer atSpeed(Asked asked, ZeroOrder border, String deciding, Given... from) {
        return asked.has("speed")
                ? depth("depth-at-speed", border.depthAt(asked.number("speed")), deciding, from)
                : new Answer.Nothing("depth-at-speed", "mm");
    }

    private static Answer waves(Asked asked, Mode ringing) {
        if (!asked.has("speed")) {
            return new Answer.Nothing("waves-between-teeth", "");
        }
        Given frequency = Given.of("natural frequency", ringing.hertz(), Unit.HZ, "natural-frequency");
        return Answer.of(
                "waves-between-teeth",
                Waves.BETWEEN_TEETH.of(frequency, asked.value("teeth"), asked.value("speed")),
                Unit.NONE);
    }

    /** The direction whose own frequency lies nearest to that of the chatter. */
    private static Mode ringing(ZeroOrder border, Mode x, Mode y) {
        double chatter = border.chatterFrequency();
        return Math.abs(y.frequency() - chatter) < Math.abs(x.frequency() - chatter) ? y : x;
    }

    /** From ten waves between teeth to less than one. */
    private static List<List<Answer>> lobes(ZeroOrder border, ToothCut cut, double frequency) {
        double slow = frequency / (MOST_WAVES * cut.teeth());
        double fast = frequency / (LEAST_WAVES * cut.teeth());
        return border.lobes(slow, fast, SPEEDS).stream()
                .map(lobe -> List.of(Answer.of("speed", lobe.speed(), Unit.RPM), reached(lobe.depth())))
                .toList();
    }

    private static Answer reached(double depth) {
        return Double.isInfinite(depth) ? new Answer.Nothing("depth", "mm") : Answer.of("depth", depth, Unit.MM);
    }
}
