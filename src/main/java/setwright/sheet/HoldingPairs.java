package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.Tilt;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.plan.hold.OperationHold;
import setwright.quantity.Force;
import setwright.quantity.Typed;
import setwright.shop.Parallels;
import setwright.shop.Vise;

/** How the part is held, with figures, and how the zero is found. */
final class HoldingPairs {
    /** A factor at or above this is not told apart. */
    private static final double MOST = 99;

    private final Shown shown;
    private final DrawnSetUp setUp;

    HoldingPairs(Shown shown, DrawnSetUp setUp) {
        this.shown = shown;
        this.setUp = setUp;
    }

    List<Block.Pair> pairs() {
        List<Block.Pair> pairs = new ArrayList<>();
        switch (setUp.holding().kind()) {
            case VISE -> addVise(pairs, (DrawnVise) setUp.holding());
            case TABLE -> pairs.add(new Block.Pair("held", words().table((DrawnTable) setUp.holding())));
            case DEVICE -> pairs.add(new Block.Pair("held", words().device((DrawnDevice) setUp.holding())));
        }
        String cover = words().cover();
        if (!cover.isEmpty()) {
            pairs.add(new Block.Pair("on the table", cover));
        }
        words().straps().forEach(strap -> pairs.add(new Block.Pair(strap.name(), words().strap(strap))));
        Tilt tilt = setUp.tilt();
        if (tilt != null) {
            pairs.add(new Block.Pair("tilted", TiltWords.of(tilt)));
        }
        weakest().ifPresent(hold -> pairs.add(new Block.Pair("will it hold", factor(hold))));
        plan().part()
                .setUp(setUp.id())
                .ifPresent(stage ->
                        pairs.add(new Block.Pair("zero", new Positions(shown, setUp, stage.heights()).from())));
        return pairs;
    }

    private OnTable words() {
        return new OnTable(plan(), setUp, shown.printing());
    }

    private Plan plan() {
        return shown.plan();
    }

    private void addVise(List<Block.Pair> pairs, DrawnVise holding) {
        Optional<Vise> vise = plan().rows().vise(holding.vise().value());
        pairs.add(new Block.Pair(
                "held in",
                vise.map(Vise::name).orElse("no vise of the shop") + ", jaws "
                        + Shown.word(holding.seat().value()) + ", solid jaw to the column"));
        if (holding.otherJaws()) {
            pairs.add(new Block.Pair("jaws", words().row(holding.jaws().value())));
        }
        new JawWords(holding).said().forEach(said -> pairs.add(new Block.Pair("at the jaws", said)));
        int parts = holding.parts().value();
        if (parts > 1) {
            pairs.add(new Block.Pair("parts", parts + " side by side along the jaws"));
        }
        pairs.add(new Block.Pair("on", on(holding)));
        plan().part()
                .setUp(setUp.id())
                .ifPresent(stage -> pairs.add(new Block.Pair(
                        "in the jaws",
                        shown.length(stage.heights().gripDepth()) + " deep, "
                                + shown.length(stage.heights().depth()) + " across"
                                + offset(holding.offset().value().inside()))));
        vise.ifPresent(
                row -> pairs.add(new Block.Pair("grip", grip(holding.grip().value(), row))));
    }

    private String on(DrawnVise holding) {
        if (!holding.onParallels()) {
            return new JawWords(holding).seat(plan().rows()).substring("on ".length());
        }
        String set = plan().rows()
                .parallels(holding.parallels().value())
                .map(Parallels::name)
                .orElse("no parallels of the shop");
        double inset = holding.parallelInset().value().inside();
        return set + ", the pair " + holding.parallelHeight().value().text() + " high, "
                + (inset == 0 ? "against the jaws" : shown.length(inset) + " from the jaws");
    }

    private String offset(double mm) {
        return mm == 0
                ? ", in the middle of the jaws"
                : ", " + shown.length(Math.abs(mm)) + (mm > 0 ? " right" : " left") + " of the middle of the jaws";
    }

    private static String grip(ViseHolding.GripAsked asked, Vise vise) {
        Typed<Force> force = switch (asked) {
            case SNUG -> vise.snug();
            case FIRM -> vise.firm();
            case HARD -> vise.hard();
        };
        return Shown.word(asked) + " (counted as " + force.text() + ")";
    }

    private Optional<OperationHold> weakest() {
        return plan().hold().weakest(setUp.id());
    }

    private String factor(OperationHold hold) {
        String band = times(hold.factor().expected()) + " times the load expected, "
                + times(hold.factor().pessimistic()) + " times at the pessimistic end";
        return hold.firstToGive().isEmpty()
                ? band
                : band + "; first to give: " + hold.firstToGive() + ", the part " + hold.motion();
    }

    private String times(double factor) {
        return factor >= MOST ? "99 or more" : shown.printing().factor(factor);
    }
}
