package setwright.geometry;

/**
 * The distance between a section of the tool and a solid, both about upright axes, in the upright plane in which they
 * are nearest. Across, both are halves of that plane that end at their radius; the axes are {@code apart}. The solid is
 * a cone, a cylinder, or, with radius nought, the edge of a prism.
 *
 * @param clearance the exact distance; where they touch, less the smaller overlap
 * @param side how far they clear sideways; negative by the overlap
 * @param height how far they clear in height; negative by the overlap
 * @param zTool the height of the nearest place of the tool
 * @param zBody the height of the nearest place of the solid
 */
record ProfileGap(double clearance, double side, double height, double zTool, double zBody) {
    static ProfileGap between(Profile tool, Profile body, double apart) {
        double low = Math.max(tool.zLow(), body.zLow());
        double high = Math.min(tool.zHigh(), body.zHigh());
        if (tool.isCylinder() && body.isCylinder()) {
            double side = apart - tool.radiusLow() - body.radiusLow();
            return low > high ? above(tool, body, side) : beside(tool, body, side, vertical(tool, body));
        }
        if (low <= high) {
            double side = apart - Math.max(reach(tool, body, low), reach(tool, body, high));
            if (side <= 0) {
                return beside(tool, body, side, -ProfileOverlap.inHeight(tool, body, apart));
            }
        }
        return slanted(tool, body, apart);
    }

    private static double reach(Profile tool, Profile body, double z) {
        return tool.radiusAt(z) + body.radiusAt(z);
    }

    /** The height gap of two cylinders, negative where they share heights. */
    private static double vertical(Profile tool, Profile body) {
        return Math.max(body.zLow() - tool.zHigh(), tool.zLow() - body.zHigh());
    }

    /** Two cylinders without a height in common. */
    private static ProfileGap above(Profile tool, Profile body, double side) {
        double height = vertical(tool, body);
        boolean toolAbove = tool.zLow() > body.zHigh();
        double clearance = side > 0 ? Math.sqrt(side * side + height * height) : height;
        return new ProfileGap(
                clearance,
                side,
                height,
                toolAbove ? tool.zLow() : tool.zHigh(),
                toolAbove ? body.zHigh() : body.zLow());
    }

    /** Two that share heights; the place is the middle of these, or where the height overlap, if smaller, begins. */
    private static ProfileGap beside(Profile tool, Profile body, double side, double height) {
        if (side < height) {
            boolean toolAbove = body.zHigh() - tool.zLow() <= tool.zHigh() - body.zLow();
            return new ProfileGap(
                    height,
                    side,
                    height,
                    toolAbove ? tool.zLow() : tool.zHigh(),
                    toolAbove ? body.zHigh() : body.zLow());
        }
        double middle = (Math.max(tool.zLow(), body.zLow()) + Math.min(tool.zHigh(), body.zHigh())) / 2;
        return new ProfileGap(side, side, height, middle, middle);
    }

    /** Two that do not touch: a corner of one of them is nearest to the other. */
    private static ProfileGap slanted(Profile tool, Profile body, double apart) {
        ProfileGap first = fromCorner(tool, body, apart, Corner.low(tool));
        first = first.nearer(fromCorner(tool, body, apart, Corner.high(tool)));
        first = first.nearer(fromCorner(body, tool, apart, Corner.low(body)).swapped());
        return first.nearer(fromCorner(body, tool, apart, Corner.high(body)).swapped());
    }

    private static ProfileGap fromCorner(Profile tool, Profile body, double apart, Corner corner) {
        Corner seen = new Corner(apart - corner.radius(), corner.z());
        Corner nearest = seen.nearest(body);
        double side = apart - tool.radiusAt(corner.z()) - body.radiusAt(nearest.z());
        double height = Math.abs(corner.z() - nearest.z());
        return new ProfileGap(seen.distance(nearest), side, height, corner.z(), nearest.z());
    }

    private ProfileGap nearer(ProfileGap other) {
        return other.clearance < clearance ? other : this;
    }

    private ProfileGap swapped() {
        return new ProfileGap(clearance, side, height, zBody, zTool);
    }

    /** A place in the upright plane by its distance from the axis and its height. */
    private record Corner(double radius, double z) {
        static Corner low(Profile profile) {
            return new Corner(profile.radiusLow(), profile.zLow());
        }

        static Corner high(Profile profile) {
            return new Corner(profile.radiusHigh(), profile.zHigh());
        }

        double distance(Corner other) {
            double across = radius - other.radius;
            double up = z - other.z;
            return Math.sqrt(across * across + up * up);
        }

        /** The place of a profile, without end inward, that is nearest to this one. */
        Corner nearest(Profile profile) {
            if (z >= profile.zLow() && z <= profile.zHigh() && radius <= profile.radiusAt(z)) {
                return this;
            }
            Corner best = new Corner(Math.min(radius, profile.radiusLow()), profile.zLow());
            best = nearer(best, new Corner(Math.min(radius, profile.radiusHigh()), profile.zHigh()));
            return nearer(best, onSlant(profile));
        }

        private Corner nearer(Corner a, Corner b) {
            return distance(b) < distance(a) ? b : a;
        }

        private Corner onSlant(Profile profile) {
            double out = profile.radiusHigh() - profile.radiusLow();
            double up = profile.height();
            double squared = out * out + up * up;
            double along = (radius - profile.radiusLow()) * out + (z - profile.zLow()) * up;
            double fraction = squared == 0 ? 0 : Math.max(0, Math.min(1, along / squared));
            return new Corner(profile.radiusLow() + fraction * out, profile.zLow() + fraction * up);
        }
    }
}
