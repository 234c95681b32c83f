package setwright.file.shape;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that a misspelt one was meant for. */
public final class Closest {
    private Closest() {}

    /**
     * The name with the fewest letters to change, leave out, put in or swap with their neighbour; none where more than
     * a third of the letters would have to be.
     */
    public static Optional<String> to(String misspelt, Collection<String> names) {
        Optional<String> closest = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (String name : names) {
            if (Math.abs(name.length() - misspelt.length()) <= most(name)) {
                int changes = changes(misspelt.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
                if (changes <= most(name) && changes < fewest) {
                    fewest = changes;
                    closest = Optional.of(name);
                }
            }
        }
        return closest;
    }

    private static int most(String name) {
        return Math.max(1, name.length() / 3);
    }

    /** Row by row over the letters of {@code a}; a swap of neighbours counts once. */
    private static int changes(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(above[j - 1] + other, Math.min(above[j], row[j - 1]) + 1);
                if (swapped(a, b, i, j)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            before = above;
            above = row;
        }
        return above[b.length()];
    }

    private static boolean swapped(String a, String b, int i, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
