package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.job.Divided;
import setwright.job.InWords;
import setwright.job.Marks;
import setwright.location.indexing.Crank;
import setwright.location.indexing.Degrees;
import setwright.plan.index.FeatureIndex;
import setwright.plan.index.GearCheck;

/** The position table of a divided feature, and what a gear measures. */
final class IndexBlocks {
    private static final int SHORT_TABLE = 30;
    private static final int ABREAST = 3;
    private static final String ONE_WAY =
            "Turn one way only; past a place, go back half a turn and come again. Spindle locked at every cut. The last"
                    + " place is the first again: where it is not, stop.";

    private final Shown shown;
    private final FeatureIndex index;
    private final Divided divided;

    IndexBlocks(Shown shown, FeatureIndex index) {
        this.shown = shown;
        this.index = index;
        divided = shown.plan().job().plan().features().stream()
                .filter(feature -> feature.id().equals(index.feature()))
                .map(Divided.class::cast)
                .findFirst()
                .orElseThrow();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Positions of " + InWords.feature(divided)));
        if (index.positions().isEmpty()) {
            blocks.add(Block.Words.of(index.how()));
            return blocks;
        }
        blocks.add(Block.Words.of(index.how() + ".", ONE_WAY));
        GearCheck gear = index.gear();
        if (gear != null) {
            blocks.add(new Block.Pairs(gear(gear)));
        }
        blocks.add(table());
        return blocks;
    }

    private List<Block.Pair> gear(GearCheck gear) {
        String half = gear.half() == 0 ? "" : String.format(Locale.ROOT, "; nearer: No. %.1f", gear.half());
        return List.of(
                new Block.Pair("cutter", "No. " + gear.number() + " of the set of eight" + half),
                new Block.Pair(
                        "depth",
                        shown.length(gear.wholeDepth().inside())
                                + " by the system; the depth engraved on the cutter goes before it"),
                new Block.Pair(
                        "over pins",
                        shown.length(gear.overPins().inside()) + " over two pins of "
                                + shown.length(gear.pin().inside()) + ", without play"),
                new Block.Pair(
                        "over teeth",
                        shown.length(gear.span().inside()) + " over " + gear.spanned() + " teeth, without play"));
    }

    private Block table() {
        int abreast = index.positions().size() > SHORT_TABLE ? ABREAST : 1;
        int high = (index.positions().size() + abreast - 1) / abreast;
        List<Block.Column> columns = new ArrayList<>();
        for (int i = 0; i < abreast; i++) {
            columns.addAll(columns());
        }
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < high; row++) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < abreast; i++) {
                int at = row + i * high;
                cells.addAll(
                        at < index.positions().size()
                                ? cells(index.positions().get(at))
                                : columns().stream().map(column -> "").toList());
            }
            rows.add(cells);
        }
        return new Block.Table(columns, rows);
    }

    private List<Block.Column> columns() {
        List<Block.Column> columns = new ArrayList<>(
                List.of(Block.Column.figures("no."), Block.Column.figures("turns"), Block.Column.figures(mark())));
        if (divided.marks() != null) {
            columns.add(Block.Column.words("line"));
        }
        return columns;
    }

    private String mark() {
        return switch (index.scale().reading()) {
            case HOLES -> "hole";
            case DIAL -> "dial";
            case SIDES -> "side";
        };
    }

    private List<String> cells(Crank.Position position) {
        List<String> cells = new ArrayList<>(
                List.of(Integer.toString(position.number()), Long.toString(position.turns()), marks(index, position)));
        if (divided.marks() != null) {
            cells.add(line(divided, position));
        }
        return cells;
    }

    /** What is read beside the whole turns. */
    static String marks(FeatureIndex index, Crank.Position position) {
        return switch (index.scale().reading()) {
            case HOLES, SIDES -> Integer.toString(position.marks());
            case DIAL -> Degrees.said(index.scale().division().times(position.marks()));
        };
    }

    /** Long, middle or short; empty where all lines are alike. */
    static String line(Divided divided, Crank.Position position) {
        Marks marks = divided.marks();
        return marks == null ? "" : InWords.word(marks.at(position.number()));
    }
}
