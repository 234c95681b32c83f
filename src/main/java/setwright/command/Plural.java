package setwright.command;

/** A number of things in words. */
final class Plural {
    private Plural() {}

    static String of(int count, String one, String several) {
        return count + " " + (count == 1 ? one : several);
    }
}
