package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.cutting.ChipThickness;
import setwright.cutting.SpeedAndFeed;
import setwright.cutting.Surface;
import setwright.cutting.ToolLife;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** Speeds, feeds, chips and what they leave. */
final class MotionFigures {
    private static final Input SPEED = measure("speed", Measure.SPINDLE_SPEED);
    private static final Input CUTTING_SPEED = measure("cutting-speed", Measure.CUTTING_SPEED);
    private static final Input DIAMETER = measure("diameter", Measure.LENGTH).upTo(3000);
    private static final Input TEETH = count("teeth");
    private static final Input PER_TOOTH = measure("feed-per-tooth", Measure.FEED_PER_TOOTH);
    private static final Input FEED = measure("feed", Measure.FEED);
    private static final Input WIDTH = measure("width", Measure.LENGTH);
    private static final Input DEPTH = measure("depth", Measure.LENGTH);
    private static final double SQUARE = 89;

    private MotionFigures() {}

    static List<Figure> all() {
        return List.of(
                new Figure(
                        "spindle-speed",
                        "A cutter of {diameter} that cuts at {cutting-speed} turns at",
                        List.of(CUTTING_SPEED, DIAMETER),
                        List.of("speed rev/min"),
                        asked -> Answered.of(Answer.of(
                                "speed",
                                SpeedAndFeed.SPINDLE_SPEED.of(asked.value("cutting-speed"), asked.value("diameter")),
                                Unit.RPM))),
                new Figure(
                        "cutting-speed",
                        "A cutter of {diameter} that turns at {speed} cuts at",
                        List.of(SPEED, DIAMETER),
                        List.of("cutting-speed m/min"),
                        asked -> Answered.of(Answer.of(
                                "cutting-speed",
                                SpeedAndFeed.CUTTING_SPEED.of(asked.value("speed"), asked.value("diameter")),
                                Unit.M_PER_MIN))),
                new Figure(
                        "table-feed",
                        "{teeth} teeth at {speed} with {feed-per-tooth} each want a table feed of",
                        List.of(SPEED, TEETH, PER_TOOTH),
                        List.of("feed mm/min"),
                        asked -> Answered.of(Answer.of(
                                "feed",
                                SpeedAndFeed.TABLE_FEED.of(
                                        asked.value("speed"), asked.value("teeth"), asked.value("feed-per-tooth")),
                                Unit.MM_PER_MIN))),
                new Figure(
                        "feed-per-tooth",
                        "{teeth} teeth at {speed} and a table feed of {feed} take each",
                        List.of(FEED, SPEED, TEETH),
                        List.of("feed-per-tooth mm"),
                        asked -> Answered.of(Answer.of(
                                "feed-per-tooth",
                                SpeedAndFeed.FEED_PER_TOOTH.of(
                                        asked.value("feed"), asked.value("speed"), asked.value("teeth")),
                                Unit.MM))),
                new Figure(
                        "chip-thickness",
                        "A cutter of {diameter}, {width} wide in the cut with {feed-per-tooth}, cuts a chip of",
                        List.of(
                                PER_TOOTH,
                                WIDTH,
                                DIAMETER,
                                measure("lead-angle", Measure.ANGLE)
                                        .within(0, SQUARE)
                                        .or("0 °")),
                        List.of("largest mm", "mean mm", "feed-for-full-chip mm"),
                        MotionFigures::chip),
                new Figure(
                        "removal-rate",
                        "A cut {width} wide and {depth} deep at {feed} removes",
                        List.of(WIDTH, DEPTH, FEED),
                        List.of("rate cm³/min"),
                        asked -> Answered.of(Answer.of(
                                "rate",
                                SpeedAndFeed.REMOVAL_RATE.of(
                                        asked.value("width"), asked.value("depth"), asked.value("feed")),
                                Unit.CM3_PER_MIN))),
                new Figure(
                        "tool-life",
                        "An edge that lives one minute at {constant}, with the exponent {exponent}, lives at"
                                + " {cutting-speed}",
                        List.of(
                                CUTTING_SPEED,
                                measure("exponent", Measure.RATIO).upTo(1),
                                measure("constant", Measure.CUTTING_SPEED)),
                        List.of("life min"),
                        asked -> Answered.of(Answer.of(
                                "life",
                                ToolLife.LIFE.of(
                                        asked.value("cutting-speed"), asked.value("exponent"), asked.value("constant")),
                                Unit.MINUTE))),
                new Figure(
                        "surface-roughness",
                        "A nose radius of {nose-radius} fed by {feed} leaves",
                        List.of(measure("feed", Measure.FEED_PER_REV), measure("nose-radius", Measure.LENGTH)),
                        List.of("peak-to-valley µm", "mean-roughness µm"),
                        MotionFigures::roughness),
                new Figure(
                        "cusp",
                        "A ball of {ball-diameter} in passes {pass-spacing} apart leaves ridges of",
                        List.of(measure("ball-diameter", Measure.LENGTH), measure("pass-spacing", Measure.LENGTH)),
                        List.of("height µm"),
                        MotionFigures::cusp));
    }

    private static Answered chip(Asked asked) {
        Given feed = asked.value("feed-per-tooth");
        Given width = asked.value("width");
        Given diameter = asked.value("diameter");
        Given lead = asked.value("lead-angle");
        requireWithin(asked);
        Worked largest = ChipThickness.LARGEST.of(feed, width, diameter, lead);
        Worked mean = ChipThickness.MEAN.of(feed, width, diameter, lead);
        Given wanted = Given.of("chip as thick as the feed per tooth", feed.inside(), Unit.MM, "the feed per tooth");
        Worked full = ChipThickness.FEED_FOR_FULL_CHIP.of(wanted, width, diameter, lead);
        return Answered.of(
                Answer.of("largest", largest, Unit.MM),
                Answer.of("mean", mean, Unit.MM),
                Answer.of("feed-for-full-chip", full, Unit.MM));
    }

    /** A cut is at most as wide as its cutter. */
    static void requireWithin(Asked asked) {
        if (asked.number("width") > asked.number("diameter") * (1 + 1e-9)) {
            throw Refusal.of(
                    "width",
                    Input.plain(asked.number("width")) + " mm is wider than the cutter; accepted: above 0 up to its"
                            + " diameter, " + Input.plain(asked.number("diameter")) + " mm.");
        }
    }

    private static Answered roughness(Asked asked) {
        Worked height = Surface.PEAK_TO_VALLEY.of(asked.value("feed"), asked.value("nose-radius"));
        return Answered.of(
                Answer.of("peak-to-valley", height, Unit.UM),
                Answer.of("mean-roughness", Surface.MEAN_ROUGHNESS.of(height), Unit.UM));
    }

    private static Answered cusp(Asked asked) {
        if (asked.number("pass-spacing") > asked.number("ball-diameter")) {
            throw Refusal.of("pass-spacing", "it is wider than the ball; accepted: above 0 up to the ball diameter.");
        }
        return Answered.of(Answer.of(
                "height", Surface.CUSP.of(asked.value("ball-diameter"), asked.value("pass-spacing")), Unit.UM));
    }
}
