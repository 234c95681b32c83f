package setwright.plan.cut;

import java.util.Map;
import java.util.Optional;
import setwright.cutting.LimitName;
import setwright.geometry.Side;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.plan.cut.LimitRule.Choice;
import setwright.plan.part.Heights;

/**
 * How deep and how fast a milled pass is planned: as deep as is usual where its limits let it, shallower where not even half
 * the feed does, then with as much of the feed as the limits leave.
 */
public final class PassChoice {
    /** Share of every limit that a planned pass uses (common practice). */
    static final double IN_HAND = 0.8;

    /** The feed of the table is eased to this share of it before a pass is made shallower (common practice). */
    private static final double EASED = 0.5;

    /** Less of the table's feed is not planned, whatever the limits say (common practice). */
    private static final double LEAST_FEED = 0.2;

    /** A last pass is run again where it leaves more than this share of what is allowed (common practice). */
    private static final double WORTH_ANOTHER = 0.5;

    private final CutQuestion question;

    private PassChoice(CutQuestion question) {
        this.question = question;
    }

    /** Empty where there are no speeds for the cutter, or nothing is milled. */
    public static Optional<PassChoice> of(Side up, DrawnOperation drafted, Rows rows, Heights heights, CutPlace place) {
        return rows.cutter(drafted.cutter().value())
                .filter(cutter -> !drafted.kind().inHole() && drafted.kind() != Operation.Kind.SCRIBE)
                .filter(cutter -> drafted.speed().value().inside() > 0)
                .flatMap(cutter -> rows.cuttingSpeed(cutter.form(), cutter.material())
                        .map(row -> new CutQuestion("", up, drafted, cutter, row, heights, place, rows)))
                .map(PassChoice::new);
    }

    /** Whether a cut goes down in passes; the others are as deep as their cutter or their feature is high. */
    public static boolean inPasses(Operation.Kind kind) {
        return switch (kind) {
            case FACE, STEP, PROFILE, POCKET, SLOT, KEYSEAT -> true;
            default -> false;
        };
    }

    static PassChoice of(CutQuestion question) {
        return new PassChoice(question);
    }

    /** What the passes take off altogether, mm; over an inclined face more than over the finished top. */
    private double whole() {
        double deep = question.place().depth();
        return question.operation().kind() == Operation.Kind.FACE
                ? Math.max(question.heights().startTop() - question.heights().finishedTop(), deep)
                : deep;
    }

    /** A feed that is not written down may still be eased. */
    public PassDepth depth() {
        double feed = question.operation().feed().value().inside();
        boolean open = question.operation().feed().pencilled();
        return planned(open ? question.with(Choice.FEED, EASED * feed) : question);
    }

    private PassDepth planned(CutQuestion fed) {
        double usual = Math.min(UsualDepth.of(fed.operation().kind(), fed.cutter()), flutes());
        LimitSearch search = new LimitSearch(depth -> new PassTrial(fed).with(Choice.DEPTH, depth), IN_HAND);
        return PassDepth.of(search.upTo(Math.min(usual, Math.max(whole(), 0.01))), whole());
    }

    private double flutes() {
        return question.cutter().fluteLength().inside();
    }

    /** The feed of a pass of this depth, mm/s: the drafted one or what the limits leave of it. */
    public double feed(double depth) {
        double wanted = question.operation().feed().value().inside();
        PassTrial trial = new PassTrial(question.with(Choice.DEPTH, depth));
        double found = new LimitSearch(feed -> butChip(trial.with(Choice.FEED, feed)), IN_HAND)
                .upTo(wanted)
                .value();
        return Math.max(LEAST_FEED * wanted, found);
    }

    /** The table that the feed comes from has looked at the chip: all of its limit may be used. */
    private static Map<LimitName, Double> butChip(Map<LimitName, Double> used) {
        used.computeIfPresent(LimitName.CHIP_LOAD, (limit, share) -> IN_HAND * share);
        return used;
    }

    /** Whether a toleranced slot at the size of its cutter would come wider than the drawing has it. */
    public boolean slotComesWide() {
        return Tolerated.of(question.features())
                .flatMap(allowed -> question.holder()
                        .flatMap(holder -> SlotWidth.of(holder, MilledCut.left(question)))
                        .map(slot -> slot.over() > allowed.width()))
                .orElse(false);
    }

    /** Whether so much stays on a wall that its last pass is worth running once more. */
    public boolean asksForSpringPass() {
        return MilledCut.leftOn(question) > WORTH_ANOTHER;
    }

    /** At the feed as it stands. */
    DepthAdvice advice() {
        LimitSearch search = new LimitSearch(depth -> new PassTrial(question).with(Choice.DEPTH, depth), 1);
        return new DepthAdvice(PassDepth.of(search.upTo(flutes()), whole()), planned(question));
    }
}
