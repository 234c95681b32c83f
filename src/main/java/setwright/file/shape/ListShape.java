package setwright.file.shape;

import java.util.ArrayList;
import java.util.List;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.json.Way;

/** A list of values of one shape. */
public record ListShape(Shape each) implements Shape {
    @Override
    public String accepted() {
        return "a list in [ ]";
    }

    @Override
    public List<Found> check(Tree tree, String path, Checking checking) {
        if (!(tree instanceof Tree.JsonArray array)) {
            checking.problem(tree.at(), path, Unfit.wanted(accepted(), tree).getMessage());
            return List.of();
        }
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < array.items().size(); i++) {
            found.addAll(each.check(array.items().get(i), Way.item(path, i), checking));
        }
        return found;
    }

    @Override
    public Object bind(Tree tree) {
        return ((Tree.JsonArray) tree).items().stream().map(each::bind).toList();
    }

    @Override
    public Tree write(Object value) {
        return Json.array(((List<?>) value).stream().map(each::write).toList());
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object()
                .put("type", "array")
                .put("items", each.schema(definitions))
                .build();
    }
}
