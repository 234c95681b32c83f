package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.holding.RoundForms;
import setwright.location.key.KeySeat;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** Round work: in a vee, on a slot, with the seat of a key. */
final class RoundFigures {
    private static final Input DIAMETER = measure("diameter", Measure.LENGTH);

    private RoundFigures() {}

    static List<Figure> all() {
        return List.of(vee(), slot(), seat());
    }

    private static Figure vee() {
        return new Figure(
                "v-block-height",
                "A round of {diameter} lies in a vee at",
                List.of(
                        DIAMETER,
                        measure("v-angle", Measure.ANGLE).within(30, 170).or("90 °")),
                List.of("centre-above-apex mm", "top-above-apex mm"),
                asked -> {
                    Worked centre = RoundForms.OVER_VERTEX.of(asked.value("diameter"), asked.value("v-angle"));
                    return Answered.of(
                            Answer.of("centre-above-apex", centre, Unit.MM),
                            Answer.of(
                                    "top-above-apex",
                                    RoundForms.TOP_OVER_VERTEX.of(centre, asked.value("diameter")),
                                    Unit.MM));
                });
    }

    private static Figure slot() {
        return new Figure(
                "shaft-on-slot",
                "A round of {diameter} lies on a slot of {slot-width} at",
                List.of(
                        DIAMETER,
                        measure("slot-width", Measure.LENGTH),
                        measure("edge-chamfer", Measure.LENGTH).from(0).or("0 mm"),
                        measure("slot-depth", Measure.LENGTH).maybe("its floor is not looked at")),
                List.of("centre-above-table mm", "lowest-below-table mm", "clears-floor"),
                RoundFigures::onSlot);
    }

    private static Answered onSlot(Asked asked) {
        if (asked.number("slot-width") >= asked.number("diameter")) {
            throw Refusal.of("slot-width", "the round falls through; accepted: below its diameter.");
        }
        Worked centre = centre(asked);
        Worked lowest = RoundForms.LOWEST.of(asked.value("diameter"), centre);
        return Answered.of(
                Answer.of("centre-above-table", centre, Unit.MM),
                Answer.of("lowest-below-table", lowest, Unit.MM),
                asked.has("slot-depth")
                        ? new Answer.Flag("clears-floor", lowest.inside() < asked.number("slot-depth"))
                        : new Answer.Nothing("clears-floor", ""));
    }

    private static Worked centre(Asked asked) {
        Given diameter = asked.value("diameter");
        Given width = asked.value("slot-width");
        Given chamfer = asked.value("edge-chamfer");
        return switch (RoundForms.bearing(diameter.inside(), width.inside(), chamfer.inside())) {
            case UPPER_EDGES ->
                RoundForms.OVER_SLOT.of(
                        diameter,
                        Given.of(
                                "width from edge to edge",
                                width.inside() + 2 * chamfer.inside(),
                                Unit.MM,
                                "slot width and both chamfers"));
            case FLANKS -> RoundForms.OVER_FLANKS.of(diameter, width, chamfer);
            case LOWER_EDGES -> RoundForms.OVER_LOWER_EDGES.of(diameter, width, chamfer);
        };
    }

    private static Figure seat() {
        return new Figure(
                "key-seat",
                "A seat {width} wide and {depth} deep in a shaft of {diameter} measures",
                List.of(
                        DIAMETER,
                        measure("width", Measure.LENGTH),
                        measure("depth", Measure.LENGTH),
                        choice("from", "side", "crown").or("side")),
                List.of("rise-of-arc mm", "depth-from-top mm", "over-opposite-side mm"),
                RoundFigures::seat);
    }

    private static Answered seat(Asked asked) {
        if (asked.number("width") >= asked.number("diameter")) {
            throw Refusal.of("width", "the seat is as wide as the shaft; accepted: below its diameter.");
        }
        Given shaft = asked.value("diameter");
        Worked rise = KeySeat.RISE_OF_ARC.of(shaft, asked.value("width"));
        boolean side = asked.is("from", "side");
        Answer fromTop = side
                ? Answer.of("depth-from-top", KeySeat.FROM_TOP.of(asked.value("depth"), rise), Unit.MM)
                : Answer.of("depth-from-top", asked.number("depth"), Unit.MM);
        Worked over = KeySeat.OVER_OPPOSITE.of(
                shaft, side ? KeySeat.FROM_TOP.of(asked.value("depth"), rise) : asked.value("depth"));
        if (over.inside() <= 0) {
            throw Refusal.of("depth", "the seat goes through the shaft; accepted: a depth below its diameter.");
        }
        Answered answered = Answered.of(
                Answer.of("rise-of-arc", rise, Unit.MM), fromTop, Answer.of("over-opposite-side", over, Unit.MM));
        return !side && asked.number("depth") < rise.inside()
                ? answered.noting(
                        "the seat is not yet as wide as the cutter: the depth is less than the rise of the arc")
                : answered;
    }
}
