package setwright.plan;

import java.util.List;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.AngleBlocks;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.Kept;
import setwright.shop.MagneticChuck;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.SoftJaws;
import setwright.shop.StepBlocks;
import setwright.shop.Stop;
import setwright.shop.Strap;
import setwright.shop.Stud;
import setwright.shop.TNut;
import setwright.shop.VBlocks;

/** The project's shop with things to hold a part in round sizes to reckon with. */
public final class HoldingShop {
    public static final Reading READING = new Reading(UnitSystem.METRIC);
    private static final Kept KEPT = new Kept("drawer 4", 4);
    private static final String SOURCE = "common practice: round sizes for a test";

    private HoldingShop() {}

    public static Typed<Length> length(String text) {
        return READING.length(text);
    }

    public static Typed<Angle> angle(String text) {
        return READING.angle(text);
    }

    public static Shop shop() {
        return bare().with(rows());
    }

    /** The project's shop without anything to strap, pack or set up with. */
    public static Shop bare() {
        List<ShopRow.Kind> left = List.of(
                ShopRow.Kind.STRAP,
                ShopRow.Kind.STUD,
                ShopRow.Kind.STEP_BLOCKS,
                ShopRow.Kind.T_NUT,
                ShopRow.Kind.SET_UP_BLOCKS,
                ShopRow.Kind.V_BLOCKS);
        return Shop.of(BearingBlock.shop().rows().stream()
                .filter(row -> !left.contains(row.kind()))
                .toList());
    }

    private static List<ShopRow> rows() {
        return List.of(
                new Strap(
                        "strap-125",
                        "Strap 125",
                        Strap.Form.PLAIN,
                        length("125 mm"),
                        length("32 mm"),
                        length("16 mm"),
                        length("14 mm"),
                        6,
                        KEPT,
                        SOURCE),
                new Stud(
                        "stud-m12",
                        "Studs M12",
                        "M12",
                        length("16 mm"),
                        List.of(length("80 mm"), length("100 mm"), length("125 mm"), length("160 mm")),
                        "8.8",
                        KEPT,
                        SOURCE),
                new TNut(
                        "t-nut-m12",
                        "T-nuts M12",
                        length("16 mm"),
                        "M12",
                        length("22 mm"),
                        length("16 mm"),
                        KEPT,
                        SOURCE),
                new StepBlocks(
                        "step-blocks",
                        "Step blocks",
                        length("20 mm"),
                        length("100 mm"),
                        length("2 mm"),
                        length("32 mm"),
                        6,
                        KEPT,
                        SOURCE),
                new SetUpBlocks(
                        "blocks-123",
                        "1-2-3 blocks",
                        List.of(length("1 in"), length("2 in"), length("3 in")),
                        2,
                        KEPT,
                        SOURCE),
                new Stop("vise-stop", "Vise stop", Stop.Form.VISE, length("40 mm"), KEPT, SOURCE),
                new SoftJaws(
                        "soft-jaws-6in",
                        "Soft jaws 6 in",
                        length("152 mm"),
                        length("50 mm"),
                        length("25 mm"),
                        "aluminium",
                        KEPT,
                        SOURCE),
                new AngleBlocks(
                        "angle-blocks",
                        "Angle blocks",
                        List.of(angle("5 deg"), angle("10 deg")),
                        length("75 mm"),
                        length("6 mm"),
                        KEPT,
                        SOURCE),
                vBlocks(),
                new AnglePlate(
                        "angle-plate-150",
                        "Angle plate 150",
                        length("150 mm"),
                        length("150 mm"),
                        length("120 mm"),
                        length("20 mm"),
                        false,
                        KEPT,
                        SOURCE),
                new RotaryTable(
                        "rotary-200",
                        "Rotary table 200",
                        length("200 mm"),
                        length("90 mm"),
                        null,
                        90,
                        angle("0.01 deg"),
                        length("12 mm"),
                        4,
                        null,
                        READING.mass("30 kg"),
                        KEPT,
                        SOURCE),
                new DividingHead(
                        "head-200",
                        "Dividing head",
                        length("100 mm"),
                        length("200 mm"),
                        40,
                        List.of("15 16 17 18 19 20"),
                        null,
                        null,
                        READING.mass("30 kg"),
                        KEPT,
                        SOURCE),
                new ColletBlock(
                        "collet-block-4",
                        "Square collet block",
                        4,
                        "5C",
                        length("28 mm"),
                        length("50 mm"),
                        length("70 mm"),
                        KEPT,
                        SOURCE),
                new MagneticChuck(
                        "magnet-300",
                        "Magnetic chuck",
                        length("300 mm"),
                        length("150 mm"),
                        length("60 mm"),
                        READING.stress("1 N/mm2"),
                        READING.mass("20 kg"),
                        KEPT,
                        SOURCE),
                new FixturePlate(
                        "plate-400",
                        "Fixture plate",
                        length("400 mm"),
                        length("200 mm"),
                        length("25 mm"),
                        null,
                        null,
                        null,
                        KEPT,
                        SOURCE));
    }

    private static VBlocks vBlocks() {
        return new VBlocks(
                "vees",
                "V-blocks",
                angle("90 deg"),
                length("10 mm"),
                length("60 mm"),
                length("60 mm"),
                length("60 mm"),
                length("50 mm"),
                length("18 mm"),
                KEPT,
                SOURCE);
    }
}
