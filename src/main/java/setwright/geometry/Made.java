package setwright.geometry;

/**
 * Something in the frame in which it was made.
 *
 * @param since how the part was moved since
 */
record Made<S extends Single>(S solid, Placement since) {
    Made<S> moved(Placement by) {
        return new Made<>(solid, since.then(by));
    }

    /** True where it can be shown exactly as it lies now. */
    boolean isExact() {
        return solid.staysExact(since);
    }

    /** As it lies now. */
    Single now() {
        return solid.placed(since);
    }
}
