package setwright.plan.hold;

import setwright.holding.EdgeClampForms;
import setwright.holding.ScrewForms;
import setwright.holding.StrapForms;
import setwright.holding.StrapGrip;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** What a strap, an edge clamp or a bolt presses on the part with, worked from the torque at its nut. */
public final class StrapPress {
    private StrapPress() {}

    public static Value of(StrapPlace strap, String setUp) {
        String at = setUp + "/holding/straps/" + strap.drawn().id();
        return switch (strap.by()) {
            case STRAP ->
                StrapForms.ON_WORK.of(
                        stud(strap, at),
                        Given.of(
                                "pad to stud", strap.drawn().padToStud().value().inside(), Unit.MM, at + "/padToStud"),
                        Given.of(
                                "stud to heel",
                                strap.drawn().studToHeel().value().inside(),
                                Unit.MM,
                                at + "/studToHeel"));
            case EDGE_CLAMP ->
                strap.edgeClamp()
                        .<Value>map(row -> EdgeClampForms.ON_WORK.of(
                                stud(strap, at),
                                Given.of(
                                        "sideways",
                                        row.sideways().inside(),
                                        Unit.NONE,
                                        "shop/" + row.id() + "/sideways"),
                                Given.of("down", row.down().inside(), Unit.NONE, "shop/" + row.id() + "/down")))
                        .orElseGet(() -> stud(strap, at));
            case BOLT -> stud(strap, at);
        };
    }

    /** The pull of its stud. */
    public static Value stud(StrapPlace strap, String at) {
        return ScrewForms.PRELOAD.of(
                Given.of("torque", strap.drawn().torque().value().inside(), Unit.N_M, at + "/torque"),
                Given.of("nut factor", StrapGrip.NUT_FACTOR, Unit.NONE, "from memory: condition unknown"),
                Given.of("stud", strap.stud(), Unit.MM, at + "/stud"));
    }
}
