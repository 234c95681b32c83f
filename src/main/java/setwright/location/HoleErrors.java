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
    private static final double INCH = 25.4;
    private static final Source COMMON = Source.of("common practice");
    private static final Source DRIFT =
            Source.of("common practice; a plate-processing maker's page gives more than 0.001 in per inch");

    /** An axis set by its dial, backlash taken up. */
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

    /** The contributors to the place of a hole of a depth; those of nought are left out. */
    public List<Contributor> contributors(double depth) {
        return List.of(
                        Contributor.eachAxis("edge finding", edgeFinding, COMMON),
                        Contributor.eachAxis("dial or readout", reading, COMMON),
                        Contributor.eachAxis("screw or scale", scale, COMMON),
                        Contributor.eachAxis("backlash", backlash, COMMON),
                        Contributor.oneDirection("start of the drill", startWalk, COMMON),
                        Contributor.oneDirection("drift of the drill", driftPerDepth * depth, DRIFT),
                        Contributor.eachAxis("re-loading the part", reclamp, COMMON),
                        Contributor.eachAxis("warmth", thermal, COMMON))
                .stream()
                .filter(one -> one.amount() > 0)
                .toList();
    }
}
