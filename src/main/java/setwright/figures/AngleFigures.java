package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.list;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.location.angle.AngleStack;
import setwright.location.angle.HeadTilt;
import setwright.location.angle.SineBar;
import setwright.location.angle.Taper;
import setwright.location.gauge.GaugeSet;
import setwright.location.gauge.GaugeStack;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** Angles and heights that are built up, and angles that are off. */
final class AngleFigures {
    private static final Input SETS =
            choice("set", GaugeSet.known().stream().map(GaugeSet::name).toArray(String[]::new));

    private AngleFigures() {}

    static List<Figure> all() {
        return List.of(blocks(), sineBar(), stack(), taper(), tram());
    }

    private static Figure blocks() {
        return new Figure(
                "angle-blocks",
                "An angle of {angle} is built of the blocks",
                List.of(
                        measure("angle", Measure.ANGLE).upTo(360),
                        list("set", Measure.ANGLE).above().or("1/4,1/2,1,2,3,4,5,10,15,20,25,30"),
                        choice("take-away", "yes", "no").or("yes")),
                List.of("blocks [{size, sign}]", "built °", "error °"),
                AngleFigures::built);
    }

    private static Answered built(Asked asked) {
        List<Long> sizes = asked.list("set").stream()
                .map(size -> AngleStack.ofDegrees(Unit.DEG.fromInside(size.inside())))
                .toList();
        long all = sizes.stream().mapToLong(Long::longValue).sum();
        long wanted = AngleStack.ofDegrees(Unit.DEG.fromInside(asked.number("angle")));
        if (wanted > all) {
            throw Refusal.of(
                    "angle",
                    "all blocks together make " + Input.plain((double) all / AngleStack.ofDegrees(1))
                            + " °; accepted: up to that.");
        }
        AngleStack stack = AngleStack.nearest(wanted, sizes, asked.is("take-away", "yes"));
        if (stack.blocks().isEmpty()) {
            throw Refusal.of("angle", "it is smaller than anything that these blocks make.");
        }
        Worked built = AngleStack.STACK.of(
                Math.toRadians(stack.builtDegrees()), stack.blocks().size() + " blocks", asked.value("angle"));
        List<List<Answer>> rows = stack.blocks().stream()
                .map(block -> List.<Answer>of(
                        Answer.of("size", Math.toRadians(block.degrees()), Unit.DEG),
                        new Answer.Count("sign", block.sign())))
                .toList();
        Answered answered = Answered.of(
                new Answer.Rows("blocks", rows),
                Answer.of("built", built, Unit.DEG),
                Answer.of("error", Math.toRadians(stack.errorDegrees()), Unit.DEG));
        return stack.error() == 0
                ? answered
                : answered.noting("these blocks do not make it exactly; this is the nearest they make");
    }

    private static Figure sineBar() {
        return new Figure(
                "sine-bar",
                "A sine bar of {length} is raised for {angle} by",
                List.of(measure("angle", Measure.ANGLE).upTo(90), measure("length", Measure.LENGTH)),
                List.of("height mm"),
                AngleFigures::raised);
    }

    private static Answered raised(Asked asked) {
        double angle = asked.number("angle");
        String complement = Input.plain(Math.round((90 - Unit.DEG.fromInside(angle)) * 1e7) / 1e7) + " °";
        if (angle > SineBar.STEEPEST * (1 + 1e-12)) {
            throw Refusal.of(
                    "angle",
                    "a sine bar is not set above 60 °: set its complement, " + complement
                            + ", and turn the work a quarter; accepted: above 0 up to 60 °.");
        }
        Answered answered = Answered.of(
                Answer.of("height", SineBar.HEIGHT.of(asked.value("length"), asked.value("angle")), Unit.MM));
        return angle > SineBar.COMPLEMENT * (1 + 1e-12)
                ? answered.noting("above 45 ° an error of the stack tells more and more: set the complement, "
                        + complement + ", and turn the work a quarter")
                : answered;
    }

