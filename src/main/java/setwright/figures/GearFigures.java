package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;

import java.util.List;
import java.util.Optional;
import setwright.location.gear.InvoluteCutters;
import setwright.location.gear.ToothThickness;
import setwright.location.indexing.GearTrains;
import setwright.location.indexing.HelicalLead;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Rational;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.quantity.gear.GearSizes;

/** Gears that are cut with form cutters, and the change gears of a helix. */
final class GearFigures {
    private static final double INCH = 25.4;
    private static final int WHOLE_RATIO = 360;
    private static final Input MODULE = measure("module", Measure.LENGTH).maybe("the diametral pitch is given");
    private static final Input PITCH = measure("diametral-pitch", Measure.RATIO).maybe("the module is given");
    private static final Input PRESSURE =
            measure("pressure-angle", Measure.ANGLE).within(10, 30);

    private GearFigures() {}

    static List<Figure> all() {
        return List.of(cutter(), overPins(), span(), helicalGear(), lead());
    }

    private static Figure cutter() {
        return new Figure(
                "gear-cutter",
                "The cutter for a gear of {teeth} teeth is",
                List.of(
                        count("teeth"),
                        MODULE,
                        PITCH,
                        PRESSURE.maybe("14.5° with a diametral pitch, 20° with a module")),
                List.of("cutter-number", "half-number", "outside-diameter mm", "whole-depth mm"),
                asked -> sized(asked, asked.count("teeth"), GearSizes.OUTSIDE.of(asked.value("teeth"), module(asked))));
    }

    /** Cutter and depth of a gear whose cutter is chosen by so many teeth. */
    private static Answered sized(Asked asked, double teeth, Worked outside) {
        InvoluteCutters.Numbering numbering =
                asked.has("module") ? InvoluteCutters.Numbering.MODULE : InvoluteCutters.Numbering.DIAMETRAL_PITCH;
        if (teeth < InvoluteCutters.LEAST_TEETH) {
            throw Refusal.of(
                    "teeth",
                    "the cutter sets begin at " + InvoluteCutters.LEAST_TEETH
                            + "; fewer teeth are generated, not cut with a form cutter.");
        }
        double pitch = asked.has("module") ? 0 : asked.number("diametral-pitch");
        double usual = Unit.DEG.toInside(asked.has("module") ? 20 : 14.5);
        Worked depth =
                GearSizes.depth(asked.numberOr("pressure-angle", usual), pitch).of(module(asked));
        int number = InvoluteCutters.number(teeth, numbering);
        Optional<Double> half = InvoluteCutters.half(teeth, numbering);
        return Answered.of(
                        new Answer.Count("cutter-number", number),
                        half.<Answer>map(found -> Answer.of("half-number", found, Unit.NONE))
                                .orElse(new Answer.Nothing("half-number", "")),
                        Answer.of("outside-diameter", outside, Unit.MM),
                        Answer.of("whole-depth", depth, Unit.MM))
                .noting("the depth that is engraved on the cutter goes before this one")
                .showing(InvoluteCutters.NUMBER.of(
                        number, "number " + number, Given.of("teeth for the cutter", teeth, Unit.NONE, "")));
    }

    private static Value module(Asked asked) {
        asked.requireOneOf("module", "diametral-pitch");
        if (asked.has("module") && asked.has("diametral-pitch")) {
            throw Refusal.of("module", "it stands beside diametral-pitch; give one of them.");
        }
        return asked.has("module")
                ? asked.value("module")
                : Given.of("module", INCH / asked.number("diametral-pitch"), Unit.MM, "1 in / diametral pitch");
    }

    private static Figure overPins() {
        return new Figure(
                "over-pins",
                "A gear of {teeth} teeth measures over two pins",
                List.of(
                        count("teeth").from(6),
                        MODULE,
                        PITCH,
                        PRESSURE.or("20 °"),
                        measure("pin", Measure.LENGTH).maybe("1.728 times the module")),
                List.of("over-pins mm", "pin mm"),
                asked -> {
                    Value module = module(asked);
                    Value pin = asked.has("pin") ? asked.value("pin") : ToothThickness.PIN.of(module);
                    double over = ToothThickness.overPins(
                            module.inside(), asked.count("teeth"), asked.number("pressure-angle"), pin.inside());
                    return Answered.of(
                                    Answer.of(
                                            "over-pins",
                                            ToothThickness.OVER_PINS.of(
                                                    over,
                                                    "",
                                                    asked.value("teeth"),
                                                    module,
                                                    asked.value("pressure-angle"),
                                                    pin),
                                            Unit.MM),
                                    Answer.of("pin", pin.inside(), Unit.MM))
                            .noting("without play between the teeth; what the drawing takes off for it comes off here");
                });
    }

