package setwright.plan.part;

import java.util.Comparator;
import java.util.Optional;
import setwright.job.Strapping;
import setwright.plan.Rows;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.shop.Nut;
import setwright.shop.StepBlocks;
import setwright.shop.Stud;
import setwright.shop.TNut;

/**
 * What goes with a strap that stands in the set-up.
 *
 * @param studs the set that its stud is of
 * @param length of its stud, as the shop has it written; the longest where none is long enough
 * @param nut the T-nut in the slot; empty where the shop has no row for it
 * @param steps the step blocks under its heel; empty where the shop has none that high
 */
public record StrapGear(
        StrapPlace place, Stud studs, Typed<Length> length, Optional<TNut> nut, Optional<StepBlocks> steps) {
    /** Length in the T-nut where nothing is known of it, in diameters (common practice). */
    private static final double IN_NUT = 1.3;

    /** Slots and nuts that differ less than this are of one size, mm: 5/8 in and 16 mm. */
    private static final double ONE_SIZE = 0.6;

    /** Empty where the shop has no stud of that row. */
    public static Optional<StrapGear> of(StrapPlace place, Rows rows) {
        return rows.row(place.drawn().stud().value(), Stud.class).flatMap(studs -> of(place, studs, rows));
    }

    private static Optional<StrapGear> of(StrapPlace place, Stud studs, Rows rows) {
        double wanted =
                place.reaches() ? place.studTop() - place.foot() + inNut(studs, rows) : Double.POSITIVE_INFINITY;
        return studs.lengths().stream()
                .min(Comparator.comparingDouble(
                        one -> place.reaches() ? Math.abs(one.inside() - wanted) : -one.inside()))
                .map(length -> new StrapGear(place, studs, length, nut(studs, rows), steps(place, rows)));
    }

    /** How much of the stud is in the T-nut, mm. */
    public static double inNut(Stud studs, Rows rows) {
        ScrewThread thread = Threads.listed().read(studs.thread());
        return nut(studs, rows).map(nut -> nut.height().inside()).orElse(IN_NUT * thread.major());
    }

    /** How much of the stud is left for the nut on the strap, mm. */
    public double overStrap(Rows rows) {
        return place.foot() + length.inside() - inNut(studs, rows) - place.nutSeat();
    }

    /** Whether a stud goes with it; an edge clamp has a screw of its own. */
    public boolean studded() {
        return place.by() != Strapping.By.EDGE_CLAMP;
    }

    /** The nut on the clamp; empty where the shop has written down none for the thread. */
    public Optional<Nut> upper(Rows rows) {
        return rows.all(Nut.class).stream()
                .filter(nut -> nut.thread().equals(studs.thread()) && nut.form() != Nut.Form.COUPLING)
                .min(Comparator.comparing((Nut nut) -> nut.kept().owned() == 0).thenComparing(Nut::id));
    }

    private static Optional<TNut> nut(Stud studs, Rows rows) {
        return rows.all(TNut.class).stream()
                .filter(nut -> nut.thread().equals(studs.thread()))
                .min(Comparator.comparing((TNut nut) -> Math.abs(nut.slotWidth().inside()
                                        - studs.slotWidth().inside())
                                > ONE_SIZE)
                        .thenComparing(nut -> nut.kept().owned() == 0)
                        .thenComparing(TNut::id));
    }

    private static Optional<StepBlocks> steps(StrapPlace place, Rows rows) {
        if (place.by() != Strapping.By.STRAP) {
            return Optional.empty();
        }
        double height = place.heelHeight() - place.foot();
        return rows.all(StepBlocks.class).stream()
                .min(Comparator.comparing((StepBlocks row) -> row.kept().owned() == 0)
                        .thenComparing(row -> height < row.least().inside()
                                || height > row.greatest().inside())
                        .thenComparing(StepBlocks::id));
    }
}
