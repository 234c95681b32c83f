package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import setwright.job.Drawn;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Plannable;
import setwright.job.Standing;
import setwright.shop.Jack;
import setwright.shop.Parallels;
import setwright.shop.SetUpBlocks;

/** What a part on the table is packed up with: blocks or thick parallels, the lowest that leave room below. */
final class TablePacking {
    /** A thinner parallel falls over on the table, mm (common practice). */
    private static final double STANDS = 9;

    /** So many bear without rocking. */
    private static final int THREE = 3;

    private final Drafting drafting;
    private final int pieces;
    private final double need;

    /**
     * @param cut what is cut in the set-up
     * @param pieces how many straps want something under them
     */
    TablePacking(Drafting drafting, List<Feature> cut, int pieces) {
        this.drafting = drafting;
        this.pieces = pieces;
        need = cut.stream()
                .filter(CutAreas::through)
                .mapToDouble(feature -> feature instanceof Hole hole ? under(hole) : PackingNeed.UNDER_OPENING)
                .max()
                .orElse(0);
    }

    private static double under(Hole hole) {
        return PackingNeed.UNDER_HOLE_SHARE * hole.size().nominal().inside() + PackingNeed.UNDER_HOLE;
    }

    /** Whether something goes through the part, and the shop has what it could stand on. */
    boolean wanted() {
        return need > 0 && !all().isEmpty();
    }

    /** The owned jacks of which there are three, lowest first, run half way up. */
    Packing jack() {
        return drafting.rows().all(Jack.class).stream()
                .filter(row -> row.kept().owned() < 0 || row.kept().owned() >= THREE)
                .min(Comparator.comparingDouble((Jack row) -> row.least().inside())
                        .thenComparing(Jack::id))
                .map(row -> new Packing(
                        row.id(),
                        drafting.length((row.least().inside() + row.greatest().inside()) / 2),
                        row.foot().inside()))
                .orElse(Packing.NONE);
    }

    /** Of the row that a person named, else of any: the lowest that is high enough, else the highest. */
    Packing choose(Plannable<String> named) {
        String set = named.standing() == Standing.PENCILLED
                ? ""
                : Drawn.of(named, () -> "").value();
        List<Packing> fitting = (set.isEmpty() ? all() : every())
                .stream().filter(one -> set.isEmpty() || one.set().equals(set)).toList();
        return fitting.stream()
                .filter(one -> one.height().inside() >= need)
                .min(Comparator.comparingDouble((Packing one) -> one.height().inside())
                        .thenComparing(Packing::set))
                .or(() -> fitting.stream()
                        .max(Comparator.comparingDouble(one -> one.height().inside())))
                .orElse(Packing.NONE);
    }

    /** Set-up blocks on each of their sides where there is one for every strap, else parallels, else any blocks. */
    private List<Packing> all() {
        List<Packing> enough = blocks(pieces);
        List<Packing> parallels = enough.isEmpty() ? parallels() : List.of();
        return Stream.of(enough, parallels, blocks(1))
                .filter(some -> !some.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private List<Packing> every() {
        return Stream.concat(blocks(1).stream(), parallels().stream()).toList();
    }

    private List<Packing> blocks(int least) {
        List<Packing> blocks = new ArrayList<>();
        for (SetUpBlocks row : drafting.rows().all(SetUpBlocks.class)) {
            int owned = row.kept().owned();
            if (owned < 0 || owned * row.pieces() >= least) {
                row.sizes().forEach(size -> blocks.add(new Packing(row.id(), size, size.inside())));
            }
        }
        return blocks;
    }

    private List<Packing> parallels() {
        List<Packing> found = new ArrayList<>();
        for (Parallels row : drafting.rows().all(Parallels.class)) {
            if (row.kept().owned() != 0 && row.thickness().inside() >= STANDS) {
                row.heights()
                        .forEach(height -> found.add(
                                new Packing(row.id(), height, row.thickness().inside())));
            }
        }
        return found;
    }
}
