package setwright.window.model;

import java.util.List;

/**
 * What the shop has for the chosen line, ranked.
 *
 * @param title what is ranked
 * @param working how far the working out is; empty where it is done
 * @param items the best first
 */
public record RankingPage(boolean open, String title, String working, List<Item> items) {
    public static final RankingPage CLOSED = new RankingPage(false, "", "", List.of());

    public RankingPage {
        items = List.copyOf(items);
    }

    /**
     * One thing that may be taken.
     *
     * @param text its rank and what it is; that it is taken now, or dropped
     * @param reasons for it or against it, a line each
     * @param dropped whether something stops it
     * @param takes whether it can be taken
     */
    public record Item(int rank, String text, List<String> reasons, boolean dropped, boolean takes) {
        public Item {
            reasons = List.copyOf(reasons);
        }
    }
}
