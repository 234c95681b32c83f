package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.Chamfer;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.shop.CornerRounder;
import setwright.shop.Cutter;

/**
 * The way of a cone, or of a corner rounder, along an edge that it breaks. What it takes is not upright, and the stock
 * counts as not cut there.
 */
record ChamferWay(SideOnTable side, Cutter tool, Job job, boolean climb) {
    /** Round the outline of the side, round the mouth of a hole or along the edge of a pocket or profile. */
    Milled of(Chamfer chamfer) {
        double axis = fromEdge();
        if (chamfer.of().equals(Chamfer.OUTLINE)) {
            return round(Rounded.rectangle(side.sizeU(), side.sizeV(), 0), false, axis);
        }
        return edge(chamfer).map(feature -> along(feature, axis)).orElse(Milled.NOTHING);
    }

    private Optional<Feature> edge(Chamfer chamfer) {
        return job.plan().features().stream()
                .filter(feature -> feature.id().equals(chamfer.of()) && feature.side() == chamfer.side())
                .findFirst();
    }

    private Milled along(Feature feature, double axis) {
        return switch (feature.kind()) {
            case POCKET -> {
                Pocket pocket = (Pocket) feature;
                Rounded line = Rounded.rectangle(
                        MilledFeatures.mm(pocket.length()),
                        MilledFeatures.mm(pocket.width()),
                        pocket.corner().inside());
                yield fits(pocket.corner().inside(), axis)
                        ? round(line, true, axis).mapped(side.set(pocket.place()))
                        : Milled.NOTHING;
            }
            case PROFILE -> {
                ProfileCut cut = (ProfileCut) feature;
                Rounded line = MilledFeatures.outline(cut).mapped(PlanMap.shift(-side.sizeU() / 2, -side.sizeV() / 2));
                yield line.corners().size() < 3 || !fits(line.leastInnerRadius(cut.inside()), axis)
                        ? Milled.NOTHING
                        : round(line, cut.inside(), axis);
            }
            case HOLE -> hole((Hole) feature, axis);
            default -> Milled.NOTHING;
        };
    }

    private static boolean fits(double corner, double axis) {
        return corner >= axis - 1e-6;
    }

    private Milled hole(Hole hole, double axis) {
        double way = MilledFeatures.mm(hole.size()) / 2 - axis;
        if (way <= 0) {
            return Milled.NOTHING;
        }
        List<Lane> lanes = new ArrayList<>();
        for (Point2 place : HolePlaces.fromMiddle(hole, side.sizeU(), side.sizeV(), 0)) {
            Lane round = new Lane(SlotWay.turn(place, way, 0, 2 * Math.PI), false);
            lanes.add(climb ? round : round.reversed());
        }
        return new Milled(lanes, Region.NONE);
    }

    private Milled round(Rounded line, boolean inside, double axis) {
        Lane round = new Lane(line.offset(inside ? -axis : axis).edges(), false);
        boolean forwards = inside == climb;
        return new Milled(List.of(forwards ? round : round.reversed()), Region.NONE);
    }

    /** From the edge that stays sharp in plan to the axis of the cutter. */
    private double fromEdge() {
        return tool instanceof CornerRounder rounder
                ? rounder.tipDiameter().inside() / 2
                : MilledWidth.besideWall(tool);
    }
}
