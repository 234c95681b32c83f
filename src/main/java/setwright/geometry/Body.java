package setwright.geometry;

/** A thing in the set-up that the tool must keep clear of. */
public record Body(String name, Role role, Solid solid) {
    public Body placed(Placement placement) {
        return new Body(name, role, solid.placed(placement));
    }
}
