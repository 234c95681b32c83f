package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.Point2;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.plan.Rows;
import setwright.shop.Vise;

/** Works out where the part sits on the table. */
public final class Seats {
    private final Job job;
    private final Laid laid;
    private final Rows rows;
    private final Extent part;

    private Seats(Job job, Laid laid, Rows rows) {
        this.job = job;
        this.laid = laid;
        this.rows = rows;
        part = Extent.of(Lying.of(job.plan().blank().envelope(), laid.up(), laid.quarterTurns()), laid);
    }

    /**
     * Where the part sits in a holding; of several in a row, the first from the left. In a vise the middle of the table
     * is under the middle of the jaws along X; the solid jaw stands to the column, its face at half the part's depth, so
     * that the part's middle is over the middle of the table. A tilted part counts as the box around it. Empty where
     * the holding's device is missing, or cannot hold the part as it is laid.
     */
    public static Optional<Heights> of(Job job, Laid laid, DrawnHolding holding, Rows rows) {
        Seats seats = new Seats(job, laid, rows);
        return switch (holding.kind()) {
            case VISE -> seats.inVise((DrawnVise) holding);
            case TABLE -> Optional.of(seats.onTable((DrawnTable) holding));
            case DEVICE -> seats.onDevice((DrawnDevice) holding);
        };
    }

    /** Whether the part is a bar or tube that lies along the table. */
    public static boolean barAlong(Blank blank, Laid laid) {
        return DeviceSeat.lyingRound(blank, laid);
    }

    private Optional<Heights> inVise(DrawnVise holding) {
        Optional<Vise> found = rows.vise(holding.vise().value());
        return found.map(vise -> {
            double bed = vise.bedHeight().inside();
            JawPlates jaws = JawPlates.of(holding, vise, rows);
            int parts = Math.max(1, holding.parts().value());
            double middle = holding.offset().value().inside() - (parts - 1) * part.along() / 2;
            return sitting(bed, bed + under(holding, jaws), bed + jaws.height(), new Point2(middle, 0));
        });
    }

    /** What lifts the part over the vise bed: the step in the jaws, a level vee, or parallels. */
    private double under(DrawnVise holding, JawPlates jaws) {
        if (jaws.vee().isPresent() && barAlong(job.plan().blank(), laid)) {
            return Math.max(0, jaws.vee().get().veeHeight().inside() - part.across() / 2);
        }
        if (jaws.cut() > 0) {
            return jaws.step();
        }
        return holding.onParallels() ? holding.parallelHeight().value().inside() : 0;
    }

    private Heights onTable(DrawnTable holding) {
        Point2 middle =
                new Point2(holding.x().value().inside(), holding.y().value().inside());
        double packing = holding.packingHeight().value().inside();
        Heights bare = switch (holding.seat().value()) {
            case TABLE -> sitting(0, 0, 0, middle);
            case PACKING, JACKS -> sitting(0, packing, 0, middle);
            case T_SLOT ->
                sitting(0, TableSlots.sink(part.across(), rows.machine().table()), 0, middle);
        };
        return clamped(bare, holding.straps());
    }

    private Optional<Heights> onDevice(DrawnDevice holding) {
        return DeviceSeat.of(holding, job, laid, rows).map(seat -> {
            Point2 middle = new Point2(
                    holding.x().value().inside() + seat.beside(),
                    holding.y().value().inside());
            Heights bare = sitting(seat.bed(), seat.bottom(), seat.top(), middle);
            return holding.on() == DeviceHolding.On.ANGLE_PLATE ? bare : clamped(bare, holding.straps());
        });
    }

    private Heights clamped(Heights bare, List<DrawnStrap> straps) {
        return bare.clampedTo(StrapPlace.all(straps, bare, rows).stream()
                .mapToDouble(StrapPlace::studTop)
                .max()
                .orElse(bare.jawTop()));
    }

    private Heights sitting(double bed, double bottom, double clampTop, Point2 middle) {
        double top = bottom + part.upright();
        double jaws = clampTop > 0 ? clampTop : top;
        return new Heights(
                bed,
                bottom,
                jaws,
                top,
                laid.tilted() ? top : bottom + finished(part.upright()),
                middle.x() - part.along() / 2,
                middle.y() - part.across() / 2,
                middle.x() + part.along() / 2,
                middle.y() + part.across() / 2);
    }

    private double finished(double blank) {
        return job.plan().features().stream()
                .filter(feature -> feature.side() == laid.up() && feature.kind() == Feature.Kind.FACE)
                .mapToDouble(feature -> ((Face) feature).across().nominal().inside())
                .min()
                .orElse(blank);
    }
}
