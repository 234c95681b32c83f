package setwright.cutting;

/**
 * A force that follows the specific cutting force of the material; its other parts are fixed shares of the tangential.
 *
 * @param radialRatio normal to tangential force
 * @param axialRatio force along the edge to tangential force
 */
public record KienzleForce(Kienzle material, double radialRatio, double axialRatio) implements EdgeForce {
    /** Radial to tangential force of an ordinary sharp edge (common practice). */
    public static final double ORDINARY_RADIAL_RATIO = 0.3;

    /** The ordinary shares for a cutter: radial 0.3, axial the tangent of its helix. */
    public static KienzleForce of(Kienzle material, MillingCutter cutter) {
        return new KienzleForce(material, ORDINARY_RADIAL_RATIO, StrictMath.tan(cutter.helix()));
    }

    /** The same edge asking for so many times the force. */
    public KienzleForce times(double factor) {
        return new KienzleForce(material.times(factor), radialRatio, axialRatio);
    }

    @Override
    public Parts at(double chip) {
        double tangential = material.forcePerWidth(chip);
        return new Parts(tangential, radialRatio * tangential, axialRatio * tangential);
    }

    @Override
    public Kind kind() {
        return Kind.KIENZLE;
    }
}
