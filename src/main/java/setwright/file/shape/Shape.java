package setwright.file.shape;

import java.util.List;
import setwright.file.json.Tree;

/** How one kind of value stands in a file. */
public sealed interface Shape
        permits LeafShape, FormShape, ChoiceShape, ListShape, MapShape, PlannableShape, TreeShape {
    /** What is accepted here, in words. */
    String accepted();

    /** Reports every problem below a tree, and gives the values in it that are whole. */
    List<Found> check(Tree tree, String path, Checking checking);

    /** The value of a tree that was checked without a problem. */
    Object bind(Tree tree);

    Tree write(Object value);

    /** A JSON Schema of what is accepted. */
    Tree schema(Definitions definitions);

    /** A value that was found whole, and where. */
    record Found(Object value, String path, Tree tree) {}
}
