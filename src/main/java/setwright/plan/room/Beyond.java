package setwright.plan.room;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Move;
import setwright.geometry.Point3;
import setwright.geometry.Profile;
import setwright.geometry.Role;
import setwright.geometry.Section;
import setwright.geometry.ToolPath;
import setwright.geometry.ToolStack;
import setwright.plan.part.MilledDepth;
import setwright.plan.part.OperationStage;
import setwright.shop.Holder;
import setwright.shop.Machine;

/** What goes over the work with a tool without being of it: the head round its quill, the screw under a saw. */
final class Beyond {
    /** The head begins so far over the spindle nose, mm (common practice). */
    private static final double NOSE_LENGTH = 20;

    /** How high the casting is counted, mm: further up nothing stands. */
    private static final double HEAD_HEIGHT = 200;

    /** The casting in diameters of its quill (common practice). */
    private static final double HEAD = 1.5;

    private Beyond() {}

    static ToolStack head(Machine machine, OperationStage on) {
        double radius = HEAD * machine.quillDiameter().inside() / 2;
        double foot = on.projection() + NOSE_LENGTH;
        return ToolStack.of(new Section("head", Role.HEAD, Profile.cylinder(foot, foot + HEAD_HEIGHT, radius)));
    }

    /** The head goes up and down with the knee alone: while the quill is fed it stays at the height of the knee. */
    static ToolPath way(OperationStage on, boolean byQuill, double kneeHeight) {
        if (!byQuill) {
            return on.path();
        }
        double z = kneeHeight - on.projection();
        List<Move> level = on.path().moves().stream()
                .map(move -> new Move(move.kind(), move.plan(), z, z))
                .toList();
        return new ToolPath(Point3.of(on.path().start().plan(), z), level);
    }

    static Optional<ToolStack> screw(Holder holder) {
        return holder.style() == Holder.Style.STUB_ARBOR
                ? Optional.of(ToolStack.of(new Section(
                        "screw of " + holder.name(),
                        Role.COLLET_NUT,
                        Profile.cylinder(
                                -MilledDepth.ARBOR_SCREW,
                                0,
                                holder.noseDiameter().inside() / 2))))
                : Optional.empty();
    }
}
