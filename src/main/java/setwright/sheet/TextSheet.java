package setwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A sheet as plain text of at most 100 columns, readable in a pipe. */
public final class TextSheet {
    public static final int COLUMNS = 100;

    private static final int INDENT = 2;
    private static final int GAP = 2;
    private static final int NARROWEST = 12;

    private final List<String> lines = new ArrayList<>();

    private TextSheet() {}

    public static String text(SetUpSheet sheet) {
        TextSheet text = new TextSheet();
        text.wrapped("", sheet.title());
        text.lines.add("=".repeat(COLUMNS));
        sheet.blocks().forEach(text::add);
        text.lines.add("");
        text.wrapped("", sheet.foot());
        return String.join("\n", text.lines) + "\n";
    }

    private void add(Block block) {
        switch (block.kind()) {
            case HEADING -> heading((Block.Heading) block);
            case WORDS -> ((Block.Words) block).paragraphs().forEach(words -> wrapped(" ".repeat(INDENT), words));
            case PAIRS -> pairs((Block.Pairs) block);
            case TABLE -> table((Block.Table) block);
            case ENTRY -> entry((Block.Entry) block);
        }
    }

    private void heading(Block.Heading heading) {
        lines.add("");
        wrapped("", heading.text());
        lines.add("-".repeat(Math.min(COLUMNS, heading.text().length())));
    }

    private void pairs(Block.Pairs pairs) {
        int width = pairs.pairs().stream()
                .mapToInt(pair -> pair.name().length())
                .max()
                .orElse(0);
        for (Block.Pair pair : pairs.pairs()) {
            beside(" ".repeat(INDENT) + padded(pair.name(), width) + " ".repeat(GAP), pair.text());
        }
    }

    private void entry(Block.Entry entry) {
        String number = " ".repeat(INDENT) + padded(entry.number(), 2) + " ".repeat(GAP);
        int room = COLUMNS - number.length() - entry.aside().length() - GAP;
        List<String> head = Wrap.words(entry.head(), room);
        lines.add((number + padded(head.get(0), room) + " ".repeat(GAP) + entry.aside()).stripTrailing());
        String indent = " ".repeat(number.length());
        head.stream().skip(1).forEach(more -> lines.add(indent + more));
        entry.lines().forEach(line -> beside(indent + "  ", line));
    }

    private void table(Block.Table table) {
        List<Integer> widths = widths(table);
        row(table, widths, table.columns().stream().map(Block.Column::head).toList());
        table.rows().forEach(row -> row(table, widths, row));
    }

    /** As wide as the widest cell; where that is too wide in all, the widest column gives way. */
    private static List<Integer> widths(Block.Table table) {
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            int widest = table.columns().get(i).head().length();
            for (List<String> row : table.rows()) {
                widest = Math.max(widest, row.get(i).length());
            }
            widths.add(widest);
        }
        int most = COLUMNS - INDENT - GAP * (widths.size() - 1);
        while (widths.stream().mapToInt(Integer::intValue).sum() > most) {
            int widest = Collections.max(widths);
            if (widest <= NARROWEST) {
                break;
            }
            widths.set(widths.indexOf(widest), widest - 1);
        }
        return widths;
    }

    private void row(Block.Table table, List<Integer> widths, List<String> cells) {
        List<List<String>> wrapped = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(Wrap.words(cells.get(i), widths.get(i)));
            height = Math.max(height, wrapped.get(i).size());
        }
        for (int line = 0; line < height; line++) {
            StringBuilder text = new StringBuilder(" ".repeat(INDENT));
            for (int i = 0; i < cells.size(); i++) {
                String cell = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
                String filled = table.columns().get(i).figures()
                        ? " ".repeat(widths.get(i) - cell.length()) + cell
                        : padded(cell, widths.get(i));
                text.append(i == 0 ? "" : " ".repeat(GAP)).append(filled);
            }
            lines.add(text.toString().stripTrailing());
        }
    }

    private void wrapped(String indent, String text) {
        Wrap.words(text, COLUMNS - indent.length()).forEach(line -> lines.add((indent + line).stripTrailing()));
    }

    /** The text beside its lead, its further lines under the first. */
    private void beside(String lead, String text) {
        String before = lead;
        for (String line : Wrap.words(text, COLUMNS - lead.length())) {
            lines.add((before + line).stripTrailing());
            before = " ".repeat(lead.length());
        }
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
