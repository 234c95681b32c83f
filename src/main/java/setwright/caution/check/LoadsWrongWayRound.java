package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.geometry.Heading;
import setwright.geometry.Point3;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.DrawnSetUp;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.ZeroFinding;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.plan.part.Lying;

/** A part that also goes into the vise half round, where what is on it already does not. Asked of a batch only. */
public final class LoadsWrongWayRound implements Check {
    private static final double SAME = 0.01;

    @Override
    public String slug() {
        return "loads-wrong-way-round";
    }

    /** A hole by its place, seen from above, and what it is. */
    private record Spot(Side side, double x, double y, double z, double diameter) {
        boolean isAt(Spot other) {
            return side == other.side
                    && Math.abs(x - other.x) < SAME
                    && Math.abs(y - other.y) < SAME
                    && Math.abs(z - other.z) < SAME
                    && Math.abs(diameter - other.diameter) < SAME;
        }
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        List<DrawnSetUp> all = plan.drawnUp().setUps();
        if (plan.job().plan().numberOff() > 1 && looksAlike(plan.job().plan().blank())) {
            for (DrawnSetUp setUp : all.subList(Math.min(1, all.size()), all.size())) {
                found.add(look(plan, setUp, all.subList(0, all.indexOf(setUp))));
            }
        }
        return found;
    }

    /** Whether a blank looks the same half round whichever side is up. */
    private static boolean looksAlike(Blank blank) {
        return switch (blank.kind()) {
            case BLOCK, PLATE, ROUND_BAR, TUBE -> true;
            case PROFILE_BAR, OUTLINE, ROUGH_BODY -> false;
        };
    }

    private Finding look(Plan plan, DrawnSetUp setUp, List<DrawnSetUp> earlier) {
        List<Spot> before = earlier.stream().flatMap(one -> spots(plan, one)).toList();
        List<Spot> now = spots(plan, setUp).toList();
        Side up = setUp.up().value();
        if (fitsHalfRound(before, up) || fitsHalfRound(now, up)) {
            return Finding.HOLDS;
        }
        boolean blind = setUp.datum() == ZeroFinding.JAW_AND_STOP;
        return Finding.fails(
                Caution.Place.ofSetUp(setUp.id(), "part", "part"),
                slug(),
                blind ? Severity.CAUTION : Severity.NOTE,
                "The part goes into the vise half round as well " + Words.at(setUp.id(), "")
                        + ", and its holes do not. One loaded so is scrap: take a punch and mark the corner at the stop"
                        + " on every part.");
    }

    private static boolean fitsHalfRound(List<Spot> spots, Side up) {
        return spots.stream().allMatch(one -> spots.stream().anyMatch(halfRound(one, up)::isAt));
    }

    private static Spot halfRound(Spot spot, Side up) {
        boolean onUpright = spot.side() == up || spot.side() == up.opposite();
        Side side = onUpright ? spot.side() : spot.side().opposite();
        return switch (up) {
            case TOP, BOTTOM -> new Spot(side, -spot.x(), -spot.y(), spot.z(), spot.diameter());
            case FRONT, BACK -> new Spot(side, -spot.x(), spot.y(), -spot.z(), spot.diameter());
            case LEFT, RIGHT -> new Spot(side, spot.x(), -spot.y(), -spot.z(), spot.diameter());
        };
    }

    private static Stream<Spot> spots(Plan plan, DrawnSetUp setUp) {
        return setUp.operations().stream()
                .filter(operation -> operation.kind() == Operation.Kind.DRILL)
                .flatMap(operation -> Holes.of(operation, plan.job()))
                .flatMap(hole -> spots(plan, hole));
    }

    /** From the middle of the part, in its own directions. */
    private static Stream<Spot> spots(Plan plan, Hole hole) {
        Lying lying = Lying.of(plan.job().plan().blank().envelope(), hole.side(), 0);
        Heading u = hole.side().u();
        Heading v = hole.side().v();
        return lying.places(hole).stream().map(at -> {
            Point3 place = u.step(at.x()).plus(v.step(at.y()));
            return new Spot(
                    hole.side(),
                    place.x(),
                    place.y(),
                    place.z(),
                    hole.size().nominal().inside());
        });
    }
}
