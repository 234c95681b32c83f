package setwright.caution;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Size;
import setwright.shop.BoringBar;
import setwright.shop.HeadDial;
import setwright.shop.Holder;
import setwright.shop.ShankForm;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.Taper;
import setwright.shop.ToolMaterial;

/** Bored holes that a bar or its head cannot do, and their neighbours. */
final class BoreCases {
    private BoreCases() {}

    /** A bore through a plate, drilled 11.8 first, by a bar for bores from so many millimetres on. */
    static Bench bored(String size, String least) {
        Job plate = SmallJobs.job(
                "Ring",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", "30"),
                new Hole(
                        "h1",
                        size + " bored thru",
                        Side.TOP,
                        Hole.Make.BORED,
                        Size.of(SmallShop.length(size + " mm")),
                        null,
                        null,
                        null,
                        SmallJobs.middle(),
                        null,
                        GotBy.MEASURED));
        return Bench.of(plate).in(shop()).ink("h1-bore", OperationField.CUTTER, "boring-bar-hss-" + least);
    }

    private static Shop shop() {
        List<ShopRow> more = List.of(bar("8"), bar("11.5"), bar("12"), head());
        return SmallShop.shop().with(more);
    }

    static BoringBar bar(String least) {
        return new BoringBar(
                "boring-bar-hss-" + least,
                "Boring bar for bores from " + least + " mm",
                ToolMaterial.HSS,
                SmallShop.length(least + " mm"),
                SmallShop.length("12 mm"),
                ShankForm.PLAIN,
                SmallShop.length("5 mm"),
                SmallShop.length("110 mm"),
                1,
                SmallShop.length(Double.parseDouble(least) * 0.75 + " mm"),
                SmallShop.length("60 mm"),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    private static Holder head() {
        return new Holder(
                "boring-head-50-r8",
                "Boring head 50 mm, R8",
                Holder.Style.BORING_HEAD,
                Taper.R8,
                SmallShop.length("68 mm"),
                SmallShop.length("50 mm"),
                SmallShop.length("12 mm"),
                SmallShop.length("12 mm"),
                SmallShop.length("25 mm"),
                SmallShop.length("0.01 mm"),
                SmallShop.length("0.03 mm"),
                SmallShop.length("102 mm"),
                null,
                false,
                new HeadDial(HeadDial.Reads.DIAMETER, SmallShop.length("0.02 mm"), SmallShop.length("5 mm"), null),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    static List<Cases.Case> all() {
        return List.of(
                new Cases.Case("bar-does-not-fit-hole", bored("20", "12"), bored("20", "11.5")),
                new Cases.Case("offset-too-large", bored("18.2", "8"), bored("17.9", "8")));
    }
}
