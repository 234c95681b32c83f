package setwright.plan.cut;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Direction;
import setwright.cutting.EdgeForce;
import setwright.cutting.EdgeShape;
import setwright.cutting.Engagement;
import setwright.cutting.KienzleForce;
import setwright.cutting.LinearEdgeForce;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingCutter;
import setwright.cutting.ShapedCut;
import setwright.cutting.SharedForce;
import setwright.job.Operation;
import setwright.job.TSlot;
import setwright.plan.part.Mouths;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.ChamferMill;
import setwright.shop.CornerRounder;
import setwright.shop.Cutter;
import setwright.shop.DovetailCutter;
import setwright.shop.EndMill;
import setwright.shop.FormCutter;
import setwright.shop.LinearEdge;

/**
 * How the edges of a milled operation's cutter stand, and what the work asks of them.
 *
 * @param section of the pass
 * @param feed per tooth, mm
 */
record MilledShape(CutQuestion question, MilledSection section, double feed) {
    private static final Pattern MODULE = Pattern.compile("module (\\d+(?:\\.\\d+)?)");

    /** Pressure angle of gear teeth, rad. */
    private static final double PRESSURE = StrictMath.toRadians(20);

    /** Depth of a gear tooth below its pitch circle, in modules. */
    private static final double DEDENDUM = 1.25;

    ShapedCut cut() {
        return switch (question.operation().kind()) {
            case WOODRUFF -> ShapedCut.of(plunging());
            case T_SLOT -> head().orElseGet(this::shaped);
            default -> shaped();
        };
    }

    private MillingCut plunging() {
        return new MillingCut(
                cutter(), Engagement.plunging(section.width(), section.diameter()), section.depth(), feed);
    }

    /** Beside the neck, which was milled before; where the cutter is narrower than the head it goes along either side. */
    private Optional<ShapedCut> head() {
        return question.features()
                .filter(TSlot.class::isInstance)
                .map(TSlot.class::cast)
                .filter(slot -> slot.neck().nominal().inside() < section.diameter())
                .map(slot -> {
                    double narrower = Math.max(0, slot.headWidth().nominal().inside() - section.diameter());
                    double neck = slot.neck().nominal().inside() - narrower;
                    return ShapedCut.besideNeck(cutter(), Math.max(0, neck), section.depth(), feed);
                })
                .findFirst();
    }

    private ShapedCut shaped() {
        EdgeShape shape = shape();
        if (shape == null) {
            return ShapedCut.of(upright());
        }
        double width = Math.min(section.width(), 2 * shape.widest(section.depth()));
        return ShapedCut.of(
                shape,
                new ShapedCut.Teeth(question.cutter().teeth(), question.cutter().fluteHelix()),
                section.direction(),
                new MillingCut.Section(
                        section.direction() == Direction.SLOT ? 2 * shape.widest(section.depth()) : width,
                        section.depth()),
                side(),
                feed);
    }

    private ShapedCut.Side side() {
        return switch (question.operation().kind()) {
            case FACE, POCKET -> ShapedCut.Side.LANE_BEFORE;
            default -> ShapedCut.Side.UPRIGHT;
        };
    }

    private MillingCut upright() {
        var cross = new MillingCut.Section(section.width(), section.depth());
        return section.coversFace(question)
                ? MillingCut.facing(cutter(), 0, cross, feed)
                : MillingCut.of(cutter(), section.direction(), cross, feed);
    }

    private MillingCutter cutter() {
        Cutter tool = question.cutter();
        return new MillingCutter(section.diameter(), tool.teeth(), tool.fluteHelix(), tool.edgeLead());
    }

    /** Null where all edges stand at one radius, or lean so little of the depth that they may count so. */
    private @Nullable EdgeShape shape() {
        Cutter tool = question.cutter();
        double radius = section.diameter() / 2;
        if (question.operation().kind() == Operation.Kind.CHAMFER && !(tool instanceof CornerRounder)) {
            double tip = tool instanceof ChamferMill mill ? mill.tipDiameter().inside() / 2 : 0;
            return new EdgeShape.Conical(tip, Mouths.coneAngle(tool) / 2);
        }
        return switch (tool.form()) {
            case END_MILL -> rounded(((EndMill) tool).cornerRadius(), radius);
            case DOVETAIL_CUTTER ->
                new EdgeShape.Conical(radius, ((DovetailCutter) tool).angle().inside() - Math.PI / 2);
            case CORNER_ROUNDER ->
                new EdgeShape.Hollow(
                        ((CornerRounder) tool).tipDiameter().inside() / 2,
                        ((CornerRounder) tool).radius().inside());
            case FORM_CUTTER -> gear((FormCutter) tool, radius);
            default -> null;
        };
    }

    private static @Nullable EdgeShape rounded(@Nullable Typed<Length> corner, double radius) {
        return corner == null || corner.inside() <= 0
                ? null
                : new EdgeShape.Rounded(radius, Math.min(corner.inside(), radius));
    }

    /** The gap of a rack of its module: π m / 2 wide at the pitch line. */
    private static @Nullable EdgeShape gear(FormCutter cutter, double radius) {
        Matcher module = MODULE.matcher(cutter.profile());
        if (!module.find()) {
            return null;
        }
        double m = Double.parseDouble(module.group(1));
        double rim = m * (Math.PI / 2 - 2 * DEDENDUM * StrictMath.tan(PRESSURE));
        return new EdgeShape.Flanked(radius, rim, PRESSURE);
    }

    /** The law that the plan goes by. */
    EdgeForce kienzle() {
        return waved(KienzleForce.of(question.kienzle(), cutter()));
    }

    /** The law of cutting tests; empty where none of the material was read. */
    Optional<EdgeForce> linear() {
        LinearEdge edge = question.rows().material().edge();
        return Optional.ofNullable(edge).map(MilledShape::law).map(this::waved);
    }

    private static EdgeForce law(LinearEdge edge) {
        return new LinearEdgeForce(
                new EdgeForce.Parts(
                        edge.tangentialChip().inside(),
                        edge.radialChip().inside(),
                        edge.axialChip().inside()),
                new EdgeForce.Parts(
                        edge.tangentialEdge().inside(),
                        edge.radialEdge().inside(),
                        edge.axialEdge().inside()));
    }

    private EdgeForce waved(EdgeForce law) {
        OptionalDouble wave = question.wave();
        return wave.isEmpty() ? law : SharedForce.waved(law, question.cutter().teeth(), wave.getAsDouble());
    }
}
