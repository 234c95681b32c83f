package setwright.file.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.json.Way;

/** Values by the constants of an enum: an object, written with its keys sorted. */
public record MapShape(NameShape names, Shape each) implements Shape {
    @Override
    public String accepted() {
        return "an object in { } with keys from " + names.accepted();
    }

    @Override
    public List<Found> check(Tree tree, String path, Checking checking) {
        if (!(tree instanceof Tree.JsonObject object)) {
            checking.problem(tree.at(), path, Unfit.wanted(accepted(), tree).getMessage());
            return List.of();
        }
        List<Found> found = new ArrayList<>();
        for (Tree.Member member : object.members()) {
            String way = Way.key(path, member.key());
            names.check(new Tree.Text(member.at(), member.key()), way, checking);
            found.addAll(each.check(member.value(), way, checking));
        }
        return found;
    }

    @Override
    public Object bind(Tree tree) {
        Map<Object, Object> map = new LinkedHashMap<>();
        for (Tree.Member member : ((Tree.JsonObject) tree).members()) {
            map.put(names.bind(new Tree.Text(member.at(), member.key())), each.bind(member.value()));
        }
        return map;
    }

    @Override
    public Tree write(Object value) {
        Map<String, Tree> sorted = new TreeMap<>();
        ((Map<?, ?>) value).forEach((key, item) -> sorted.put(NameShape.written(key), each.write(item)));
        Json.ObjectBuilder object = Json.object();
        sorted.forEach(object::put);
        return object.build();
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object()
                .put("type", "object")
                .put("propertyNames", names.schema(definitions))
                .put("additionalProperties", each.schema(definitions))
                .build();
    }
}
