package setwright.caution;

import static setwright.caution.SmallShop.length;

import java.util.List;
import setwright.caution.Cases.Case;
import setwright.geometry.Side;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.shop.BoringBar;
import setwright.shop.ShankForm;
import setwright.shop.ToolMaterial;

/** Jobs whose tool or work springs further than the drawing allows, and their neighbours that stay just within. */
final class SpringCases {
    private static final String BAR = "boring-bar-long-6";

    private SpringCases() {}

    static Case barSprings() {
        return new Case("bar-springs", bored("0.07"), bored("0.08"));
    }

    static Case slotComesWide() {
        return new Case("slot-comes-wide", slotted("0.07"), slotted("0.08"));
    }

    static Case thinWall() {
        return new Case("thin-wall", stepped("77", "0.03"), stepped("77", "0.036"));
    }

    private static Size within(String nominal, String wide) {
        double least = Double.parseDouble(nominal);
        return new Size(
                length(nominal + " mm"), length(nominal + " mm"), length(least + Double.parseDouble(wide) + " mm"));
    }

    /** A hole of 16 that is bored by a bar of 6 which reaches 60; its limits this far apart. */
    static Bench bored(String wide) {
        Hole hole = new Hole(
                "h1",
                "16 bored",
                Side.TOP,
                Hole.Make.BORED,
                within("16", wide),
                null,
                null,
                null,
                SmallJobs.middle(),
                null,
                GotBy.MEASURED);
        return of(hole).in(SmallShop.shop().with(List.of(bar(), SmallHolders.boringHead())))
                .ink("h1-bore", OperationField.CUTTER, BAR)
                .ink("h1-bore", OperationField.LAST_PASS, Operation.LastPass.NONE)
                .mm("h1-bore", OperationField.STICK_OUT, 70);
    }

    private static BoringBar bar() {
        return new BoringBar(
                BAR,
                "Long boring bar 6 mm",
                ToolMaterial.CARBIDE,
                length("8 mm"),
                length("12 mm"),
                ShankForm.PLAIN,
                length("5 mm"),
                length("110 mm"),
                1,
                length("6 mm"),
                length("60 mm"),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** A slot of 12 by a cutter of 12, 6 deep; its limits this far apart. */
    static Bench slotted(String wide) {
        return of(new Slot(
                "g1",
                "slot 12 x 6 deep",
                Side.TOP,
                within("12", wide),
                Size.of(length("6 mm")),
                null,
                new Placed(Pattern.Datum.CENTRE, length("0 mm"), length("0 mm"), null),
                null,
                GotBy.TOOL));
    }

    /** A step that takes this much of 82 in its passes alone and leaves a wall 20 high; its limits this far apart. */
    static Bench stepped(String width, String wide) {
        return of(new Step(
                        "g1",
                        "step " + width + " x 20 deep",
                        Side.TOP,
                        Edge.LEFT,
                        within(width, wide),
                        Size.of(length("20 mm")),
                        null,
                        null,
                        GotBy.MEASURED))
                .ink("g1-step", OperationField.LAST_PASS, Operation.LastPass.NONE)
                .mm("g1-step", OperationField.DEPTH, 10)
                .mm("g1-step", OperationField.FINISH, 0);
    }

    private static Bench of(Feature feature) {
        return Bench.of(SmallJobs.job("Block", 2, SmallMaterials.STEEL, SmallJobs.block("82", "52", "40"), feature));
    }
}
