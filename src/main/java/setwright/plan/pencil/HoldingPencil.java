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
import setwright.shop.OtherJaws;
import setwright.shop.Parallels;
import setwright.shop.ShopRow;
import setwright.shop.VeeJaws;
import setwright.shop.Vise;

/** Holding and packing: the vise that takes the part, and the parallels that no hole meets. */
final class HoldingPencil {
    /** Soft jaws are cut that deep where nobody said, mm (common practice). */
    private static final double CUT_DEPTH = 10;

    /** A beam on two supports that far apart, of its length, shortens least (from memory: Bessel points). */
    private static final double BESSEL = 0.559;

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
        Drawn<String> jaws = Drawn.of(ink.jaws(), () -> ViseHolding.NONE);
        Drawn<ViseHolding.JawCut> cut = Drawn.of(ink.jawCut(), () -> ViseHolding.JawCut.UNCUT);
        Drawn<Integer> vises = Drawn.of(ink.vises(), () -> 1);
        Packing packing = row.filter(found -> cut.value() == ViseHolding.JawCut.UNCUT && !vee(jaws.value()))
                .map(found -> pack(jawHeight(jaws.value(), found), lying, up))
                .orElse(Packing.NONE);
        Drawn<String> parallels = Drawn.of(ink.parallels(), packing::set);
        Drawn<Typed<Length>> height = Drawn.of(ink.parallelHeight(), () -> height(parallels.value(), packing));
        return new DrawnVise(
                vise,
                seat,
                jaws,
                cut,
                Drawn.of(ink.jawCutDepth(), () -> drafting.length(jawCutDepth(cut.value()))),
                parallels,
                height,
                Drawn.of(ink.parallelInset(), () -> drafting.length(0)),
                Drawn.of(ink.grip(), () -> ViseHolding.GripAsked.FIRM),
                Drawn.of(ink.offset(), () -> drafting.length(0)),
                Drawn.of(ink.between(), () -> ViseHolding.Between.NOTHING),
                Drawn.of(ink.parts(), () -> 1),
                vises,
                Drawn.of(ink.apart(), () -> drafting.length(apart(vises.value(), lying))),
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

    /** One of the set's heights; adjustable ones are set to any between their ends. */
    private Optional<Typed<Length>> nearest(Parallels set, double height) {
        double low = set.heights().stream().mapToDouble(Typed::inside).min().orElse(0);
        double high = set.heights().stream().mapToDouble(Typed::inside).max().orElse(0);
        if (set.form() == Parallels.Form.ADJUSTABLE) {
            return Optional.of(drafting.length(Math.max(low, Math.min(high, height))));
        }
        return set.heights().stream().min(Comparator.comparingDouble(one -> Math.abs(one.inside() - height)));
    }

    private double jawHeight(String jaws, Vise vise) {
        return drafting.rows()
                .row(jaws, OtherJaws.class)
                .map(row -> row.height().inside())
                .orElse(vise.jawHeight().inside());
    }

    private boolean vee(String jaws) {
        return drafting.rows().row(jaws, VeeJaws.class).isPresent();
    }

    private static double jawCutDepth(ViseHolding.JawCut cut) {
        return cut == ViseHolding.JawCut.UNCUT ? 0 : CUT_DEPTH;
    }

    /** Vises under long work stand so that it hangs over either outer one as little as it sags between them. */
    private static double apart(int vises, Lying lying) {
        return vises < 2 ? 0 : BESSEL * lying.along().nominal().inside();
    }

    private Packing pack(double jawHeight, Lying lying, Side up) {
        PackingNeed need = new PackingNeed(drafting, jawHeight, lying, up);
        List<Packing> all = new ArrayList<>();
        for (Parallels set : drafting.rows().all(Parallels.class)) {
            if (set.kept().owned() == 0 || !set.plain()) {
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
