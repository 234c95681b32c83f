package setwright.geometry;

/** What a section of the tool passes through while the tool point goes straight from one place to another. */
record SweptSection(Profile profile, Point3 from, Point3 to) implements Convex {
    @Override
    public Point3 furthest(Point3 way) {
        Point3 tip = share(way) == 0 ? from : to;
        double across = Math.sqrt(way.x() * way.x() + way.y() * way.y());
        double low = profile.radiusLow() * across + profile.zLow() * way.z();
        double high = profile.radiusHigh() * across + profile.zHigh() * way.z();
        double radius = low >= high ? profile.radiusLow() : profile.radiusHigh();
        double z = low >= high ? profile.zLow() : profile.zHigh();
        double factor = across == 0 ? 0 : radius / across;
        return new Point3(tip.x() + factor * way.x(), tip.y() + factor * way.y(), tip.z() + z);
    }

    /** How far along the move the place that lies furthest in a direction is passed: 0 or 1. */
    double share(Point3 way) {
        double ahead = way.x() * (to.x() - from.x()) + way.y() * (to.y() - from.y()) + way.z() * (to.z() - from.z());
        return ahead > 0 ? 1 : 0;
    }

    Point3 tip(double share) {
        return share <= 0 ? from : share >= 1 ? to : from.plus(to.minus(from).times(share));
    }

    SweptSection shifted(Point3 by) {
        return new SweptSection(profile, from.plus(by), to.plus(by));
    }
}
