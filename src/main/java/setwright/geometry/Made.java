package setwright.geometry;

/**
 * Something in the frame in which it was made.
 *
 * @param since how the part was moved since
 */
record Made<S extends Single>(S solid, Motion since) {
    Made<S> moved(Motion by) {
        return new Made<>(solid, since.then(by));
    }

    /** True where it can be shown exactly as it lies now. */
    boolean isExact() {
        return solid.staysExact(since);
    }

    /** As it lies now, never smaller than it is. */
    Single now() {
        return solid.moved(since);
    }

    /** As it lies now, never larger than it is; only where it is exact. */
    Single within() {
        return solid.within(since);
    }
}
