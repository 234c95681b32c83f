package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.holding.StrapGrip;
import setwright.holding.StrapGrip.Bearing;
import setwright.holding.StrapGrip.Pad;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.shop.MagneticChuck;

/**
 * The balance of a part on a magnetic chuck: its pull over the face that lies on it, as four equal pulls in the middles
 * of the face's quarters. Only steel and iron are pulled; stainless steel is counted as not (common practice).
 */
final class MagnetBalance {
    private MagnetBalance() {}

    static Optional<Balance> of(String setUp, DrawnDevice device, SetUpStage stage, Rows rows) {
        return rows.row(device.device().value(), MagneticChuck.class)
                .filter(chuck -> pulled(rows))
                .map(chuck -> on(setUp, chuck, stage, rows));
    }

    private static boolean pulled(Rows rows) {
        return switch (rows.material().group()) {
            case P, K, H -> true;
            case M, N, S -> false;
        };
    }

    private static Balance on(String setUp, MagneticChuck chuck, SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        double length = Math.min(heights.length(), chuck.length().inside());
        double depth = Math.min(heights.depth(), chuck.width().inside());
        double pull = chuck.pull().inside() * length * depth;
        List<Pad> pads = new ArrayList<>();
        List<Bearing> bearings = new ArrayList<>();
        for (int right : List.of(-1, 1)) {
            for (int back : List.of(-1, 1)) {
                Vector at = new Vector(
                        heights.length() / 2 + right * length / 4, heights.depth() / 2 + back * depth / 4, 0);
                String where = (back < 0 ? "front " : "back ") + (right < 0 ? "left" : "right");
                pads.add(new Pad("pull, " + where, at, Vector.UP.times(-1), pull / 4));
                bearings.add(Bearing.across("chuck face, " + where, at, Vector.UP));
            }
        }
        bearings.addAll(Bearings.face(heights));
        StrapGrip grip = new StrapGrip(pads, bearings, BearingFriction.onSteel(rows));
        Load weight = Balance.weight(stage, rows);
        return Balance.of(
                outlook -> grip.grip(outlook, weight),
                Given.of("pull of the chuck", pull, Unit.KN, setUp + "/holding/device"));
    }
}
