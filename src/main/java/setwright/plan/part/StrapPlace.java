package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnStrap;
import setwright.job.Strapping;
import setwright.plan.Rows;
import setwright.shop.EdgeClamp;
import setwright.shop.Strap;
import setwright.shop.TableClamp;

/**
 * A strap, an edge clamp or a bolt where it stands, mm on the table.
 *
 * @param name as it is called at the machine, for instance {@code left back strap}
 * @param row of the shop; empty for a bolt through the part
 * @param toward from the pad to the heel, one long
 * @param padHeight of the pad over the table: the part's top under a strap
 * @param heelHeight of the heel over the table
 * @param nutSeat what nut and washer sit on, over the table
 * @param foot height that stud and heel stand on
 * @param stud diameter of the stud
 * @param nutTop over the table
 * @param studTop over the table
 * @param reaches whether the longest stud of the row is long enough
 */
public record StrapPlace(
        String name,
        DrawnStrap drawn,
        Optional<TableClamp> row,
        Point2 pad,
        Point2 toward,
        double padHeight,
        double heelHeight,
        double nutSeat,
        double foot,
        double stud,
        double nutTop,
        double studTop,
        boolean reaches) {
    /** How far a strap reaches over the middle of its pad, mm (common practice). */
    public static final double NOSE = 10;

    /** The straps whose rows the shop has, with the part sitting so. */
    public static List<StrapPlace> all(List<DrawnStrap> straps, Heights heights, Rows rows) {
        List<Point2> pads = new ArrayList<>();
        List<Point2> heels = new ArrayList<>();
        for (DrawnStrap strap : straps) {
            pads.add(new Point2(
                    heights.left() + strap.u().value().inside(),
                    heights.front() + strap.v().value().inside()));
            double toward = strap.toward().value().inside();
            heels.add(new Point2(StrictMath.cos(toward), StrictMath.sin(toward)));
        }
        List<String> names = StrapName.all(straps, pads, heels);
        List<StrapPlace> found = new ArrayList<>();
        for (int i = 0; i < straps.size(); i++) {
            StrapGround ground = new StrapGround(names.get(i), pads.get(i), heels.get(i), heights);
            ground.standing(straps.get(i), rows).ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /** What presses. */
    public Strapping.By by() {
        return drawn.by().value();
    }

    public Optional<Strap> strap() {
        return row.filter(Strap.class::isInstance).map(Strap.class::cast);
    }

    public Optional<EdgeClamp> edgeClamp() {
        return row.filter(EdgeClamp.class::isInstance).map(EdgeClamp.class::cast);
    }

    /** Where the stud goes through. */
    public Point2 studAt() {
        return by() == Strapping.By.BOLT
                ? pad
                : pad.plus(toward.times(drawn.padToStud().value().inside()));
    }

    public Point2 heelAt() {
        return studAt().plus(toward.times(drawn.studToHeel().value().inside()));
    }
}
