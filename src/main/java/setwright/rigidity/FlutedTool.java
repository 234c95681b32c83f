package setwright.rigidity;

import java.util.List;

/**
 * A tool with flutes at its tip and a plain shank.
 *
 * @param diameter of the fluted part over its edges, mm
 * @param fluteLength from the tip, mm
 * @param shank diameter, mm
 * @param coreRatio diameter of a rod as stiff as the fluted part over the cutting diameter
 */
public record FlutedTool(double diameter, double fluteLength, double shank, double coreRatio) {
    /** Of end mills with two and four flutes; a maker's page says 0.70 to 0.80. */
    public static final double END_MILL_CORE = 0.8;

    /** An end mill with the usual core. */
    public static FlutedTool endMill(double diameter, double fluteLength, double shank) {
        return new FlutedTool(diameter, fluteLength, shank, END_MILL_CORE);
    }

    /** The tool as it stands out of its holder; flutes that reach into the holder are gripped like a shank. */
    public ToolBeam beam(double stickOut, double modulus) {
        double fluted = Math.min(fluteLength, stickOut);
        var flutes = new BeamSection(fluted, coreRatio * diameter);
        return new ToolBeam(
                stickOut > fluted ? List.of(new BeamSection(stickOut - fluted, shank), flutes) : List.of(flutes),
                modulus);
    }
}
