package setwright.caution.check;

import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnHolding;
import setwright.job.DrawnTable;
import setwright.job.Strapping;
import setwright.plan.hold.StrapPress;
import setwright.plan.part.Heights;
import setwright.plan.part.PackingPlace;
import setwright.plan.part.PackingPlaces;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Unit;
import setwright.rigidity.Plank;

/** A strap presses where nothing is under it: off the part, or on a part that is packed up elsewhere. */
public final class ClampOverAir implements StrapCheck {
    /** In diameters (common practice). */
    private static final double BESIDE_BOLT = 2;

    @Override
    public String slug() {
        return "clamp-over-air";
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        double inside = Math.min(inside(part(in.heights()), strap.pad()), onPacking(in, strap) + reach(strap));
        Margin margin = Margin.of(
                slug(),
                in.place(strap),
                "Pad of the " + strap.name() + " inside what bears it",
                Figure.atLeast(0, inside, Unit.MM));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        return Finding.fails(
                margin,
                Severity.STOP,
                "The pad of the " + strap.name() + " " + in.at() + " presses "
                        + new Words(in.plan()).length(-inside)
                        + " beside what bears it. It bends the part" + bent(in, strap)
                        + " and shifts it when the nut is tightened: bring the pad over the packing, or the packing"
                        + " under the pad.");
    }

    /** How far the part sags under the pad between two pieces of packing; what is cut flat there springs back by it. */
    private static String bent(Strapped in, StrapPlace strap) {
        List<PackingPlace> all = packing(in).toList();
        Heights at = in.heights();
        double left = all.stream()
                .mapToDouble(place -> place.plan().xHigh())
                .filter(x -> x <= strap.pad().x())
                .max()
                .orElse(Double.NaN);
        double right = all.stream()
                .mapToDouble(place -> place.plan().xLow())
                .filter(x -> x >= strap.pad().x())
                .min()
                .orElse(Double.NaN);
        if (!(right > left)) {
            return "";
        }
        double press = StrapPress.of(strap, in.setUp().id()).inside();
        Plank plank = new Plank(at.depth(), at.finishedTop() - at.partBottom());
        double modulus = in.plan().rows().material().elasticModulus().inside();
        return " " + new Words(in.plan()).fine(Plank.sag(press, right - left, modulus, plank))
                + ", which springs back,";
    }

    private static PlanBox part(Heights heights) {
        return PlanBox.of(new Point2(heights.left(), heights.front()), new Point2(heights.right(), heights.back()));
    }

    /** How far inside the piece of packing that bears it best; anywhere where the part lies flat. */
    private static double onPacking(Strapped in, StrapPlace strap) {
        return packing(in)
                .mapToDouble(place -> inside(place.plan(), strap.pad()))
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** A bolt has its packing beside it, no further than this. */
    private static double reach(StrapPlace strap) {
        return strap.by() == Strapping.By.BOLT ? BESIDE_BOLT * strap.stud() : 0;
    }

    private static Stream<PackingPlace> packing(Strapped in) {
        DrawnHolding holding = in.setUp().holding();
        return switch (holding.kind()) {
            case TABLE ->
                PackingPlaces.of((DrawnTable) holding, in.heights(), in.plan().rows()).stream();
            case VISE, DEVICE -> Stream.empty();
        };
    }

    /** How far a place lies inside a box; below nought: how far outside. */
    private static double inside(PlanBox box, Point2 place) {
        return Math.min(
                Math.min(place.x() - box.xLow(), box.xHigh() - place.x()),
                Math.min(place.y() - box.yLow(), box.yHigh() - place.y()));
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return Stream.of(changes.inward(), changes.elsewhere())
                .flatMap(List::stream)
                .toList();
    }
}
