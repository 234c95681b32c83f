package setwright.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Measure;
import setwright.quantity.Reading;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Axis;
import setwright.shop.HandTime;
import setwright.shop.Kept;
import setwright.shop.Machine;
import setwright.shop.MachineTable;
import setwright.shop.Parallels;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.StiffnessBand;
import setwright.shop.Taper;
import setwright.shop.Vise;

/** A shop of a dozen drawers in code: an R8 knee mill, two vises, three sets of parallels, what holds and what cuts. */
public final class SmallShop {
    public static final String MACHINE = "knee-mill-r8-9x49";
    public static final String VISE = "vise-6in";
    public static final String PARALLELS = "parallels-0.125in";
    public static final String THIN_PARALLELS = "parallels-0.031in";
    public static final String THICK_PARALLELS = "parallels-0.250in";

    static final Reading READING = new Reading(UnitSystem.METRIC);
    static final Kept KEPT = new Kept("drawer 1", 1);
    static final String SOURCE = "common practice: typical of its kind";

    /** Every piece of hand work takes a minute here. */
    private static final List<String> HAND_TIMES = List.of(
            "time-mount-vise",
            "time-indicate-jaw",
            "time-find-edge",
            "time-touch-off",
            "time-first-part",
            "time-load-vise",
            "time-load-soft-jaws",
            "time-load-stuck",
            "time-load-sandwich",
            "time-load-chuck",
            "time-clean-vise",
            "time-change-collet-tool",
            "time-change-drill-in-chuck",
            "time-change-holder",
            "time-change-belt-speed",
            "time-change-variable-speed",
            "time-start-pass",
            "time-start-hole",
            "time-clear-chips",
            "time-measure");

    private SmallShop() {}

    public static Shop shop() {
        List<ShopRow> rows = new ArrayList<>(List.of(
                machine(),
                viseWithFirm("15 kN"),
                vise(
                        "vise-4in",
                        "4 in vise",
                        List.of("102 mm", "32 mm", "13 mm", "58 mm"),
                        List.of("2.5 kN", "7.5 kN", "12.5 kN")),
                parallels(
                        "parallels-0.031in",
                        "Thin parallels 1/32 in",
                        "1/32 in",
                        "1/2 in",
                        "11/16 in",
                        "7/8 in",
                        "1 in"),
                parallels(PARALLELS, "Parallels 1/8 in", "1/8 in", "1/2 in", "5/8 in", "3/4 in", "7/8 in", "1 in"),
                parallels(THICK_PARALLELS, "Parallels 1/4 in", "1/4 in", "3/4 in", "1 in", "1-1/4 in", "1-1/2 in")));
        rows.addAll(SmallHolders.all());
        rows.addAll(SmallCutters.all());
        rows.addAll(SmallMaterials.all());
        HAND_TIMES.forEach(id -> rows.add(new HandTime(id, id, READING.time("1 min"), SOURCE)));
        return Shop.of(rows);
    }

    static Typed<Length> length(String text) {
        return READING.length(text);
    }

    static List<Typed<Length>> lengths(String... texts) {
        return Stream.of(texts).map(SmallShop::length).toList();
    }

    private static Machine machine() {
        return machine("18.5 in");
    }

    /** The knee mill, with a head that goes so high over the table. */
    static Machine machine(String noseHigh) {
        return machine(noseHigh, "5 in", null, null);
    }

    /** The same mill with a quill of another stroke. */
    static Machine withQuill(String stroke) {
        return machine("18.5 in", stroke, null, null);
    }

    /** The same mill with a table that carries so much. */
    static Machine carrying(String load) {
        return machine("18.5 in", "5 in", READING.mass(load), null);
    }

    /** The same mill with its head on a column. */
    static Machine onColumn(Machine.Column column) {
        return machine("18.5 in", "5 in", null, column);
    }

