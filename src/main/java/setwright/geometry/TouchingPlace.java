package setwright.geometry;

/** Where a section of the tool goes into a body without hollows, with the shortest ways out. */
record TouchingPlace(Stretch stretch, WayOut level, WayOut upright) implements Tightest {
    @Override
    public Nearest nearest(Section section, Body body) {
        WayOut out = level.length() < upright.length() ? level : upright;
        Nearest.Place place = new Nearest.Place(
                out.left().onBody(), stretch.at(out.left().along()), out.way().times(-1), stretch.move());
        return new Nearest(-out.length(), -level.length(), -upright.length(), section, body, place);
    }
}
