package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnStrap;
import setwright.plan.Rows;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.shop.Strap;
import setwright.shop.Stud;

/**
 * A strap where it stands, mm on the table.
 *
 * @param name as it is called at the machine, for instance {@code left back strap}
 * @param toward from the pad to the heel, one long
 * @param padHeight of the pad over the table: the part's top
 * @param heelHeight of the heel over the table
 * @param foot height that stud and heel stand on
 * @param stud diameter of the stud
 * @param nutTop over the table
 * @param studTop over the table
 * @param reaches whether the longest stud of the row is long enough
 */
public record StrapPlace(
        String name,
        DrawnStrap drawn,
        Strap strap,
        Point2 pad,
        Point2 toward,
        double padHeight,
        double heelHeight,
        double foot,
        double stud,
        double nutTop,
        double studTop,
        boolean reaches) {
    /** How far a strap reaches over the middle of its pad, mm (common practice). */
    public static final double NOSE = 10;

    /** A nut 1.5 diameters high (from memory: DIN 6330). */
    private static final double NUT_HEIGHT = 1.5;

    /** Threads that stand over the nut. */
    private static final int THREADS_OVER = 2;

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
        List<String> names = StrapName.all(pads, heels);
        List<StrapPlace> found = new ArrayList<>();
        for (int i = 0; i < straps.size(); i++) {
            Ground ground = new Ground(names.get(i), pads.get(i), heels.get(i), heights);
            ground.standing(straps.get(i), rows).ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /** Where the stud goes through. */
    public Point2 studAt() {
        return pad.plus(toward.times(drawn.padToStud().value().inside()));
    }

    public Point2 heelAt() {
        return studAt().plus(toward.times(drawn.studToHeel().value().inside()));
    }

    /** Height of the strap's upper face. */
    public double strapTop() {
        return Math.max(padHeight, heelHeight) + strap.thickness().inside();
    }

    /** What a strap is put on. */
    private record Ground(String name, Point2 pad, Point2 toward, Heights heights) {
        Optional<StrapPlace> standing(DrawnStrap drawn, Rows rows) {
            return rows.row(drawn.strap().value(), Strap.class)
                    .flatMap(strap ->
                            rows.row(drawn.stud().value(), Stud.class).map(stud -> standing(drawn, strap, stud, rows)));
        }

        private StrapPlace standing(DrawnStrap drawn, Strap strap, Stud stud, Rows rows) {
            ScrewThread thread = Threads.listed().read(stud.thread());
            double padHeight = heights.startTop();
            double heelHeight = padHeight + drawn.heelOver().value().inside();
            double strapTop =
                    Math.max(padHeight, heelHeight) + strap.thickness().inside();
            double nutTop = strapTop + NUT_HEIGHT * thread.major();
            double wanted = nutTop + THREADS_OVER * thread.pitch();
            double below = StrapGear.inNut(stud, rows) - heights.bed();
            double studTop = stud.lengths().stream()
                    .mapToDouble(length -> length.inside() - below)
                    .filter(top -> top >= wanted)
                    .min()
                    .orElse(0);
            boolean reaches = studTop > 0;
            return new StrapPlace(
                    name,
                    drawn,
                    strap,
                    pad,
                    toward,
                    padHeight,
                    heelHeight,
                    heights.bed(),
                    thread.major(),
                    nutTop,
                    reaches ? studTop : wanted,
                    reaches);
        }
    }
}
