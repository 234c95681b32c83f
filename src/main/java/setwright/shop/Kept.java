package setwright.shop;

/**
 * Where a thing is kept and how many are owned; a set counts as one.
 *
 * @param place the drawer, cabinet or board, in the shop's words
 * @param owned how many, 0 where none; -1 where nobody has counted yet
 */
public record Kept(String place, int owned) {
    /** Nobody has counted this place yet. */
    public static final int NOT_COUNTED = -1;
}
