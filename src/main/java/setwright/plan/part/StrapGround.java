package setwright.plan.part;

import java.util.Optional;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnStrap;
import setwright.plan.Rows;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.shop.EdgeClamp;
import setwright.shop.Strap;
import setwright.shop.Stud;
import setwright.shop.TableClamp;
import setwright.shop.Washer;

/** What a strap, an edge clamp or a bolt is put on. */
record StrapGround(String name, Point2 pad, Point2 toward, Heights heights) {
    /** A nut 1.5 diameters high (from memory: DIN 6330). */
    private static final double NUT_HEIGHT = 1.5;

    /** Thickness of a washer in diameters (common practice). */
    private static final double WASHER = 0.25;

    /** Threads that stand over the nut. */
    private static final int THREADS_OVER = 2;

    /** Heights of a clamp over the table. */
    private record Clamp(Optional<TableClamp> row, double pad, double heel, double nutSeat) {}

    Optional<StrapPlace> standing(DrawnStrap drawn, Rows rows) {
        return rows.row(drawn.stud().value(), Stud.class).flatMap(stud -> switch (drawn.by()
                .value()) {
            case STRAP ->
                rows.row(drawn.strap().value(), Strap.class).map(row -> underNut(drawn, stud, strap(drawn, row), rows));
            case EDGE_CLAMP -> rows.row(drawn.strap().value(), EdgeClamp.class).map(row -> edge(drawn, stud, row));
            case BOLT -> Optional.of(underNut(drawn, stud, bolt(stud), rows));
        });
    }

    private Clamp strap(DrawnStrap drawn, Strap row) {
        double pad = row.form() == Strap.Form.FINGER ? inTheSide(row) : heights.startTop();
        double heel = pad + drawn.heelOver().value().inside();
        double thick = row.thickness().inside();
        double cranked = row.form() == Strap.Form.GOOSENECK ? thick : 0;
        return new Clamp(Optional.of(row), pad, heel, Math.max(pad, heel) + thick - cranked);
    }

    /** Where the finger bears in a hole half way up the side. */
    private double inTheSide(Strap row) {
        return (heights.partBottom() + heights.startTop() - row.thickness().inside()) / 2;
    }

    private Clamp bolt(Stud stud) {
        double top = heights.startTop();
        return new Clamp(Optional.empty(), top, top, top + WASHER * thread(stud).major());
    }

    /** Its screw is sunk into it. */
    private StrapPlace edge(DrawnStrap drawn, Stud stud, EdgeClamp row) {
        double foot = heights.bed();
        double top = foot + row.height().inside();
        double press = foot + row.pressHeight().inside();
        double seat = top - thread(stud).major();
        Optional<TableClamp> clamp = Optional.of(row);
        return new StrapPlace(
                name,
                drawn,
                clamp,
                pad,
                toward,
                press,
                foot,
                seat,
                foot,
                thread(stud).major(),
                top,
                top,
                true);
    }

    private StrapPlace underNut(DrawnStrap drawn, Stud stud, Clamp clamp, Rows rows) {
        ScrewThread thread = thread(stud);
        double washer = rows.row(drawn.washer().value(), Washer.class)
                .map(row -> row.height().inside())
                .orElse(0.0);
        double nutTop = clamp.nutSeat() + washer + NUT_HEIGHT * thread.major();
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
                clamp.row(),
                pad,
                toward,
                clamp.pad(),
                clamp.heel(),
                clamp.nutSeat(),
                heights.bed(),
                thread.major(),
                nutTop,
                reaches ? studTop : wanted,
                reaches);
    }

    private static ScrewThread thread(Stud stud) {
        return Threads.listed().read(stud.thread());
    }
}
