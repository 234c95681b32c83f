package setwright.caution.choice;

/** Where a ranking stands while it is worked out, and whether anybody still wants it. */
public interface Trying {
    /** To the end, without a word. */
    Trying TO_THE_END = new Trying() {
        @Override
        public boolean dropped() {
            return false;
        }

        @Override
        public void at(int done, int of) {}
    };

    /** Asked between two trials; true ends the trying. */
    boolean dropped();

    /** Told before every trial. */
    void at(int done, int of);
}
