package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.cutting.MillingLoad;
import setwright.holding.ShankGrip;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.ShankHold;
import setwright.quantity.Band;
import setwright.quantity.Unit;
import setwright.shop.Cutter;

/** The cut beats the grip of a collet: its helix pulls the cutter out along the shank, or its torque turns it. */
public final class GivesInHolder implements Check {
    /** Asked of the grip on a bad day. */
    private static final double ASKED = 1;

    private final String slug;
    private final String what;
    private final Predicate<Operations.In> meant;
    private final BiFunction<Cutter, OperationCut, Double> beats;

    private GivesInHolder(
            String slug, String what, Predicate<Operations.In> meant, BiFunction<Cutter, OperationCut, Double> beats) {
        this.slug = slug;
        this.what = what;
        this.meant = meant;
        this.beats = beats;
    }

    /** Only milling pulls: drills push. */
    public static GivesInHolder pullsOut() {
        return new GivesInHolder("pulls-out-of-holder", "pull", in -> !in.makesHoles(), GivesInHolder::pull);
    }

    public static GivesInHolder slips() {
        return new GivesInHolder(
                "slips-in-holder",
                "torque",
                in -> !in.operation().method().value().byHand(),
                GivesInHolder::turn);
    }

    /** N; nought where the cutter is pushed in. */
    private static double pull(Cutter cutter, OperationCut cut) {
        MillingLoad load = cut.milling();
        return load == null ? 0 : Math.max(0, load.mean().axial());
    }

    /** Torque as the force at the shank that turns it, N. */
    private static double turn(Cutter cutter, OperationCut cut) {
        MillingLoad load = cut.milling();
        double torque = load == null ? cut.torque().inside() : load.peakTorque();
        return torque / ShankGrip.slipTorque(1, cutter.shank().inside());
    }

    @Override
    public String slug() {
        return slug;
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug, meant, this::look);
    }

    private Finding look(Operations.In in, OperationCut cut) {
        Cutter cutter = in.cutterRow().orElseThrow();
        double force = beats.apply(cutter, cut);
        Optional<Band> grip = in.holderRow().flatMap(ShankHold::of);
        return grip.isEmpty() || force <= 0 ? Finding.HOLDS : judged(in, force, grip.get());
    }

    private Finding judged(Operations.In in, double force, Band grip) {
        Margin margin = Margin.of(
                        slug,
                        in.place("shank"),
                        "Grip on the shank of " + in.cutter() + " against " + what,
                        Figure.atLeast(ASKED, grip.low() / force, Unit.NONE))
                .between(new Band(grip.low() / force, grip.expected() / force, grip.high() / force));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, margin, grip.expected() / force));
    }

    private String message(Operations.In in, Margin margin, double usually) {
        Words words = new Words(in.plan());
        return words.holder(in.operation()) + " holds the shank of " + in.cutter() + " "
                + words.printing().factor(margin.figure().value()) + " times against the " + what
                + " of the cut on a bad day, "
                + words.printing().factor(usually) + " usually " + in.at() + "; "
                + words.printing().factor(ASKED)
                + " is asked. " + mend(in);
    }

    private static String mend(Operations.In in) {
        return in.makesHoles()
                ? "It stands still in the work while the holder turns on it, and scores its shank: clean and tighten it"
                        + " well, drill a pilot first, or take a drill with a taper shank."
                : "The cutter walks in its collet: clean it and draw it up well, take less depth or feed, or a set"
                        + " screw on a flat.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(ToolChanges.of(plan, caution).otherHolders());
        CutChanges cut = CutChanges.of(plan, caution);
        all.addAll(cut.shallower());
        all.addAll(cut.speedAndFeedToPencil());
        return all;
    }
}
