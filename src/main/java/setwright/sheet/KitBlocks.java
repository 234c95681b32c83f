package setwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** The kit on the sheet: a column of places, a column of things. */
final class KitBlocks {
    private KitBlocks() {}

    static List<Block> of(Kit kit) {
        List<List<String>> rows = new ArrayList<>();
        for (Kit.Shelf shelf : kit.shelves()) {
            String place = shelf.place();
            for (Kit.Item item : shelf.items()) {
                rows.add(List.of(place, item.name() + (item.remark().isEmpty() ? "" : " (" + item.remark() + ")")));
                place = "";
            }
        }
        return List.of(
                new Block.Heading("Kit"),
                new Block.Table(List.of(Block.Column.words("kept"), Block.Column.words("fetch")), rows));
    }
}
