package setwright.geometry;

/**
 * The profile of a turned body: about an upright axis the radius changes evenly from the lower to the upper height; a
 * cylinder where both radii are the same. In millimetres.
 */
public record Profile(double zLow, double zHigh, double radiusLow, double radiusHigh) {
    public Profile {
        if (!(zLow <= zHigh) || !Double.isFinite(zHigh - zLow)) {
            throw new IllegalArgumentException(
                    "A turned body runs from a lower to an upper height, not from " + zLow + " to " + zHigh + ".");
        }
        if (!(radiusLow >= 0 && radiusHigh >= 0) || !Double.isFinite(radiusLow + radiusHigh)) {
            throw new IllegalArgumentException(
                    "A turned body needs radii of nought or more, not " + radiusLow + " and " + radiusHigh + ".");
        }
    }

    public static Profile cylinder(double zLow, double zHigh, double radius) {
        return new Profile(zLow, zHigh, radius, radius);
    }

    public boolean isCylinder() {
        return radiusLow == radiusHigh;
    }

    public double height() {
        return zHigh - zLow;
    }

    public double greatestRadius() {
        return Math.max(radiusLow, radiusHigh);
    }

    /** The radius at a height; beyond an end that of the end. */
    public double radiusAt(double z) {
        if (z <= zLow) {
            return z == zHigh ? Math.max(radiusLow, radiusHigh) : radiusLow;
        }
        return z >= zHigh ? radiusHigh : radiusLow + (z - zLow) / (zHigh - zLow) * (radiusHigh - radiusLow);
    }

    public Profile lifted(double by) {
        return new Profile(zLow + by, zHigh + by, radiusLow, radiusHigh);
    }

    /** The greatest height at which the radius is at least so much; where it nowhere is, that of the widest end. */
    double highestAsWideAs(double radius) {
        return radiusHigh >= Math.min(radius, radiusLow) ? zHigh : heightOf(radius);
    }

    /** The least height at which the radius is at least so much; where it nowhere is, that of the widest end. */
    double lowestAsWideAs(double radius) {
        return radiusLow >= Math.min(radius, radiusHigh) ? zLow : heightOf(radius);
    }

    /** The height of a radius between those of both ends, which differ. */
    private double heightOf(double radius) {
        double share = (radius - radiusLow) / (radiusHigh - radiusLow);
        return zLow + Math.max(0, Math.min(1, share)) * (zHigh - zLow);
    }

    /** π h (r² + r R + R²) / 3. */
    public double volume() {
        double squares = radiusLow * radiusLow + radiusLow * radiusHigh + radiusHigh * radiusHigh;
        return Math.PI * height() * squares / 3;
    }
}
