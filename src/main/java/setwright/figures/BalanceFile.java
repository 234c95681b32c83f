package setwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.file.json.Problem;
import setwright.file.json.Problems;
import setwright.file.json.Tree;
import setwright.file.json.TreeRead;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;

/** Reads contacts and loads for a friction balance: mm, N, N·mm. */
final class BalanceFile {
    private static final double MOST_FRICTION = 10;
    private static final Tree.JsonObject EMPTY = new Tree.JsonObject(new setwright.file.json.Place(0, 0), List.of());

    private final Problems problems = new Problems();

    private BalanceFile() {}

    /** What was read; nothing of it counts where there are problems. */
    record Read(List<Contact> contacts, List<Load> loads, List<Problem> problems) {}

    static Read read(TreeRead text) {
        BalanceFile file = new BalanceFile();
        file.problems.addAll(text.problems());
        List<Contact> contacts = new ArrayList<>();
        List<Load> loads = new ArrayList<>();
        text.tree().ifPresent(tree -> {
            Tree.JsonObject whole = file.object(tree, "", List.of("contacts", "loads"));
            List<Tree> written = file.items(whole, "contacts");
            for (int i = 0; i < written.size(); i++) {
                file.contact(written.get(i), i).ifPresent(contacts::add);
            }
            List<Tree> asked = file.items(whole, "loads");
            for (int i = 0; i < asked.size(); i++) {
                file.load(asked.get(i), i).ifPresent(loads::add);
            }
        });
        return new Read(contacts, loads, file.problems.inOrder());
    }

    private Tree.JsonObject object(Tree tree, String path, List<String> keys) {
        if (!(tree instanceof Tree.JsonObject object)) {
            problems.add(
                    tree.at(),
                    path,
                    "Found " + tree.found() + "; accepted here: an object with " + String.join(", ", keys) + ".");
            return EMPTY;
        }
        for (Tree.Member member : object.members()) {
            if (!keys.contains(member.key())) {
                problems.add(
                        member.at(),
                        path,
                        "There is no key " + member.key() + " here; accepted: " + String.join(", ", keys) + ".");
            }
        }
        return object;
    }

    private List<Tree> items(Tree.JsonObject whole, String key) {
        Optional<Tree> value = whole.get(key);
        if (value.orElse(null) instanceof Tree.JsonArray array && !array.items().isEmpty()) {
            return array.items();
        }
        if (whole != EMPTY) {
            problems.add(
                    value.map(Tree::at).orElse(whole.at()),
                    key,
                    value.map(tree -> "Found " + tree.found()).orElse("The key " + key + " is missing")
                            + "; accepted: a list of at least one in [ ].");
        }
        return List.of();
    }

    private Optional<Contact> contact(Tree tree, int index) {
        String path = "contacts[" + index + "]";
        int before = problems.inOrder().size();
        Tree.JsonObject object = object(tree, path, List.of("at", "normal", "friction", "preload"));
        if (object == EMPTY) {
            return Optional.empty();
        }
        Vector at = vector(object, "at", path, true);
        Vector normal = vector(object, "normal", path, true);
        double friction = number(object.get("friction"), object, path + "/friction", MOST_FRICTION);
        Optional<Tree> press = object.get("preload").filter(value -> !(value instanceof Tree.Nothing));
        double preload = press.isPresent() ? number(press, object, path + "/preload", Double.MAX_VALUE) : -1;
        if (problems.inOrder().size() == before && !(normal.length() > 0)) {
            problems.add(
                    object.get("normal").orElse(object).at(),
                    path + "/normal",
                    "A normal of no length has no direction.");
        }
        if (problems.inOrder().size() > before) {
            return Optional.empty();
        }
        Contact contact = Contact.reacting("contact " + (index + 1), at, normal, friction);
        return Optional.of(preload < 0 ? contact : contact.pressing(preload));
    }

    private Optional<Load> load(Tree tree, int index) {
        String path = "loads[" + index + "]";
        int before = problems.inOrder().size();
        Tree.JsonObject object = object(tree, path, List.of("at", "force", "moment"));
        if (object == EMPTY) {
            return Optional.empty();
        }
        Load load = new Load(
                "load " + (index + 1),
                vector(object, "at", path, true),
                vector(object, "force", path, object.get("moment").isEmpty()),
                vector(object, "moment", path, false));
        return problems.inOrder().size() > before ? Optional.empty() : Optional.of(load);
    }

    private Vector vector(Tree.JsonObject object, String key, String path, boolean required) {
        Optional<Tree> value = object.get(key);
        if (value.isEmpty() && !required) {
            return Vector.ZERO;
        }
        if (value.orElse(null) instanceof Tree.JsonArray array
                && array.items().size() == 3
                && array.items().stream().allMatch(BalanceFile::finite)) {
            List<Double> numbers = array.items().stream()
                    .map(item -> ((Tree.Numeral) item).value())
                    .toList();
            return new Vector(numbers.get(0), numbers.get(1), numbers.get(2));
        }
        Optional<Tree> wrong = value.map(BalanceFile::firstWrong);
        problems.add(
                wrong.map(Tree::at).orElse(object.at()),
                path + "/" + key,
                wrong.map(tree -> "Found " + tree.found() + " under " + key).orElse("The key " + key + " is missing")
                        + "; accepted: three numbers in [ ], as [0, 0, 10].");
        return Vector.ZERO;
    }

    /** Of a list with something else than a number in it the first such item, else the whole. */
    private static Tree firstWrong(Tree value) {
        return value instanceof Tree.JsonArray array
                ? array.items().stream()
                        .filter(item -> !finite(item))
                        .findFirst()
                        .orElse(value)
                : value;
    }

    private static boolean finite(Tree tree) {
        return tree instanceof Tree.Numeral numeral && Math.abs(numeral.value()) < 1e100;
    }

    private double number(Optional<Tree> value, Tree.JsonObject object, String path, double most) {
        if (value.orElse(null) instanceof Tree.Numeral numeral && numeral.value() >= 0 && numeral.value() <= most) {
            return numeral.value();
        }
        String key = path.substring(path.lastIndexOf('/') + 1);
        problems.add(
                value.map(Tree::at).orElse(object.at()),
                path,
                value.map(tree -> "Found " + tree.found() + " under " + key).orElse("The key " + key + " is missing")
                        + "; accepted: a number, 0 or more" + (most < 1e9 ? ", up to " + Input.plain(most) : "") + ".");
        return 0;
    }
}
