package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.HoldingEdits;
import setwright.job.Strapping;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StrapGear;
import setwright.plan.part.StrapPlace;
import setwright.plan.part.TableCover;
import setwright.plan.part.TableSlots;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.shop.MachineTable;
import setwright.shop.ShopRow;

/** A part on the table or on a device, and its straps, in the words of the machine. */
public record OnTable(Plan plan, DrawnSetUp setUp, Printing printing) {
    private static final double SAME = 1e-6;

    /** A heel that is less than this higher or lower is level, mm. */
    private static final double LEVEL = 0.05;

    /** What the part lies on: {@code on the table, packed up 25.4 mm on 1-2-3 blocks}. */
    public String table(DrawnTable holding) {
        return switch (holding.seat().value()) {
            case TABLE -> "straight on the table";
            case PACKING ->
                "on the table, packed up "
                        + length(holding.packingHeight().value().inside()) + " on "
                        + row(holding.packing().value());
            case JACKS ->
                "on " + row(holding.packing().value()) + " set to "
                        + length(holding.packingHeight().value().inside()) + " over the table";
            case T_SLOT -> "in " + slot(holding.y().value().inside()) + ", on its two edges" + sunk();
        };
    }

    private String sunk() {
        return heights()
                .map(heights -> -heights.partBottom())
                .filter(deep -> deep > SAME)
                .map(deep -> ", its underside " + length(deep) + " below the table top")
                .orElse("");
    }

    private String slot(double y) {
        MachineTable table = plan.rows().machine().table();
        List<Double> all = TableSlots.all(table);
        int number = IntStream.range(0, all.size())
                        .filter(i -> Math.abs(all.get(i) - TableSlots.nearest(y, table)) < SAME)
                        .findFirst()
                        .orElse(0)
                + 1;
        boolean middle = all.size() % 2 == 1 && number == (all.size() + 1) / 2;
        return middle ? "the middle T-slot" : "T-slot " + number + " from the front";
    }

    /** The device: {@code on the rotary table (Rotary table 6 in, 90 to 1), set to 30 deg}. */
    public String device(DrawnDevice holding) {
        return new DeviceWords(plan, holding).text();
    }

    public String row(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse("nothing in the shop fits");
    }

    /** The straps as they stand; none where they or their studs are not in the shop. */
    public List<StrapPlace> straps() {
        return heights()
                .map(heights -> StrapPlace.all(HoldingEdits.straps(setUp.holding()), heights, plan.rows()))
                .orElse(List.of());
    }

    private Optional<Heights> heights() {
        return plan.part().setUp(setUp.id()).map(SetUpStage::heights);
    }

    /** {@code 2 straps}. */
    public String count() {
        List<DrawnStrap> all = HoldingEdits.straps(setUp.holding());
        if (all.isEmpty()) {
            return "no strap";
        }
        List<String> counts = new ArrayList<>();
        for (Strapping.By by : Strapping.By.values()) {
            long count = all.stream().filter(one -> one.by().value() == by).count();
            if (count > 0) {
                counts.add(count + " " + Shown.word(by) + (count == 1 ? "" : "s"));
            }
        }
        return String.join(" and ", counts);
    }

    /** Where its pad presses: {@code 18 mm from the left end, 40 mm from the front}. */
    public String pad(StrapPlace strap) {
        return length(strap.drawn().u().value().inside()) + " from the left end, "
                + length(strap.drawn().v().value().inside()) + " from the front";
    }

    /** How its heel stands: {@code level}, {@code 2 mm high}. */
    public String heel(StrapPlace strap) {
        double over = strap.drawn().heelOver().value().inside();
        if (Math.abs(over) < LEVEL) {
            return "level";
        }
        return length(Math.abs(over)) + (over > 0 ? " high" : " low");
    }

    /** Which way it lies: {@code to the left}. */
    public String toward(StrapPlace strap) {
        double x = strap.toward().x();
        double y = strap.toward().y();
        if (Math.abs(y) < SAME) {
            return x < 0 ? "to the left" : "to the right";
        }
        if (Math.abs(x) < SAME) {
            return y < 0 ? "to the front" : "to the column";
        }
        return (y < 0 ? "to the front" : "to the column") + (x < 0 ? " and left" : " and right");
    }

    /** Its stud: {@code stud 125 mm (Studs M12)}. */
    public String stud(StrapPlace strap) {
        return StrapGear.of(strap, plan.rows())
                .map(gear ->
                        "stud " + gear.length().text() + " (" + gear.studs().name() + ")")
                .orElse("stud");
    }

    /** How long its stud is: {@code 125 mm}. */
    public String studLength(StrapPlace strap) {
        return StrapGear.of(strap, plan.rows())
                .map(gear -> gear.length().text())
                .orElse("");
    }

    public String torque(StrapPlace strap) {
        return printing.of(Measure.TORQUE, strap.drawn().torque().value().inside());
    }

    /** All of a strap, an edge clamp or a bolt in one sentence without its name. */
    public String strap(StrapPlace strap) {
        return switch (strap.by()) {
            case STRAP ->
                name(strap) + ", pad " + pad(strap) + ", lying " + toward(strap) + "; " + stud(strap) + " "
                        + length(strap.drawn().padToStud().value().inside()) + " from the pad, heel "
                        + length(strap.drawn().studToHeel().value().inside()) + " behind it on "
                        + length(strap.heelHeight() - strap.foot()) + " of step block, " + heel(strap) + "; nut to "
                        + torque(strap) + under(strap);
            case EDGE_CLAMP ->
                name(strap) + ", against the edge " + pad(strap) + ", lying " + toward(strap) + ", its top "
                        + length(strap.studTop() - strap.foot()) + " over what it stands on; screw to "
                        + torque(strap) + under(strap);
            case BOLT ->
                stud(strap) + " through the hole " + pad(strap) + "; nut on a washer, to " + torque(strap)
                        + under(strap);
        };
    }

    /** What a large part on the table hides, where it hangs over, what it weighs; empty for one that does neither. */
    public String cover() {
        if (setUp.holding().kind() != DrawnHolding.Kind.TABLE) {
            return "";
        }
        return plan.part()
                .setUp(setUp.id())
                .map(stage -> new CoverWords(TableCover.of(stage, plan.rows()), printing).text())
                .orElse("");
    }

    private static String name(StrapPlace strap) {
        return strap.row().map(ShopRow::name).orElse("");
    }

    private String under(StrapPlace strap) {
        String washer = strap.drawn().washer().value().equals(ViseHolding.NONE)
                ? ""
                : ", on " + row(strap.drawn().washer().value());
        return washer
                + switch (strap.drawn().pad().value()) {
                    case BARE -> "";
                    case PAPER -> "; paper under the pad";
                    case BRASS -> "; brass under the pad";
                };
    }

    public String length(double mm) {
        return printing.of(Measure.LENGTH, mm);
    }
}
