package setwright.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import setwright.shop.Kept;
import setwright.shop.Owned;
import setwright.shop.Shop;
import setwright.shop.ShopRow;

/** What the shop owns. */
@Command(
        name = "shop",
        description = "Prints what the shop owns: how much of each kind, or every row of one kind.",
        sortOptions = false)
final class ShopCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(arity = "0..2", paramLabel = "list KIND", description = "every row of a kind, such as 'list cutter'")
    private List<String> words = new ArrayList<>();

    ShopCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Shop shop = new ShopShelf(shared.shop(), terminal.folder()).shop(null);
        if (words.isEmpty()) {
            terminal.line(counts(shop));
        } else if (words.get(0).equals("list") && words.size() == 2) {
            terminal.line(list(shop, kind(words.get(1))));
        } else {
            throw new Complaint("'" + String.join(" ", words)
                    + "' is not accepted; accepted: list KIND, with KIND one of " + kinds() + ".");
        }
        return Exit.CLEAN.code();
    }

    private static String word(ShopRow.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String kinds() {
        return Arrays.stream(ShopRow.Kind.values()).map(ShopCommand::word).collect(Collectors.joining(", "));
    }

    private static ShopRow.Kind kind(String word) {
        String one = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(ShopRow.Kind.values())
                .filter(kind -> word(kind).equals(one) || (word(kind) + "s").equals(one))
                .findFirst()
                .orElseThrow(() -> new Complaint("The shop has no kind '" + word + "'; it has " + kinds() + "."));
    }

    private static String counts(Shop shop) {
        TextTable table = new TextTable("kind", ">rows", "~such as");
        for (ShopRow.Kind kind : ShopRow.Kind.values()) {
            List<ShopRow> rows = rows(shop, kind);
            table.row(
                    word(kind),
                    Integer.toString(rows.size()),
                    rows.isEmpty() ? "" : rows.get(0).name());
        }
        return table.text("") + "\n'shop list KIND' prints every row of a kind.";
    }

    private static List<ShopRow> rows(Shop shop, ShopRow.Kind kind) {
        return shop.rows().stream().filter(row -> row.kind() == kind).toList();
    }

    private static String list(Shop shop, ShopRow.Kind kind) {
        TextTable table = new TextTable("id", "~name", "~kept", ">owned");
        for (ShopRow row : rows(shop, kind)) {
            Optional<Kept> kept = kept(row);
            table.row(
                    row.id(),
                    row.name(),
                    kept.map(Kept::place).orElse(""),
                    kept.map(where ->
                                    where.owned() == Kept.NOT_COUNTED ? "not counted" : Integer.toString(where.owned()))
                            .orElse(""));
        }
        return table.text("").stripTrailing();
    }

    private static Optional<Kept> kept(ShopRow row) {
        return row instanceof Owned owned ? Optional.of(owned.kept()) : Optional.empty();
    }
}
