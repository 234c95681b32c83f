package setwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import setwright.file.json.Json;
import setwright.file.json.Place;
import setwright.file.json.Tree;

/**
 * Version 0 had a size with what it may be larger and smaller, {@code {"size": "82 mm", "plus": "1 mm", "minus": "0
 * mm"}}, and the machine as the bare id of its row under {@code machineRow}.
 */
final class JobFromVersion0 implements UnaryOperator<Tree.JsonObject> {
    private static final String PLAN = "plan";
    private static final String MACHINE_ROW = "machineRow";

    @Override
    public Tree.JsonObject apply(Tree.JsonObject document) {
        return document.get(PLAN)
                .filter(Tree.JsonObject.class::isInstance)
                .map(plan -> document.with(PLAN, plan((Tree.JsonObject) plan)))
                .orElse(document);
    }

    private static Tree.JsonObject plan(Tree.JsonObject old) {
        Tree.JsonObject plan = (Tree.JsonObject) sizes(old);
        Optional<Tree> row = plan.get(MACHINE_ROW);
        if (row.isEmpty()) {
            return plan;
        }
        Tree.JsonObject machine = new Tree.JsonObject(row.get().at(), List.of())
                .with("machine", row.get())
                .with("clockedIn", new Tree.JsonArray(row.get().at(), List.of()));
        return plan.without(MACHINE_ROW).with("machine", machine);
    }

    private static Tree sizes(Tree tree) {
        return switch (tree.kind()) {
            case OBJECT -> size(members((Tree.JsonObject) tree));
            case ARRAY ->
                new Tree.JsonArray(
                        tree.at(),
                        ((Tree.JsonArray) tree)
                                .items().stream().map(JobFromVersion0::sizes).toList());
            case TEXT, NUMERAL, FLAG, NOTHING -> tree;
        };
    }

    private static Tree.JsonObject members(Tree.JsonObject object) {
        List<Tree.Member> members = new ArrayList<>();
        for (Tree.Member member : object.members()) {
            members.add(new Tree.Member(member.key(), member.at(), sizes(member.value())));
        }
        return new Tree.JsonObject(object.at(), members);
    }

    private static Tree.JsonObject size(Tree.JsonObject object) {
        Optional<String> size = object.text("size");
        Optional<String> plus = object.text("plus");
        Optional<String> minus = object.text("minus");
        if (size.isEmpty() || plus.isEmpty() || minus.isEmpty()) {
            return object;
        }
        return new Tree.JsonObject(object.at(), List.of())
                .with("nominal", object.get("size").orElseGet(Json::nothing))
                .with("least", new Tree.Text(at(object, "minus"), size.get() + " - " + minus.get()))
                .with("greatest", new Tree.Text(at(object, "plus"), size.get() + " + " + plus.get()));
    }

    private static Place at(Tree.JsonObject object, String key) {
        return object.get(key).map(Tree::at).orElse(object.at());
    }
}
