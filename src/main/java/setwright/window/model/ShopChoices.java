package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.choose.ChoicePlan;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Cutter;
import setwright.shop.OtherJaws;
import setwright.shop.Parallels;
import setwright.shop.Vise;

/** What the shop owns for a place, what fits best first. */
final class ShopChoices {
    private static final double SAME = 1e-6;

    private ShopChoices() {}

    /** Cutters of the forms that can do the operation. */
    static List<Choice> cutters(Planned planned, String operation) {
        List<Cutter.Form> forms =
                planned.operation(operation).map(ShopChoices::forms).orElse(List.of());
        String chosen = planned.operation(operation)
                .map(drawn -> drawn.cutter().value())
                .orElse("");
        return planned.plan().rows().all(Cutter.class).stream()
                .filter(cutter -> forms.contains(cutter.form()) || cutter.id().equals(chosen))
                .map(cutter -> new Choice(cutter.id(), cutter.name()))
                .toList();
    }

    private static List<Cutter.Form> forms(DrawnOperation operation) {
        return switch (operation.kind()) {
            case FACE -> List.of(Cutter.Form.FACE_MILL, Cutter.Form.END_MILL);
            case SPOT -> List.of(Cutter.Form.SPOT_DRILL);
            case DRILL -> List.of(Cutter.Form.DRILL);
            case REAM -> List.of(Cutter.Form.REAMER);
            case TAP -> List.of(Cutter.Form.TAP);
            case STEP,
                    PROFILE,
                    POCKET,
                    SLOT,
                    KEYSEAT,
                    BORE,
                    COUNTERBORE,
                    SPOTFACE,
                    T_SLOT,
                    DOVETAIL,
                    WOODRUFF,
                    SAW,
                    FORM,
                    SCRIBE -> List.of(Cutter.Form.END_MILL);
            case COUNTERSINK, CHAMFER -> List.of(Cutter.Form.SPOT_DRILL);
        };
    }

    /** Every holder with what speaks against it, as the plan ranked them. */
    static List<Choice> holders(Planned planned, String operation) {
        return planned.plan().choose().operations().stream()
                .filter(choice -> choice.operation().equals(operation))
                .map(ChoicePlan.OperationChoice::ranked)
                .flatMap(List::stream)
                .map(candidate -> new Choice(
                        candidate.holder().id(), candidate.holder().name(), String.join("; ", candidate.against())))
                .toList();
    }

    static List<Choice> vises(Planned planned, String setUp) {
        return planned.plan().rows().all(Vise.class).stream()
                .map(vise -> new Choice(vise.id(), vise.name()))
                .toList();
    }

    static List<Choice> jaws(Planned planned, String setUp) {
        List<Choice> all = new ArrayList<>();
        all.add(new Choice(ViseHolding.NONE, "the vise's own"));
        planned.plan().rows().all(OtherJaws.class).forEach(jaws -> all.add(new Choice(jaws.id(), jaws.name())));
        return all;
    }

    static List<Choice> parallels(Planned planned, String setUp) {
        List<Choice> all = new ArrayList<>();
        all.add(new Choice(ViseHolding.NONE, "none: on the vise bed"));
        planned.plan().rows().all(Parallels.class).forEach(set -> all.add(new Choice(set.id(), set.name())));
        return all;
    }

    /** The heights of the chosen set, as the shop has them written, and the one that stands there. */
    static List<Choice> heights(Planned planned, String setUp) {
        return planned.setUp(setUp).map(drawn -> heights(planned, drawn)).orElse(List.of());
    }

    private static List<Choice> heights(Planned planned, DrawnSetUp drawn) {
        Typed<Length> now = planned.value(drawn, ViseField.PARALLEL_HEIGHT).value();
        List<Choice> all = new ArrayList<>();
        planned.plan()
                .rows()
                .parallels(planned.value(drawn, ViseField.PARALLELS).value())
                .ifPresent(set -> set.heights().forEach(height -> all.add(height(height, now))));
        if (all.stream().noneMatch(choice -> choice.value().equals(now.text()))) {
            all.add(new Choice(now.text(), now.text()));
        }
        return all;
    }

    private static Choice height(Typed<Length> owned, Typed<Length> now) {
        boolean same = Math.abs(owned.inside() - now.inside()) < SAME;
        return new Choice(same ? now.text() : owned.text(), owned.text());
    }
}
