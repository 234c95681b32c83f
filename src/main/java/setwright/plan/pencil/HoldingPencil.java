package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Drawn;
import setwright.job.DrawnVise;
import setwright.job.SetUp;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.plan.part.Lying;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Parallels;
import setwright.shop.ShopRow;
import setwright.shop.SoftJaws;
import setwright.shop.Vise;

/** Holding and packing: the vise that takes the part, and the parallels that no hole meets. */
final class HoldingPencil {
    private final Drafting drafting;

    HoldingPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    DrawnVise vise(SetUp setUp, Side up) {
        ViseHolding ink = setUp.holding() instanceof ViseHolding written ? written : ViseHolding.pencilled();
        Lying lying = Lying.of(drafting.block(), up, setUp.quarterTurns());
        Drawn<String> vise =
                Drawn.of(ink.vise(), () -> chooseVise(lying.across().greatestMm()));
        Optional<Vise> row = drafting.rows().vise(vise.value());
        Drawn<ViseHolding.JawSeat> seat =
                Drawn.of(ink.seat(), () -> seat(row, lying.across().greatestMm()));
        Packing packing =
                row.map(found -> pack(jawHeight(ink, found), lying, up)).orElse(Packing.NONE);
        Drawn<String> parallels = Drawn.of(ink.parallels(), packing::set);
        Drawn<Typed<Length>> height = Drawn.of(ink.parallelHeight(), () -> height(parallels.value(), packing));
        return new DrawnVise(
                vise,
                seat,
                parallels,
                height,
                Drawn.of(ink.parallelInset(), () -> drafting.length(0)),
                Drawn.of(ink.grip(), () -> ViseHolding.GripAsked.FIRM),
                Drawn.of(ink.offset(), () -> drafting.length(0)),
                ink.jaws(),
                Drawn.of(ink.parts(), () -> 1),
                ink.stops());
    }

    /** The largest owned vise clocked in now if it opens wide enough, else the largest that does. */
    private String chooseVise(double across) {
        return fitting(drafting, across).map(ShopRow::id).orElse(Rows.NOTHING);
    }

    static Optional<Vise> fitting(Drafting drafting, double across) {
        List<String> clockedIn = drafting.job().plan().machine().clockedIn();
        return drafting.rows().all(Vise.class).stream()
                .filter(vise -> vise.kept().owned() != 0)
                .filter(vise -> vise.openingOutboard().inside() >= across)
                .min(Comparator.comparing((Vise vise) -> !clockedIn.contains(vise.id()))
                        .thenComparing(vise -> -vise.jawWidth().inside())
                        .thenComparing(ShopRow::id));
    }

    private static ViseHolding.JawSeat seat(Optional<Vise> vise, double across) {
        boolean inside =
                vise.map(row -> row.openingInboard().inside() >= across).orElse(true);
        return inside ? ViseHolding.JawSeat.INBOARD : ViseHolding.JawSeat.OUTBOARD;
    }

    private Typed<Length> height(String set, Packing packing) {
        if (set.equals(packing.set())) {
            return packing.height();
        }
        return drafting.rows()
                .parallels(set)
                .flatMap(row -> nearest(row, packing.height().inside()))
                .orElse(drafting.length(0));
    }

    private static Optional<Typed<Length>> nearest(Parallels set, double height) {
        return set.heights().stream().min(Comparator.comparingDouble(one -> Math.abs(one.inside() - height)));
    }

    private double jawHeight(ViseHolding ink, Vise vise) {
        String jaws = ink.jaws();
        return jaws == null
                ? vise.jawHeight().inside()
                : drafting.rows()
                        .row(jaws, SoftJaws.class)
                        .map(row -> row.height().inside())
                        .orElse(vise.jawHeight().inside());
    }

    private Packing pack(double jawHeight, Lying lying, Side up) {
        PackingNeed need = new PackingNeed(drafting, jawHeight, lying, up);
        List<Packing> all = new ArrayList<>();
        for (Parallels set : drafting.rows().all(Parallels.class)) {
            if (set.kept().owned() == 0) {
                continue;
            }
            for (Typed<Length> height : set.heights()) {
                all.add(new Packing(set.id(), height, set.thickness().inside()));
            }
        }
        return all.stream()
                .min(Comparator.comparingDouble(need::shortfall)
                        .thenComparing(packing -> packing.height().inside())
                        .thenComparing(packing -> -packing.thickness())
                        .thenComparing(Packing::set))
                .filter(best -> need.wanted())
                .orElse(Packing.NONE);
    }
}
