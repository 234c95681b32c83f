package setwright.plan.pencil;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.job.Strapping;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.plan.part.StrapPlace;
import setwright.quantity.thread.Threads;
import setwright.shop.EdgeClamp;
import setwright.shop.MachineTable;
import setwright.shop.Owned;
import setwright.shop.ShopRow;
import setwright.shop.StepBlocks;
import setwright.shop.Strap;
import setwright.shop.Stud;

/** The straps, studs and step blocks that the shop owns, and how hard their nuts are done up. */
record StrapRows(Rows rows) {
    /** Heel to the end of the strap, mm (common practice). */
    private static final double TAIL = 15;

    /** The stud stands at least as far from the heel as from the pad; twice as far is asked (Milling p. 195). */
    private static final double HEEL_SHARE = 2;

    /** Slots and studs that differ less than this are of one size, mm: 5/8 in and 16 mm. */
    private static final double ONE_SIZE = 0.6;

    /**
     * Torque at a nut for each mm of its thread, N·mm: a firm pull of 250 N on a spanner 14 diameters long (common
     * practice).
     */
    private static final double TORQUE_PER_DIAMETER = 250 * 14;

    /** The studs for the table's slots, else whatever there is; the thickest first. */
    Optional<Stud> stud() {
        MachineTable table = rows.machine().table();
        return rows.all(Stud.class).stream()
                .filter(StrapRows::owned)
                .min(Comparator.comparing(
                                (Stud stud) -> Math.abs(stud.slotWidth().inside()
                                                - table.slotWidth().inside())
                                        > ONE_SIZE)
                        .thenComparing(stud -> -diameter(stud))
                        .thenComparing(ShopRow::id));
    }

    /** The shortest strap that reaches twice as far behind the stud as before it, else the longest. */
    Optional<Strap> strap(double toStud, double room) {
        double wanted = StrapPlace.NOSE + toStud + Math.min(HEEL_SHARE * toStud, room) + TAIL;
        double stud = stud().map(StrapRows::diameter).orElse(0.0);
        List<Strap> fitting = rows.all(Strap.class).stream()
                .filter(strap -> owned(strap)
                        && strap.form() != Strap.Form.FINGER
                        && strap.slotWidth().inside() >= stud)
                .sorted(Comparator.comparingDouble(
                                (Strap strap) -> strap.length().inside())
                        .thenComparing(ShopRow::id))
                .toList();
        return fitting.stream()
                .filter(strap -> strap.length().inside() >= wanted)
                .findFirst()
                .or(() -> fitting.isEmpty() ? Optional.empty() : Optional.of(fitting.get(fitting.size() - 1)));
    }

    /** The first owned clamp for edges. */
    Optional<EdgeClamp> edgeClamp() {
        return rows.all(EdgeClamp.class).stream().filter(StrapRows::owned).min(Comparator.comparing(ShopRow::id));
    }

    /** What is taken for a place, and where its stud and heel come to stand. */
    StrapReach reach(Strapping.By by, StrapSpot spot) {
        return switch (by) {
            case STRAP -> {
                Optional<Strap> strap = strap(spot.toStud(), spot.room());
                double toHeel = toHeel(strap, spot.toStud(), spot.room());
                yield new StrapReach(strap.map(ShopRow::id).orElse(Rows.NOTHING), spot.toStud(), toHeel);
            }
            case EDGE_CLAMP ->
                edgeClamp()
                        .map(row -> new StrapReach(
                                row.id(),
                                row.toBolt().inside(),
                                row.length().inside() - row.toBolt().inside()))
                        .orElse(new StrapReach(Rows.NOTHING, 0, 0));
            case BOLT -> new StrapReach(ViseHolding.NONE, 0, 0);
        };
    }

    /** Stud to heel. */
    private static double toHeel(Optional<Strap> strap, double toStud, double room) {
        double most = Math.min(HEEL_SHARE * toStud, room);
        return strap.map(row -> Math.min(most, row.length().inside() - StrapPlace.NOSE - toStud - TAIL))
                .orElse(most);
    }

    /** How much higher than the pad the lowest heel is that is not lower. */
    double heelOver(double padHeight) {
        return rows.all(StepBlocks.class).stream()
                .filter(row -> owned(row) && row.greatest().inside() >= padHeight)
                .mapToDouble(row -> over(row, padHeight))
                .min()
                .orElse(0);
    }

    private static double over(StepBlocks row, double padHeight) {
        double step = row.step().inside();
        double least = row.least().inside();
        double steps = Math.ceil(Math.max(0, padHeight - least) / step - 1e-9);
        return least + steps * step - padHeight > step ? 0 : least + steps * step - padHeight;
    }

    double torque() {
        return stud().map(stud -> TORQUE_PER_DIAMETER * diameter(stud)).orElse(0.0);
    }

    private static double diameter(Stud stud) {
        return Threads.listed().read(stud.thread()).major();
    }

    private static boolean owned(Owned row) {
        return row.kept().owned() != 0;
    }
}
