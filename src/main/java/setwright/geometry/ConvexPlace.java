package setwright.geometry;

/** Where a section of the tool passes a body without hollows. */
record ConvexPlace(Stretch stretch, ConvexGap gap) implements Tightest {
    @Override
    public Nearest nearest(Section section, Body body) {
        Point3 step = gap.onBody().minus(gap.onTool());
        Point3 level = new Point3(step.x(), step.y(), 0);
        Nearest.Place place = new Nearest.Place(
                gap.onBody(), stretch.at(gap.along()), gap.apart().times(-1), stretch.move());
        double clearance = Math.max(0, gap.distance() - stretch.bulge());
        return new Nearest(clearance, level.length(), Math.abs(step.z()), section, body, place);
    }
}
