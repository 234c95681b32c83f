package setwright.geometry;

import java.util.List;

/**
 * What a section of the tool passes through in height while the tool point goes from one height to another: for a
 * cone the cone at the end where it reaches furthest, and the cylinder that its widest circle passes through.
 *
 * @param tipLow the lowest height of the tool point for which this holds
 * @param tipHigh the highest such height
 * @param low where above the tool point the part of the section begins that passes here
 * @param high where it ends
 */
record Swept(Profile profile, double tipLow, double tipHigh, double low, double high) {
    static List<Swept> of(Profile section, double tipLow, double tipHigh) {
        double low = section.zLow();
        double high = section.zHigh();
        if (tipLow == tipHigh) {
            return List.of(new Swept(section.lifted(tipLow), tipLow, tipHigh, low, high));
        }
        if (section.isCylinder()) {
            Profile passed = Profile.cylinder(tipLow + low, tipHigh + high, section.radiusLow());
            return List.of(new Swept(passed, tipLow, tipHigh, low, high));
        }
        boolean wideAbove = section.radiusHigh() > section.radiusLow();
        double tip = wideAbove ? tipLow : tipHigh;
        double widest = wideAbove ? high : low;
        Profile passed = Profile.cylinder(tipLow + widest, tipHigh + widest, section.greatestRadius());
        return List.of(
                new Swept(section.lifted(tip), tip, tip, low, high),
                new Swept(passed, tipLow, tipHigh, widest, widest));
    }

    /** The height of the tool point, nearest to a wanted one, at which this section is at a height. */
    double tipAt(double z, double wanted) {
        double from = Math.max(tipLow, Math.min(tipHigh, z - high));
        double to = Math.max(from, Math.min(tipHigh, z - low));
        return Math.max(from, Math.min(to, wanted));
    }
}
