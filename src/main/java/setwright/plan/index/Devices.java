package setwright.plan.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import setwright.job.DrawnDevice;
import setwright.location.indexing.Crank;
import setwright.location.indexing.CrankMove;
import setwright.location.indexing.Degrees;
import setwright.location.indexing.DifferentialIndexing;
import setwright.location.indexing.DifferentialWay;
import setwright.location.indexing.IndexHead;
import setwright.location.indexing.IndexPlates;
import setwright.location.indexing.IndexWays;
import setwright.location.indexing.PlainIndexing;
import setwright.plan.Rows;
import setwright.quantity.Rational;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.RotaryTable;

/** How a device comes to a number of divisions. */
record Devices(Rows rows) {
    /** A move in words with the positions that it gives. */
    record Way(String how, FeatureIndex.Scale scale, List<Crank.Position> positions) {}

    /** Empty on a device that does not index. */
    Optional<Way> way(DrawnDevice holding, int divisions) {
        String id = holding.device().value();
        return switch (holding.on()) {
            case ROTARY_TABLE ->
                rows.row(id, RotaryTable.class)
                        .map(row -> orRefused(row.name(), FeatureIndex.Reading.DIAL, () -> rotary(row, divisions)));
            case DIVIDING_HEAD ->
                rows.row(id, DividingHead.class)
                        .map(row -> orRefused(row.name(), FeatureIndex.Reading.HOLES, () -> head(row, divisions)));
            case COLLET_BLOCK -> rows.row(id, ColletBlock.class).map(row -> block(row, divisions));
            case V_BLOCKS, ANGLE_PLATE, FIXTURE_PLATE, SET_UP_BLOCKS, MAGNETIC_CHUCK -> Optional.empty();
        };
    }

    /** What a row of the shop says wrongly is said in its place. */
    private static Way orRefused(String name, FeatureIndex.Reading reading, Supplier<Way> way) {
        try {
            return way.get();
        } catch (IllegalArgumentException unread) {
            return new Way(
                    name + " cannot be worked with: " + unread.getMessage(), FeatureIndex.Scale.of(reading), List.of());
        }
    }

    private static Way rotary(RotaryTable table, int divisions) {
        Rational division = Degrees.exact(table.division().inside());
        Crank crank = Crank.rotary(table.ratio(), division);
        String turn = Degrees.said(Rational.of(360, table.ratio()));
        return new Way(
                table.name() + ": " + turn + " a turn of the handle, dial in "
                        + table.division().text() + off(crank, divisions),
                new FeatureIndex.Scale(FeatureIndex.Reading.DIAL, division),
                crank.positions(divisions));
    }

    private static String off(Crank crank, int divisions) {
        Rational worst = crank.worst(divisions).times(360);
        return worst.signum() == 0
                ? "; every position falls on a mark"
                : "; no position is off by more than " + Degrees.said(worst);
    }

    private static Way block(ColletBlock block, int divisions) {
        Crank crank = new Crank(1, block.sides());
        FeatureIndex.Scale scale = FeatureIndex.Scale.of(FeatureIndex.Reading.SIDES);
        if (!crank.divides(divisions)) {
            return new Way(
                    block.name() + " has " + block.sides() + " sides and does not divide in " + divisions
                            + "; a dividing head or rotary table does.",
                    scale,
                    List.of());
        }
        int step = block.sides() / divisions;
        return new Way(
                block.name() + ": " + (step == 1 ? "the next side" : step + " sides on") + " at every division",
                scale,
                crank.positions(divisions));
    }

    private static Way head(DividingHead row, int divisions) {
        IndexHead head = new IndexHead(row.ratio(), IndexPlates.of(row.plates()), "", gears(row));
        FeatureIndex.Scale scale = FeatureIndex.Scale.of(FeatureIndex.Reading.HOLES);
        List<CrankMove> plain = PlainIndexing.exact(head.turns(divisions, 1), head);
        if (!plain.isEmpty()) {
            CrankMove move = plain.get(0);
            Crank crank = new Crank(row.ratio(), move.circle());
            return new Way(
                    row.name() + ": " + IndexWays.said(move) + " (" + move.plate() + ")" + arms(move),
                    scale,
                    crank.positions(divisions));
        }
        List<DifferentialWay> geared = head.gears().isEmpty() ? List.of() : DifferentialIndexing.ways(divisions, head);
        return geared.isEmpty()
                ? new Way(
                        row.name() + " does not come to " + divisions
                                + " exactly; a rotary table does to its division.",
                        scale,
                        List.of())
                : new Way(
                        row.name() + ", plate geared: " + IndexWays.said(geared.get(0))
                                + arms(geared.get(0).move())
                                + "; turn the crank a little and see which way the plate goes",
                        scale,
                        geared(divisions, geared.get(0).move()));
    }

    private static List<Integer> gears(DividingHead row) {
        String gears = row.gears();
        return gears == null
                ? List.of()
                : Stream.of(gears.strip().split("[\\s,]+")).map(Devices::teeth).toList();
    }

    private static int teeth(String word) {
        if (!word.matches("\\d{1,4}")) {
            throw new IllegalArgumentException("'" + word + "' is no number of teeth of a change gear.");
        }
        return Integer.parseInt(word);
    }

    private static String arms(CrankMove move) {
        return move.holes() == 0
                ? ""
                : "; sector arms over " + move.betweenArms() + " holes, the one with the pin among them";
    }

    /** Counted on the plate, which turns itself: the last stands where the work is round, not where the pin began. */
    private static List<Crank.Position> geared(int divisions, CrankMove move) {
        List<Crank.Position> all = new ArrayList<>();
        long spaces = move.turns() * move.circle() + move.holes();
        for (int j = 0; j <= divisions; j++) {
            all.add(new Crank.Position(
                    j,
                    Rational.of(j, divisions),
                    j * spaces / move.circle(),
                    (int) (j * spaces % move.circle()),
                    Rational.ZERO));
        }
        return List.copyOf(all);
    }
}