    private static Machine machine(
            String noseHigh, String stroke, @Nullable Typed<Mass> load, Machine.@Nullable Column column) {
        return new Machine(
                MACHINE,
                "Knee mill R8, 9 x 49 in",
                Taper.R8,
                speeds(80, 135, 210, 325, 660, 1115, 1750, 2720),
                null,
                null,
                READING.power("2 hp"),
                READING.ratio("0.75"),
                length("0 in"),
                length(noseHigh),
                length("1-7/8 in"),
                length(stroke),
                length("3.375 in"),
                lengths("0.0015 in", "0.003 in", "0.006 in"),
                length("3/8 in"),
                axis("34 in", "0.200 in", true),
                axis("12 in", "0.200 in", false),
                axis("16 in", "0.100 in", false),
                new MachineTable(length("49 in"), length("9 in"), 3, length("5/8 in"), length("2.5 in")),
                length("12 in"),
                new StiffnessBand(
                        READING.stiffness("5 N/um"), READING.stiffness("10 N/um"), READING.stiffness("20 N/um")),
                null,
                null,
                null,
                load,
                column,
                KEPT,
                SOURCE);
    }

    private static List<Typed<SpindleSpeed>> speeds(int... revolutions) {
        return java.util.Arrays.stream(revolutions)
                .mapToObj(each -> READING.spindleSpeed(each + " rev/min"))
                .toList();
    }

    private static Axis axis(String travel, String perTurn, boolean power) {
        return new Axis(
                length(travel),
                Axis.ReadBy.DIAL,
                length(perTurn),
                length("0.001 in"),
                length("0.005 in"),
                power ? READING.speed(Measure.FEED, "0.5 in/min") : null,
                power ? READING.speed(Measure.FEED, "30 in/min") : null);
    }

    /** The 6 in vise, with another grip of a usual pull. */
    public static Vise viseWithFirm(String firm) {
        return vise(VISE, "6 in vise", List.of("152 mm", "44 mm", "16 mm", "73 mm"), List.of("5 kN", firm, "25 kN"));
    }

    /** The 6 in vise with jaws of another height. */
    static Vise viseWithJaw(String height) {
        return vise(VISE, "6 in vise", List.of("152 mm", height, "16 mm", "73 mm"), List.of("5 kN", "15 kN", "25 kN"));
    }

    /** The 6 in vise with jaws of another face. */
    static Vise viseWithFace(Vise.JawFace face) {
        return copy(viseWithFirm("15 kN"), face, KEPT);
    }

    /** The same vise, so many of them counted. */
    public static Vise owned(Vise vise, int count) {
        return copy(vise, vise.jawFace(), new Kept("counted", count));
    }

    private static Vise copy(Vise vise, Vise.JawFace face, Kept kept) {
        return new Vise(
                vise.id(),
                vise.name(),
                vise.jawWidth(),
                vise.jawHeight(),
                vise.jawThickness(),
                vise.bedHeight(),
                vise.openingInboard(),
                vise.openingOutboard(),
                vise.bodyLength(),
                face,
                vise.snug(),
                vise.firm(),
                vise.hard(),
                vise.mass(),
                kept,
                vise.source());
    }

    /**
     * @param sizes jaw width, jaw height, jaw thickness, bed height
     * @param grip snug, firm, hard
     */
    private static Vise vise(String id, String name, List<String> sizes, List<String> grip) {
        return new Vise(
                id,
                name,
                length(sizes.get(0)),
                length(sizes.get(1)),
                length(sizes.get(2)),
                length(sizes.get(3)),
                length("150 mm"),
                length("250 mm"),
                length("430 mm"),
                Vise.JawFace.SMOOTH,
                READING.force(grip.get(0)),
                READING.force(grip.get(1)),
                READING.force(grip.get(2)),
                READING.mass("40 kg"),
                KEPT,
                SOURCE);
    }

    /** The shop with no parallels but the thick ones and thin ones that are higher than the jaw of the 6 in vise. */
    static Shop withOnlyHighThinParallels() {
        List<ShopRow> rows = new ArrayList<>(shop().rows());
        rows.removeIf(row -> row instanceof Parallels && !row.id().equals(THICK_PARALLELS));
        rows.add(parallels(THIN_PARALLELS, "Thin parallels 1/32 in", "1/32 in", "1-3/4 in"));
        return Shop.of(rows);
    }

    private static Parallels parallels(String id, String name, String thickness, String... heights) {
        return new Parallels(id, name, length(thickness), length("6 in"), lengths(heights), KEPT, SOURCE);
    }
}