    private static Figure span() {
        return new Figure(
                "span",
                "A gear of {teeth} teeth measures over a span",
                List.of(
                        count("teeth").from(6),
                        MODULE,
                        PITCH,
                        PRESSURE.or("20 °"),
                        count("spanned").upTo(500).maybe("those near the pitch circle")),
                List.of("span mm", "spanned"),
                asked -> {
                    int usual = ToothThickness.spanTeeth(asked.count("teeth"), asked.number("pressure-angle"));
                    Given spanned = asked.valueOr(
                            "spanned", Given.of("teeth in the span", usual, Unit.NONE, "near the pitch circle"));
                    Worked span = ToothThickness.SPAN.of(
                            module(asked), asked.value("pressure-angle"), spanned, asked.value("teeth"));
                    return Answered.of(
                            Answer.of("span", span, Unit.MM),
                            new Answer.Count("spanned", Math.round(spanned.inside())));
                });
    }

    private static Figure helicalGear() {
        return new Figure(
                "helical-gear",
                "A gear of {teeth} teeth with a helix of {helix} wants",
                List.of(
                        count("teeth"),
                        measure("helix", Measure.ANGLE).within(1, 60),
                        MODULE,
                        PITCH,
                        PRESSURE.maybe("14.5° with a diametral pitch, 20° with a module")),
                List.of(
                        "cutter-number",
                        "half-number",
                        "outside-diameter mm",
                        "whole-depth mm",
                        "pitch-diameter mm",
                        "lead mm"),
                GearFigures::helical);
    }

    private static Answered helical(Asked asked) {
        Value module = module(asked);
        Worked pitch = GearSizes.HELICAL_PITCH.of(asked.value("teeth"), module, asked.value("helix"));
        Worked virtual = GearSizes.VIRTUAL_HELICAL.of(asked.value("teeth"), asked.value("helix"));
        Worked outside = GearSizes.HELICAL_OUTSIDE.of(pitch, module);
        Answered sized = sized(asked, virtual.inside(), outside);
        Answered more = Answered.of(
                Answer.of("pitch-diameter", pitch, Unit.MM),
                Answer.of("lead", GearSizes.LEAD.of(pitch, asked.value("helix")), Unit.MM));
        return sized.with(more)
                .showing(virtual)
                .noting("divide by the teeth themselves; ask helical-lead for the gears");
    }

    private static Figure lead() {
        return new Figure(
                "helical-lead",
                "A lead of {lead} on a table screw of {screw} is geared by",
                List.of(
                        measure("lead", Measure.LENGTH),
                        measure("screw", Measure.LENGTH).upTo(50),
                        count("ratio").upTo(WHOLE_RATIO).or("40"),
                        words("gears").or("24,24,28,32,40,44,48,56,64,72,86,100"),
                        measure("diameter", Measure.LENGTH).maybe("no swivel is asked")),
                List.of("gears", "built mm", "error mm", "swivel °"),
                GearFigures::lead);
    }

    private static Answered lead(Asked asked) {
        Rational wanted = Rational.asWritten(asked.number("lead"));
        Rational screw = Rational.asWritten(asked.number("screw"));
        HelicalLead.Lead found =
                HelicalLead.nearest(wanted, screw.times(asked.count("ratio")), GearTrains.of(HeadInputs.gears(asked)));
        Worked built = HelicalLead.NEAREST.of(
                found.lead().nearest(),
                "gears from the screw to the worm: " + found.train().gears(),
                asked.value("lead"),
                HelicalLead.MACHINE_LEAD.of(asked.value("ratio"), asked.value("screw")));
        return Answered.of(
                        new Answer.Counts("gears", found.train().gears()),
                        Answer.of("built", built, Unit.MM),
                        Answer.of("error", found.lead().minus(wanted).nearest(), Unit.MM),
                        asked.has("diameter")
                                ? Answer.of("swivel", HelicalLead.SWIVEL.of(asked.value("diameter"), built), Unit.DEG)
                                : new Answer.Nothing("swivel", "°"))
                .noting("gears from the table screw to the worm, the second and third on one stud; an idler turns the"
                        + " hand of the helix");
    }
}
