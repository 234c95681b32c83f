package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.location.angle.CompoundAngle;
import setwright.location.angle.EndTeeth;
import setwright.location.angle.HeadTilt;
import setwright.quantity.Measure;
import setwright.quantity.Procedure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** Work, head and dividing head set at an angle. */
final class TiltFigures {
    private static final double RIGHT = 90;

    private TiltFigures() {}

    static List<Figure> all() {
        return List.of(compound(), head(), endTeeth());
    }

    private static Figure compound() {
        return new Figure(
                "compound-angle",
                "Angles of {first} and {second} in two views are",
                List.of(
                        measure("first", Measure.ANGLE).within(-89.9, 89.9),
                        measure("second", Measure.ANGLE).within(-89.9, 89.9),
                        choice("of", "face", "edge", "hole").or("face")),
                List.of("turn °", "tilt °"),
                TiltFigures::compounded);
    }

    private static Answered compounded(Asked asked) {
        double first = asked.number("first");
        double second = asked.number("second");
        CompoundAngle angle = switch (asked.words("of")) {
            case "edge" -> CompoundAngle.corner(first, second);
            case "hole" -> CompoundAngle.hole(first, second);
            default -> CompoundAngle.plate(first, second);
        };
        Procedure rule = switch (asked.words("of")) {
            case "edge" -> CompoundAngle.CORNER;
            case "hole" -> CompoundAngle.HOLE;
            default -> CompoundAngle.PLATE;
        };
        String from = switch (asked.words("of")) {
            case "edge" -> "turn is from the line that the first face makes with the floor";
            case "hole" -> "turn is from the plane of the second view";
            default -> "turn the work about the upright from the plane of the first view, then tilt it";
        };
        Worked tilt = rule.of(angle.tilt(), "", asked.value("first"), asked.value("second"));
        return Answered.of(Answer.of("turn", angle.turn(), Unit.DEG), Answer.of("tilt", tilt, Unit.DEG))
                .noting(from + "; draw it before it is set");
    }

    private static Figure head() {
        return new Figure(
                "head-tilt",
                "A head tilted by {angle} goes for {depth} of depth",
                List.of(measure("angle", Measure.ANGLE).within(0, 89), measure("depth", Measure.LENGTH)),
                List.of("quill mm", "across mm"),
                asked -> {
                    Worked quill = HeadTilt.QUILL.of(asked.value("depth"), asked.value("angle"));
                    return Answered.of(
                                    Answer.of("quill", quill, Unit.MM),
                                    Answer.of("across", HeadTilt.ACROSS.of(quill, asked.value("angle")), Unit.MM))
                            .noting("the point walks by across towards the side to which the spindle's foot leans; the"
                                    + " zero of the table is found with the head as tilted");
                });
    }

    private static Figure endTeeth() {
        return new Figure(
                "end-teeth",
                "For {teeth} teeth on an end with a cutter of {cutter-angle} the dividing head is raised",
                List.of(
                        count("teeth").from(5),
                        measure("cutter-angle", Measure.ANGLE).within(1, RIGHT - 1)),
                List.of("elevation °"),
                asked -> Answered.of(Answer.of(
                                "elevation",
                                EndTeeth.ELEVATION.of(asked.value("teeth"), asked.value("cutter-angle")),
                                Unit.DEG))
                        .noting("the lands come out even; few heads go beyond 5 ° past upright"));
    }
}
