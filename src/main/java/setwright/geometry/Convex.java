package setwright.geometry;

/** Something without a hollow, known by how far it reaches each way. */
interface Convex {
    /** One of its places that lie furthest in a direction of any length but nought. */
    Point3 furthest(Point3 way);
}
