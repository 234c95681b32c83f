package setwright.plan.cut;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingLoad;
import setwright.job.Operation;
import setwright.plan.cut.SurfaceLeft.Surface;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.rigidity.MountedTool;
import setwright.rigidity.SpringBand;
import setwright.rigidity.WallLeft;

/** What the spring of a milling cutter leaves on walls and faces, by the last pass where there is one. */
final class SurfacesLeft {
    /** A spring pass that would take less than this cuts nothing, mm (common practice). */
    private static final double NOTHING_LEFT = 0.002;

    private final CutQuestion question;
    private final MillingCut rough;
    private final LastPass last;
    private final Mounting mounting;

    private SurfacesLeft(CutQuestion question, MillingCut rough) {
        this.question = question;
        this.rough = rough;
        last = LastPass.of(question, rough);
        mounting = question.mounting();
    }

    static List<SurfaceLeft> of(CutQuestion question, OperationCut cut) {
        MillingLoad load = cut.milling();
        if (question.operation().kind() == Operation.Kind.BORE) {
            return BoreLeft.of(question, cut).stream().toList();
        }
        return load == null ? List.of() : of(question, load.cut());
    }

    static List<SurfaceLeft> of(CutQuestion question, MillingCut rough) {
        return new SurfacesLeft(question, rough).all();
    }

    private List<SurfaceLeft> all() {
        return switch (question.operation().kind()) {
            case STEP, PROFILE, POCKET -> walls();
            case SLOT, KEYSEAT -> last.slot() ? slot() : walls();
            case FACE -> List.of(face());
            default -> List.of();
        };
    }

    private List<SurfaceLeft> walls() {
        List<SurfaceLeft> found = new ArrayList<>();
        SurfaceLeft finished = wall(Surface.WALL, last.cut(), last.sprung());
        found.add(finished);
        if (last.finishing()) {
            found.add(wall(Surface.ROUGHED_WALL, last.roughing(), false));
        }
        return found;
    }

    private List<SurfaceLeft> slot() {
        return List.of(
                left(Surface.CONVENTIONAL_SIDE, last.cut(), WallLeft.CONVENTIONAL),
                left(Surface.CLIMB_SIDE, last.cut(), WallLeft.CLIMB));
    }

    /** A spring pass cuts what the last one left on; what was taken too much stays taken. */
    private SurfaceLeft wall(Surface surface, MillingCut cut, boolean sprung) {
        SurfaceLeft first = left(surface, cut, last.wall());
        return sprung && first.inside() > NOTHING_LEFT
                ? left(surface, last.ofWidth(first.inside(), cut.axialDepth()), last.wall())
                : first;
    }

    private SurfaceLeft left(Surface surface, MillingCut cut, double wall) {
        SpringBand springs = mounting.springs();
        WallLeft expected = left(cut, wall, mounting.expected());
        double stiff = left(cut, wall, new MountedTool(mounting.beam(), springs.stiff()))
                .farthest();
        double soft = left(cut, wall, new MountedTool(mounting.beam(), springs.soft()))
                .farthest();
        Worked worked = WallLeft.LEFT.of(
                expected.farthest(),
                surface.words(),
                question.field("width of the pass", cut.width(), Unit.MM, "width"),
                question.field("depth of the pass", cut.axialDepth(), Unit.MM, "depth"),
                question.field("stick-out", mounting.beam().stickOut(), Unit.MM, "stickOut"),
                Given.of("left at the top", expected.atTop(), Unit.MM, "the same, at the top of the wall"),
                Given.of("left at the bottom", expected.atBottom(), Unit.MM, "the same, at the tip"));
        Band band = band(stiff, expected.farthest(), soft);
        return new SurfaceLeft(surface, worked, band, expected.atTop(), expected.atBottom());
    }

    static Band band(double one, double expected, double other) {
        return new Band(Math.min(Math.min(one, other), expected), expected, Math.max(Math.max(one, other), expected));
    }

    private WallLeft left(MillingCut cut, double wall, MountedTool tool) {
        double at = ToolSpring.loadedAt(tool.beam().stickOut(), cut.axialDepth() / 2);
        return WallLeft.of(question.force(cut), cut, wall, tool, at);
    }

    /** The lean of the tool across the face. */
    private SurfaceLeft face() {
        MillingCut cut = last.cut();
        double force = question.force(cut).load().peakResultant();
        double at = ToolSpring.loadedAt(mounting.beam().stickOut(), cut.axialDepth() / 2);
        SpringBand springs = mounting.springs();
        Given lean = Given.of(
                "lean of the tip", mounting.expected().tipSlope(force, at), Unit.RAD, "the tool as a stepped beam");
        Worked worked = MountedTool.FACE_LEAN.of(lean, question.diameter());
        double radius = question.cutter().diameter().inside() / 2;
        double stiff = radius * new MountedTool(mounting.beam(), springs.stiff()).tipSlope(force, at);
        double soft = radius * new MountedTool(mounting.beam(), springs.soft()).tipSlope(force, at);
        double left = worked.inside();
        return new SurfaceLeft(Surface.FACE, worked, band(stiff, left, soft), left, left);
    }
}
