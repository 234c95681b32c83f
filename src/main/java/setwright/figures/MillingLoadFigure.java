package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.cutting.CuttingPower;
import setwright.cutting.Direction;
import setwright.cutting.Kienzle;
import setwright.cutting.KienzleForce;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingCutter;
import setwright.cutting.MillingForce;
import setwright.cutting.MillingLoad;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.Material;

/** The load of a milling cut over the turn. */
final class MillingLoadFigure {
    private static final double STEEPEST = 80;

    static final Figure FIGURE = new Figure(
            "milling-load",
            "{teeth} teeth of {diameter}, {width} wide and {depth} deep in the cut ({direction}), with"
                    + " {feed-per-tooth} at {speed} take",
            List.of(
                    LoadFigures.KC11.maybe("that of the material counts"),
                    LoadFigures.MC.maybe("that of the material counts"),
                    LoadFigures.MATERIAL,
                    measure("width", Measure.LENGTH),
                    measure("depth", Measure.LENGTH),
                    measure("diameter", Measure.LENGTH).upTo(1000),
                    count("teeth").upTo(200),
                    measure("feed-per-tooth", Measure.FEED_PER_TOOTH),
                    measure("speed", Measure.SPINDLE_SPEED),
                    measure("helix", Measure.ANGLE).within(-STEEPEST, STEEPEST).or("0 °"),
                    measure("radial-ratio", Measure.RATIO).from(0).or("0.3"),
                    measure("axial-ratio", Measure.RATIO).any().maybe("the tangent of the helix"),
                    choice("direction", "climb", "conventional", "slot")),
            List.of(
                    "mean-power kW",
                    "mean-torque N·m",
                    "peak-tangential N",
                    "peak-resultant N",
                    "mean-feed-force N",
                    "mean-cross-force N",
                    "mean-axial-force N"),
            asked -> new MillingLoadFigure(asked).answer());

    private final Asked asked;
    private final Given kc11;
    private final Given mc;

    private MillingLoadFigure(Asked asked) {
        this.asked = asked;
        if (asked.has("kc11") != asked.has("mc")) {
            throw Refusal.of(asked.has("kc11") ? "mc" : "kc11", "it is missing; kc11 and mc belong together.");
        }
        asked.requireOneOf("kc11", "material");
        kc11 = asked.has("kc11") ? asked.value("kc11") : kc11(asked.material());
        mc = asked.has("mc") ? asked.value("mc") : mc(asked.material());
        MotionFigures.requireWithin(asked);
    }

    private static Given kc11(Material material) {
        return LoadFigures.ofMaterial(
                material, "specific cutting force at 1 mm", material.kc11().inside(), Unit.N_PER_MM2, "kc11");
    }

    private static Given mc(Material material) {
        return LoadFigures.ofMaterial(
                material, "exponent of the specific force", material.mc().inside(), Unit.NONE, "mc");
    }

    private MillingLoad load() {
        MillingCutter cutter =
                MillingCutter.square(asked.number("diameter"), asked.count("teeth"), asked.number("helix"));
        Direction direction = switch (asked.words("direction")) {
            case "climb" -> Direction.CLIMB;
            case "conventional" -> Direction.CONVENTIONAL;
            default -> Direction.SLOT;
        };
        MillingCut cut = MillingCut.of(
                cutter,
                direction,
                new MillingCut.Section(asked.number("width"), asked.number("depth")),
                asked.number("feed-per-tooth"));
        KienzleForce plain = KienzleForce.of(new Kienzle(kc11.inside(), mc.inside()), cutter);
        double radial = asked.number("radial-ratio");
        double axial = asked.numberOr("axial-ratio", plain.axialRatio());
        return MillingForce.of(cut, new KienzleForce(plain.material(), radial, axial))
                .load();
    }

    private Answered answer() {
        MillingLoad load = load();
        Worked torque = worked("mean-torque", load.meanTorque(), Unit.N_M, "mean over a turn");
        Worked power = CuttingPower.POWER.of(torque, asked.value("speed"));
        return Answered.of(
                Answer.of("mean-power", power, Unit.KW),
                Answer.of("mean-torque", torque, Unit.N_M),
                force(
                        "peak-tangential",
                        load.peakTangential(),
                        "all teeth together, largest with a tooth at "
                                + degrees(load.peaks().torque().angle())),
                force("peak-resultant", load.peakResultant(), "largest with a tooth at " + degrees(load.peakAngle())),
                force("mean-feed-force", load.mean().feed(), "mean over a turn, along the feed"),
                force("mean-cross-force", load.mean().cross(), "mean over a turn, across the feed"),
                force("mean-axial-force", load.mean().axial(), "mean over a turn, along the spindle"));
    }

    private static String degrees(double angle) {
        return Math.round(StrictMath.toDegrees(angle)) + "°";
    }

    private Answer force(String name, double newtons, String deciding) {
        return Answer.of(name, worked(name, newtons, Unit.N, deciding), Unit.N);
    }

    private Worked worked(String name, double inside, Unit unit, String deciding) {
        List<Value> from = List.of(
                kc11,
                mc,
                asked.value("width"),
                asked.value("depth"),
                asked.value("diameter"),
                asked.value("teeth"),
                asked.value("feed-per-tooth"),
                asked.value("helix"),
                asked.value("radial-ratio"));
        return new Worked(name, inside, unit, MillingForce.MEAN_TORQUE, from, deciding);
    }
}
