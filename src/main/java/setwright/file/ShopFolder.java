package setwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import setwright.file.json.Problem;
import setwright.file.json.Problems;
import setwright.file.json.TextFile;
import setwright.file.json.Tree;
import setwright.file.json.TreeRead;
import setwright.file.json.Way;
import setwright.file.shape.Checking;
import setwright.file.shape.ChoiceShape;
import setwright.file.shape.FormShape;
import setwright.file.shape.Shapes;
import setwright.shop.Shop;
import setwright.shop.ShopRow;

/** Reads the files of a shop: one for each kind of row. */
public final class ShopFolder {
    /** The file that tells a folder of a shop from another. */
    static final String MACHINES = ShopFile.MACHINES.file();

    private static final FormShape DOCUMENT = Shapes.record(ShopDocument.class);
    private static final String ROWS = "rows";
    private static final String PACKED = "/shared/";

    private final Problems problems = new Problems();
    private final DomainRules rules = new DomainRules(Shop.of(List.of()), problems);
    private final List<Part> parts = new ArrayList<>();

    private ShopFolder() {}

    /** A row that was checked, and what it is to be made by. */
    private record Part(ChoiceShape shape, Tree tree) {}

    public static ShopRead read(Path folder) {
        if (!Files.isDirectory(folder)) {
            return new ShopRead.Refused(List.of(
                    Problem.whole("There is no folder " + folder + "; name the folder that holds " + MACHINES + ".")));
        }
        return new ShopFolder()
                .all(
                        file -> TextFile.read(folder.resolve(file.file())),
                        file -> Files.exists(folder.resolve(file.file())));
    }

    /** The shop that is packed with the program. */
    public static ShopRead packed() {
        return new ShopFolder().all(file -> packed(file.file()), file -> true);
    }

    private static TreeRead packed(String file) {
        try (InputStream in = ShopFolder.class.getResourceAsStream(PACKED + file)) {
            return in == null ? notPacked(file) : TextFile.read(in);
        } catch (IOException e) {
            return notPacked(file);
        }
    }

    private static TreeRead notPacked(String file) {
        return new TreeRead(
                Optional.empty(),
                List.of(Problem.whole("The program was packed without " + file + "; fetch it again.")));
    }

    private ShopRead all(Function<ShopFile, TreeRead> files, Predicate<ShopFile> there) {
        for (ShopFile file : ShopFile.values()) {
            if (!file.needed() && !there.test(file)) {
                continue;
            }
            Problems own = new Problems();
            TreeRead read = files.apply(file);
            own.addAll(read.problems());
            Optional<Tree.JsonObject> document = read.tree().flatMap(tree -> Envelope.SHOP.open(tree, own));
            own.inOrder().forEach(problem -> problems.add(in(file, problem)));
            document.ifPresent(tree -> check(file, tree));
        }
        rules.finish();
        return problems.none() ? shop() : refused();
    }

    private static Problem in(ShopFile file, Problem problem) {
        String path = problem.path().isEmpty() ? file.file() : Way.key(file.file(), problem.path());
        return new Problem(problem.line(), problem.column(), path, problem.message());
    }

    private void check(ShopFile file, Tree.JsonObject document) {
        DOCUMENT.check(document, file.file(), new Checking(problems, record -> {}));
        if (document.get(ROWS).orElse(null) instanceof Tree.JsonArray rows) {
            ChoiceShape shape = Shapes.family(file.rows());
            for (int i = 0; i < rows.items().size(); i++) {
                rows(shape, rows.items().get(i), Way.item(Way.key(file.file(), ROWS), i));
            }
        }
    }

    private void rows(ChoiceShape shape, Tree row, String path) {
        if (!Series.is(row)) {
            row(shape, row, path);
            return;
        }
        List<Tree> expanded = Series.expand(row, path, problems);
        for (int i = 0; i < expanded.size(); i++) {
            row(shape, expanded.get(i), Way.item(Way.key(path, ROWS), i));
        }
    }

    private void row(ChoiceShape shape, Tree row, String path) {
        shape.check(row, path, new Checking(problems, rules));
        parts.add(new Part(shape, row));
    }

    private ShopRead shop() {
        List<ShopRow> rows = new ArrayList<>();
        for (Part part : parts) {
            Shapes.bind(part.shape(), part.tree(), ShopRow.class, problems).ifPresent(rows::add);
        }
        return problems.none() ? new ShopRead.Opened(Shop.of(rows)) : refused();
    }

    /** File by file, in each by line. */
    private ShopRead refused() {
        List<Problem> inOrder = new ArrayList<>(problems.inOrder());
        inOrder.sort(Comparator.comparingInt(problem -> ShopFile.indexOf(problem.path())));
        return new ShopRead.Refused(inOrder);
    }
}
