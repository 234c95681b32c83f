package setwright.plan.part;

import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.DrawnDevice;
import setwright.job.Job;
import setwright.plan.Rows;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Adhesive;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.VBlocks;
import setwright.shop.Vise;
import setwright.shop.WorkChuck;

/**
 * How a device takes a part, mm.
 *
 * @param bed height of the face that the part or its straps stand on
 * @param bottom height of the part's underside
 * @param top of the device where it stands up beside the part; 0 where it does not
 * @param beside how far the part's middle lies to the right of the device's
 */
record DeviceSeat(double bed, double bottom, double top, double beside) {
    /** Length of a dividing head with its chuck, to the left of the work (common practice). */
    static final double HEAD_LENGTH = 200;

    /** Empty where the device is missing, or does not take a part that is laid so. */
    static Optional<DeviceSeat> of(DrawnDevice holding, Job job, Laid laid, Rows rows) {
        String id = holding.device().value();
        Lying lying = Lying.of(job.plan().blank().envelope(), laid.up(), laid.quarterTurns());
        double length = lying.along().nominal().inside();
        double diameter = lying.across().nominal().inside();
        boolean round = lyingRound(job.plan().blank(), laid);
        return switch (holding.on()) {
            case V_BLOCKS ->
                rows.row(id, VBlocks.class)
                        .filter(row -> round)
                        .map(row -> standing(0, row.centreHeight(diameter) - diameter / 2));
            case ANGLE_PLATE ->
                rows.row(id, AnglePlate.class)
                        .map(row -> new DeviceSeat(0, 0, row.faceHeight().inside(), 0));
            case FIXTURE_PLATE ->
                rows.row(id, FixturePlate.class).map(row -> onPlate(PlateStand.top(row, holding, rows), holding, rows));
            case SET_UP_BLOCKS ->
                rows.row(id, SetUpBlocks.class)
                        .map(row -> standing(0, row.sizes().get(0).inside()));
            case ROTARY_TABLE ->
                rows.row(id, RotaryTable.class)
                        .flatMap(row -> onRotary(row, holding, rows, new Bar(round, diameter, length)));
            case MAGNETIC_CHUCK -> rows.row(id, MagneticChuck.class).map(row -> onFace(row.height()));
            case DIVIDING_HEAD ->
                rows.row(id, DividingHead.class)
                        .filter(row -> round)
                        .map(row -> inHead(
                                row.centreHeight().inside(),
                                HEAD_LENGTH,
                                new Bar(true, diameter, length),
                                gripped(holding, rows)));
            case COLLET_BLOCK ->
                rows.row(id, ColletBlock.class)
                        .flatMap(
                                row -> rows.vise(holding.vise().value()).map(vise -> inBlock(row, vise, lying, round)));
        };
    }

    /** A part as a round about a level axis. */
    private record Bar(boolean round, double diameter, double length) {}

    /** Whether the part is a bar or tube that lies along the table. */
    static boolean lyingRound(Blank blank, Laid laid) {
        boolean bar = blank.kind() == Blank.Kind.ROUND_BAR || blank.kind() == Blank.Kind.TUBE;
        boolean level = laid.up() != Side.TOP && laid.up() != Side.BOTTOM;
        return bar && level && !laid.tilted() && laid.quarterTurns() % 2 != 0;
    }

    private static DeviceSeat standing(double bed, double bottom) {
        return new DeviceSeat(bed, bottom, 0, 0);
    }

    private static DeviceSeat onFace(Typed<Length> height) {
        return standing(height.inside(), height.inside());
    }

    /** On its face, higher by tape or glue. */
    private static DeviceSeat onPlate(double face, DrawnDevice holding, Rows rows) {
        double film = rows.row(holding.gear().value(), Adhesive.class)
                .map(row -> row.thickness().inside())
                .orElse(0.0);
        return standing(face, face + film);
    }

    /** Flat: on its face, or in the jaws of a chuck on it. Upright: along X at its centre. */
    private static Optional<DeviceSeat> onRotary(RotaryTable row, DrawnDevice holding, Rows rows, Bar bar) {
        Optional<WorkChuck> chuck = rows.row(holding.gear().value(), WorkChuck.class);
        double face = row.heightLying().inside();
        if (holding.upright()) {
            return Optional.ofNullable(row.centreStanding())
                    .filter(centre -> bar.round())
                    .map(centre -> inHead(
                            centre.inside(),
                            face + chuck.map(one -> one.height().inside()).orElse(0.0),
                            bar,
                            gripped(holding, rows)));
        }
        return Optional.of(chuck.map(one -> {
                    double jaws = face + one.height().inside();
                    return new DeviceSeat(face, jaws - one.jawDepth().inside(), jaws, 0);
                })
                .orElseGet(() -> onFace(row.heightLying())));
    }

    /** How much of a bar is inside a chuck. */
    private static double gripped(DrawnDevice holding, Rows rows) {
        return rows.row(holding.gear().value(), WorkChuck.class)
                .map(row -> row.jawDepth().inside())
                .orElse(0.0);
    }

    private static DeviceSeat inHead(double centre, double deviceLength, Bar bar, double gripped) {
        return new DeviceSeat(0, centre - bar.diameter() / 2, 0, (deviceLength + bar.length()) / 2 - gripped);
    }

    /** A bar stands in its block on the vise bed, or lies in it with its left end at the block's. */
    private static DeviceSeat inBlock(ColletBlock block, Vise vise, Lying lying, boolean round) {
        double bed = vise.bedHeight().inside();
        double jaws = bed + vise.jawHeight().inside();
        double flats = block.acrossFlats().inside();
        double length = block.length().inside();
        if (!round) {
            return new DeviceSeat(bed, bed, Math.max(jaws, bed + length), 0);
        }
        double middle = bed + flats / 2;
        return new DeviceSeat(
                bed,
                middle - lying.across().nominal().inside() / 2,
                Math.max(jaws, bed + flats),
                (lying.along().nominal().inside() - length) / 2);
    }
}