    private static Figure stack() {
        return new Figure(
                "gauge-stack",
                "{height} is built of the {set} set with",
                List.of(
                        measure("height", Measure.LENGTH).upTo(10_000),
                        SETS,
                        measure("wear-blocks", Measure.LENGTH).from(0).maybe("none")),
                List.of("blocks [mm]", "built mm", "error mm"),
                AngleFigures::stacked);
    }

    private static Answered stacked(Asked asked) {
        GaugeSet set = GaugeSet.named(asked.words("set")).orElseThrow();
        double wear = 2 * asked.numberOr("wear-blocks", 0);
        GaugeStack stack;
        try {
            stack = GaugeStack.of(asked.number("height") - wear, set);
        } catch (IllegalArgumentException impossible) {
            throw Refusal.of("height", String.valueOf(impossible.getMessage()));
        }
        double height = stack.built() + wear;
        Worked built = GaugeStack.STACK.of(height, stack.blocks().size() + " blocks", asked.value("height"));
        double error = java.math.BigDecimal.valueOf(height)
                .subtract(java.math.BigDecimal.valueOf(asked.number("height")))
                .setScale(9, java.math.RoundingMode.HALF_EVEN)
                .doubleValue();
        Answered answered = Answered.of(
                new Answer.Numbers("blocks", stack.blocks(), Unit.MM),
                Answer.of("built", built, Unit.MM),
                Answer.of("error", error, Unit.MM));
        return wear == 0 ? answered : answered.noting("with a wear block at either end, which are not listed");
    }

    private static Figure taper() {
        return new Figure(
                "taper",
                "A taper from {large} to {small} over {length} is",
                List.of(
                        measure("small", Measure.LENGTH).from(0),
                        measure("large", Measure.LENGTH),
                        measure("length", Measure.LENGTH)),
                List.of("taper-per-unit", "half-angle °"),
                asked -> {
                    if (asked.number("small") > asked.number("large")) {
                        throw Refusal.of("small", "it is larger than large; accepted: from 0 up to large.");
                    }
                    Worked each = Taper.PER_UNIT.of(asked.value("large"), asked.value("small"), asked.value("length"));
                    return Answered.of(
                            Answer.of("taper-per-unit", each, Unit.NONE),
                            Answer.of("half-angle", Taper.HALF_ANGLE.of(each), Unit.DEG));
                });
    }

    private static Figure tram() {
        return new Figure(
                "tram",
                "A head that reads {reading} over a sweep of {sweep} is off by",
                List.of(
                        measure("reading", Measure.LENGTH).from(0),
                        measure("sweep", Measure.LENGTH),
                        measure("cutter-diameter", Measure.LENGTH).maybe("no dish is worked out"),
                        measure("width", Measure.LENGTH).maybe("as wide as the cutter"),
                        measure("depth", Measure.LENGTH).maybe("no lean is worked out")),
                List.of("tilt °", "dish mm", "hole-lean mm"),
                AngleFigures::off);
    }

    private static Answered off(Asked asked) {
        Given reading = asked.value("reading");
        Given sweep = asked.value("sweep");
        return Answered.of(
                Answer.of("tilt", HeadTilt.TILT.of(reading, sweep), Unit.DEG),
                asked.has("cutter-diameter") ? dish(asked) : new Answer.Nothing("dish", "mm"),
                asked.has("depth")
                        ? Answer.of("hole-lean", HeadTilt.LEAN.of(asked.value("depth"), reading, sweep), Unit.MM)
                        : new Answer.Nothing("hole-lean", "mm"));
    }

    private static Answer dish(Asked asked) {
        Given cutter = asked.value("cutter-diameter");
        Given width = asked.valueOr("width", Given.of("width", cutter.inside(), Unit.MM, "as wide as the cutter"));
        if (width.inside() > cutter.inside() * (1 + 1e-9)) {
            throw Refusal.of("width", "it is wider than the cutter; accepted: above 0 up to its diameter.");
        }
        Given within = Given.of("width", Math.min(width.inside(), cutter.inside()), Unit.MM, width.origin());
        return Answer.of(
                "dish", HeadTilt.DISH.of(cutter, within, asked.value("reading"), asked.value("sweep")), Unit.MM);
    }
}
