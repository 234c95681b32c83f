package setwright.file.shape;

import java.util.List;
import setwright.file.json.Tree;

/** A value without parts. */
sealed interface LeafShape extends Shape permits WordsShape, CountShape, FlagShape, NameShape, AmountShape {
    /** @throws Unfit where the tree is not such a value */
    Object value(Tree tree);

    @Override
    default List<Found> check(Tree tree, String path, Checking checking) {
        try {
            return List.of(new Found(value(tree), path, tree));
        } catch (Unfit e) {
            checking.problem(tree.at(), path, e.getMessage());
            return List.of();
        }
    }

    @Override
    default Object bind(Tree tree) {
        return value(tree);
    }
}
