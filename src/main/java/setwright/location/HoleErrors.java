package setwright.location;

import java.util.List;
import setwright.quantity.Source;

/**
 * What puts a drilled or reamed hole out of place in one loading, as half-widths in millimetres. All are planning
 * defaults, to be replaced by what a shop has measured.
 *
 * @param edgeFinding finding the edges once
 * @param reading setting the dial or readout
 * @param scale error of the screw or of the scale of a readout
 * @param backlash residual backlash, taken up from one side
 * @param startWalk how far the spot or drill starts off its place
 * @param driftPerDepth how far the drill wanders per depth, mm/mm
 * @param reclamp how far a re-loaded part comes to lie elsewhere against jaw and stop
 * @param thermal growth of part and machine
 */
public record HoleErrors(
        double edgeFinding,
        double reading,
        double scale,
        double backlash,
        double startWalk,
        double driftPerDepth,
        double reclamp,
        double thermal) {
    /** How the drift is called among the contributors. */
    public static final String DRIFT_NAME = "drift of the drill";

    private static final double INCH = 25.4;
    private static final Source COMMON = Source.of("common practice");
    private static final Source DRIFT =
            Source.of("common practice; a plate-processing maker's page gives more than 0.001 in per inch");

    /** An axis set by its dial of 0.001 in, backlash taken up. */
    public static HoleErrors byDial() {
        return new HoleErrors(
                0.0005 * INCH,
                0.0005 * INCH,
                0.001 * INCH,
                0.0003 * INCH,
                0.001 * INCH,
                0.001,
                0.00025 * INCH,
                0.0002 * INCH);
    }

    /** An axis with a readout of 0.005 mm: no screw and no backlash between scale and table. */
    public static HoleErrors byReadout() {
        HoleErrors dial = byDial();
        return new HoleErrors(
                dial.edgeFinding, 0.005, 0.005, 0, dial.startWalk, dial.driftPerDepth, dial.reclamp, dial.thermal);
    }

    /** The same with backlash of another size, such as that of a worn screw approached from either side. */
    public HoleErrors withBacklash(double other) {
        return new HoleErrors(edgeFinding, reading, scale, other, startWalk, driftPerDepth, reclamp, thermal);
    }

    /** The same with a datum that is found another way. */
    public HoleErrors found(double other) {
        return new HoleErrors(other, reading, scale, backlash, startWalk, driftPerDepth, reclamp, thermal);
    }

    /** The same with axes that are set within this. */
    public HoleErrors set(double other) {
        return new HoleErrors(edgeFinding, other, scale, backlash, startWalk, driftPerDepth, reclamp, thermal);
    }

    /** The same with a part that comes to lie within this. */
    public HoleErrors loaded(double other) {
        return new HoleErrors(edgeFinding, reading, scale, backlash, startWalk, driftPerDepth, other, thermal);
    }

    /** Bored from the spindle: neither the start of a drill nor its drift is left. */
    public HoleErrors bored() {
        return new HoleErrors(edgeFinding, reading, scale, backlash, 0, 0, reclamp, thermal);
    }

    /** The contributors to the place of a hole of a depth; those of nought are left out. */
    public List<Contributor> contributors(double depth) {
        return List.of(
                        Contributor.eachAxis("edge finding", edgeFinding, COMMON)
                                .halvedBy("finding the edges twice from the same side"),
                        Contributor.eachAxis("dial or readout", reading, COMMON).halvedBy("a readout"),
                        Contributor.eachAxis("screw or scale", scale, COMMON)
                                .halvedBy("a readout, or gauge blocks and an indicator"),
                        Contributor.eachAxis("backlash", backlash, COMMON)
                                .halvedBy("coming to every place from one side"),
                        Contributor.oneDirection("start of the drill", startWalk, COMMON)
                                .halvedBy("a stiff spot drill with the quill in"),
                        Contributor.oneDirection(DRIFT_NAME, driftPerDepth * depth, DRIFT)
                                .halvedBy("boring the hole"),
                        Contributor.eachAxis("re-loading the part", reclamp, COMMON)
                                .halvedBy("indicating each part after loading"),
                        Contributor.eachAxis("warmth", thermal, COMMON).halvedBy("letting the part cool"))
                .stream()
                .filter(one -> one.amount() > 0)
                .toList();
    }
}
