package setwright.window.model;

import java.util.List;

/**
 * What a lead reads: sections in the order of doubt.
 *
 * @param sign what is to be signed next, for instance {@code Sign: planned}; empty where all is signed
 */
public record Review(List<Section> sections, String sign) {
    public static final Review EMPTY = new Review(List.of(), "");

    public Review {
        sections = List.copyOf(sections);
    }

    /** A heading and what stands below it. */
    public record Section(String heading, List<Item> items) {
        public Section {
            items = List.copyOf(items);
        }
    }

    /**
     * One thing to look at.
     *
     * @param setUp where it is; may be empty
     * @param operation where it is; may be empty
     */
    public record Item(Badge badge, String text, String said, String setUp, String operation) {
        static Item of(String text, String said) {
            return new Item(Badge.NONE, text, said, "", "");
        }
    }
}
