package setwright.caution;

import static setwright.caution.SmallShop.length;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.shop.Holder;
import setwright.shop.Holder.Style;
import setwright.shop.Taper;

/** What the small shop holds its cutters in. */
final class SmallHolders {
    static final String COLLET_CHUCK = "collet-chuck-er32-r8";
    static final String KEYED = "drill-chuck-keyed-13-r8";
    static final String KEYLESS = "drill-chuck-keyless-13-r8";
    static final String ARBOR = "face-mill-arbor-22-r8";
    static final String COLLET_12 = "collet-r8-12mm";
    static final String END_MILL_HOLDER = "end-mill-holder-r8-20mm";
    static final String STEEP = "collet-chuck-er32-30";

    private SmallHolders() {}

    static List<Holder> all() {
        return List.of(
                holder(
                        COLLET_CHUCK,
                        "ER32 collet chuck, R8",
                        Style.COLLET_CHUCK,
                        "57 mm",
                        "50 mm",
                        "2 mm",
                        "20 mm",
                        "27 mm"),
                holder(
                        STEEP,
                        "ER32 collet chuck, no. 30 taper",
                        Style.COLLET_CHUCK,
                        "60 mm",
                        "50 mm",
                        "2 mm",
                        "20 mm",
                        "27 mm"),
                collet("6"),
                collet("8"),
                collet("10"),
                collet("12"),
                collet("20"),
                holder(
                        KEYED,
                        "Keyed drill chuck 13 mm, R8",
                        Style.DRILL_CHUCK_KEYED,
                        "115 mm",
                        "50 mm",
                        "1 mm",
                        "13 mm",
                        "25 mm"),
                holder(
                        KEYLESS,
                        "Keyless drill chuck 13 mm, R8",
                        Style.DRILL_CHUCK_KEYLESS,
                        "100 mm",
                        "50 mm",
                        "0.8 mm",
                        "13 mm",
                        "25 mm"),
                holder(
                        END_MILL_HOLDER,
                        "End mill holder 20 mm, R8",
                        Style.SET_SCREW,
                        "50 mm",
                        "44 mm",
                        "20 mm",
                        "20 mm",
                        "35 mm"),
                holder(
                        ARBOR,
                        "Face mill arbor 22 mm, R8",
                        Style.FACE_MILL_ARBOR,
                        "25 mm",
                        "45 mm",
                        "22 mm",
                        "22 mm",
                        "19 mm"));
    }

    static Holder boringHead() {
        return holder(
                "boring-head-50-r8",
                "Boring head 50 mm, R8",
                Style.BORING_HEAD,
                "68 mm",
                "50 mm",
                "12 mm",
                "12 mm",
                "25 mm");
    }

    static Holder stubArbor() {
        return holder(
                "stub-arbor-22-r8",
                "Stub arbor 22 mm, R8",
                Style.STUB_ARBOR,
                "80 mm",
                "40 mm",
                "22 mm",
                "22 mm",
                "40 mm");
    }

    private static Holder collet(String size) {
        double least = Double.parseDouble(size) - 0.08;
        return holder(
                "collet-r8-" + size + "mm",
                "R8 collet " + size + " mm",
                Style.SPINDLE_COLLET,
                "0 mm",
                "31.75 mm",
                least + " mm",
                size + " mm",
                "25 mm");
    }

    /** @param sizes projection, nose diameter, least and greatest shank, grip */
    private static Holder holder(String id, String name, Style style, String... sizes) {
        return new Holder(
                id,
                name,
                style,
                id.equals(STEEP) ? Taper.ISO_30 : Taper.R8,
                length(sizes[0]),
                length(sizes[1]),
                length(sizes[2]),
                length(sizes[3]),
                length(sizes[4]),
                length("0.01 mm"),
                length("0.03 mm"),
                dropOut(style),
                null,
                false,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    private static setwright.quantity.@Nullable Typed<setwright.quantity.Length> dropOut(Style style) {
        return style == Style.SPINDLE_COLLET ? null : length("102 mm");
    }
}
