package setwright.caution;

import static setwright.caution.SmallShop.length;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Corner;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Title;
import setwright.job.ViseField;
import setwright.plan.BearingBlock;
import setwright.quantity.UnitSystem;

/** Jobs of the demonstration shop whose features come out otherwise than drawn, and their neighbours. */
final class OutcomeCases {
    private OutcomeCases() {}

    private static Bench block(String size, Feature... features) {
        String[] sizes = size.split(" x ");
        JobPlan plan = new JobPlan(
                new Title("Link", "TM-131", "A"),
                UnitSystem.METRIC,
                1,
                "mild-steel",
                SmallJobs.block(sizes[0], sizes[1], sizes[2]),
                new MachineAsItStands("knee-mill-r8-9x49", List.of("vise-6in"), null),
                List.of(features),
                List.of(),
                List.of());
        return new Bench(new Job(plan, JobRecord.EMPTY), BearingBlock.shop());
    }

    private static Size mm(String size) {
        return Size.of(length(size + " mm"));
    }

    private static Placed placed(Pattern.Datum from, String u, String v) {
        return new Placed(from, length(u + " mm"), length(v + " mm"), null);
    }

    private static Placed middle() {
        return placed(Pattern.Datum.CENTRE, "0", "0");
    }

    /** A pocket with corners of 5, milled by a slot drill of this size. */
    static Bench pocketBy(String cutter) {
        Pocket pocket = new Pocket(
                "pocket1",
                "pocket 40 x 25 x 4 deep",
                Side.TOP,
                mm("40"),
                mm("25"),
                mm("4"),
                length("5 mm"),
                middle(),
                null,
                GotBy.TOOL);
        return block("80 x 50 x 40", pocket).ink("pocket1-pocket", OperationField.CUTTER, cutter);
    }

    /** A slot 10 wide, milled by a slot drill of this size. */
    static Bench slotBy(String cutter) {
        Slot slot =
                new Slot("slot1", "slot 10 x 4 deep", Side.TOP, mm("10"), mm("4"), null, middle(), null, GotBy.TOOL);
        return block("80 x 50 x 40", slot).ink("slot1-slot", OperationField.CUTTER, cutter);
    }

    /** A window cut round in a plate of 20. */
    static Bench window(@Nullable Size depth) {
        List<Corner> corners = Stream.of("20 15", "80 15", "80 55", "20 55")
                .map(place -> place.split(" "))
                .map(place -> new Corner(length(place[0] + " mm"), length(place[1] + " mm"), length("6 mm")))
                .toList();
        ProfileCut window =
                new ProfileCut("window1", "window 60 x 40", Side.TOP, true, corners, depth, null, GotBy.TOOL);
        return block("100 x 70 x 20", window);
    }

    /** A clamp split at its end, so high over its underside, by a kerf that runs along the jaws' ends. */
    static Bench split(String height) {
        Slit slit = new Slit(
                "slit1",
                "slit 2 x 20 deep",
                Side.LEFT,
                mm("2"),
                mm("20"),
                null,
                placed(Pattern.Datum.LEFT_LOW, "20", height),
                null,
                GotBy.TOOL);
        return block("240 x 40 x 40", slit);
    }

    static List<Cases.Case> all() {
        return List.of(
                new Cases.Case(
                        "left-standing",
                        pocketBy("slot-drill-hss-12x16-shank12"),
                        pocketBy("slot-drill-hss-10x13-shank10")),
                new Cases.Case(
                        "cut-too-much", slotBy("slot-drill-hss-12x16-shank12"), slotBy("slot-drill-hss-10x13-shank10")),
                new Cases.Case("piece-comes-loose", window(null), window(mm("19.5"))),
                new Cases.Case(
                        "saw-pinched",
                        split("24")
                                .ink(ViseField.PARALLELS, "parallels-0.125in")
                                .mm(ViseField.PARALLEL_HEIGHT, 12.7),
                        split("24")));
    }
}
