package setwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.shape.ChoiceShape;
import setwright.file.shape.Shapes;
import setwright.shop.Shop;
import setwright.shop.ShopRow;

/**
 * A row that a job carries and the shop has otherwise or not at all; the plan uses the job's copy.
 *
 * @param copy the row as the job has it
 * @param inShop the row as the shop has it; null where it has none of that id
 * @param differences what the two rows say differently; empty where the shop has none
 */
public record RowNote(ShopRow copy, @Nullable ShopRow inShop, List<Difference> differences) {
    private static final ChoiceShape ROWS = Shapes.family(ShopRow.class);

    public RowNote {
        differences = List.copyOf(differences);
    }

    /** One key of a row; a text is empty where that row leaves the key out. */
    public record Difference(String key, String copy, String inShop) {}

    /** The caution that it raises. */
    public String slug() {
        return inShop == null ? "not-in-shop" : "shop-row-changed";
    }

    /** A note for every row that is not the shop's, in the order of the job. */
    static List<RowNote> of(List<ShopRow> copies, Shop shop) {
        List<RowNote> notes = new ArrayList<>();
        for (ShopRow copy : copies) {
            Optional<ShopRow> inShop = shop.row(copy.id());
            if (inShop.isEmpty()) {
                notes.add(new RowNote(copy, null, List.of()));
            } else if (!inShop.get().equals(copy)) {
                notes.add(new RowNote(copy, inShop.get(), differences(copy, inShop.get())));
            }
        }
        return notes;
    }

    private static List<Difference> differences(ShopRow copy, ShopRow inShop) {
        Tree.JsonObject ours = (Tree.JsonObject) ROWS.write(copy);
        Tree.JsonObject theirs = (Tree.JsonObject) ROWS.write(inShop);
        List<Difference> differences = new ArrayList<>();
        for (Tree.Member member : ours.members()) {
            compare(member.key(), ours, theirs, differences);
        }
        for (Tree.Member member : theirs.members()) {
            if (ours.get(member.key()).isEmpty()) {
                compare(member.key(), ours, theirs, differences);
            }
        }
        return differences;
    }

    private static void compare(
            String key, Tree.JsonObject ours, Tree.JsonObject theirs, List<Difference> differences) {
        Difference difference = new Difference(key, words(ours.get(key)), words(theirs.get(key)));
        if (!difference.copy().equals(difference.inShop())) {
            differences.add(difference);
        }
    }

    private static String words(Optional<Tree> value) {
        return value.map(tree -> tree instanceof Tree.Text text ? text.text() : Json.text(tree, Json.Layout.ONE_LINE))
                .orElse("");
    }
}
