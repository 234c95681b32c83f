package setwright.plan.hold;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.holding.ClampStrength;
import setwright.holding.ScrewForms;
import setwright.holding.StrapGrip;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.DrawnVise;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StrapGear;
import setwright.plan.part.StrapPlace;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.rigidity.Plank;
import setwright.shop.Vise;

/**
 * The most that a vise or a nut is done up to.
 *
 * @param now what is asked now, N or N·mm
 * @param because what stands against more
 */
record GripMost(double now, double most, String because) {
    /** Of what buckles a thin part that is gripped by its edges, no more is pressed on it (common practice). */
    private static final double OF_BUCKLING = 0.5;

    private static final Comparator<GripMost> LEAST = Comparator.comparingDouble(GripMost::most);

    static Optional<GripMost> inVise(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        DrawnVise holding = (DrawnVise) setUp.holding();
        return rows.vise(holding.vise().value()).flatMap(vise -> {
            double now = force(vise, holding) / Math.max(1, holding.parts().value());
            double hard = vise.hard().inside() / Math.max(1, holding.parts().value());
            return Stream.of(
                            Optional.of(new GripMost(now, hard, "the vise, closed hard, gives no more")),
                            Optional.of(bowed(now, stage.heights(), rows)),
                            flat(now, setUp, stage, rows))
                    .flatMap(Optional::stream)
                    .min(LEAST);
        });
    }

    private static double force(Vise vise, DrawnVise holding) {
        return setwright.holding.GripAsked.valueOf(holding.grip().value().name())
                .force(vise);
    }

    private static GripMost bowed(double now, Heights at, Rows rows) {
        Plank plank = new Plank(at.length(), at.finishedTop() - at.partBottom());
        double modulus = rows.material().elasticModulus().inside();
        double most = OF_BUCKLING * Plank.buckling(at.depth(), modulus, plank);
        return new GripMost(now, most, "the part bows between the jaws");
    }

    /** Gripped off its middle it bows; half of what the face that is cut here may be out is the most. */
    private static Optional<GripMost> flat(double now, DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        Heights at = stage.heights();
        double thick = at.finishedTop() - at.partBottom();
        double off = Math.abs(thick - Math.min(at.gripDepth(), thick)) / 2;
        Plank plank = new Plank(at.length(), thick);
        double bow = Plank.bow(off, at.depth(), rows.material().elasticModulus().inside(), plank);
        return new FaceTolerance(rows.job(), setUp)
                .half()
                .filter(half -> bow > 0)
                .map(half ->
                        new GripMost(now, half / bow, "more bows the face that is cut by over half its tolerance"));
    }

    static Optional<GripMost> underStraps(String setUp, List<DrawnStrap> straps, SetUpStage stage, Rows rows) {
        return StrapPlace.all(straps, stage.heights(), rows).stream()
                .flatMap(place -> StrapGear.of(place, rows).stream().map(gear -> under(place, gear, rows)))
                .min(LEAST);
    }

    /** By the lips of the slot, the stud and the strap, each as a torque at the nut. */
    private static GripMost under(StrapPlace place, StrapGear gear, Rows rows) {
        ScrewThread thread = Threads.listed().read(gear.studs().thread());
        double now = place.drawn().torque().value().inside();
        double byStud = ClampStrength.ofStud(thread.major(), thread.pitch());
        double byLips = gear.nut()
                .map(nut -> ClampStrength.ofLips(
                        rows.machine().table().slotWidth().inside(), nut.width().inside()))
                .orElse(Double.POSITIVE_INFINITY);
        double byStrap = place.strap()
                .map(row -> ClampStrength.ofStrap(
                        place.drawn().padToStud().value().inside(),
                        place.drawn().studToHeel().value().inside(),
                        row.width().inside() - row.slotWidth().inside(),
                        row.thickness().inside()))
                .orElse(Double.POSITIVE_INFINITY);
        double pull = Math.min(byStud, Math.min(byLips, byStrap));
        String because = pull == byStud
                ? "the stud of the " + place.name() + " stands no more"
                : pull == byLips ? "the lips of the slot stand no more" : "the " + place.name() + " bends";
        return new GripMost(now, torque(pull, place.stud()), because);
    }

    private static double torque(double pull, double diameter) {
        return pull / ScrewForms.preload(1, StrapGrip.NUT_FACTOR, diameter);
    }
}
