package setwright.location.indexing;

/** How many divisions are worked out. */
final class Divisions {
    static final int MOST = 10_000;

    private Divisions() {}

    /** @throws IllegalArgumentException where a circle is not divided so */
    static void require(int divisions) {
        if (divisions < 1 || divisions > MOST) {
            throw new IllegalArgumentException("A circle is divided in 1 to " + MOST + ", not in " + divisions + ".");
        }
    }

    static long common(long a, long b) {
        return b == 0 ? Math.abs(a) : common(b, a % b);
    }
}
