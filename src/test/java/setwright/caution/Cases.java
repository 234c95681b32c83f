package setwright.caution;

import java.util.List;
import java.util.stream.Stream;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.ViseField;
import setwright.job.ViseHolding.GripAsked;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.EndMill;
import setwright.shop.Shop;

/** For every check a job that it fires on and one that it nearly fires on, each a good job changed in one place. */
final class Cases {
    private Cases() {}

    /** A job that fires a check, and one whose margin is small but enough. */
    record Case(String slug, Bench fires, Bench nearly) {
        /** What the check says of a job: notes where it never says more. */
        List<Caution> said(Bench bench) {
            return NOTES.contains(slug) ? bench.note(slug).stream().toList() : bench.found(slug);
        }

        /** Whether the program has a change for it, or the hand alone has. */
        boolean hasRemedies() {
            return !NOTES.contains(slug) && !BY_HAND.contains(slug);
        }
    }

    /** Those that never say more than a note. */
    static final List<String> NOTES =
            List.of("marks-finished-face", "near-drill-size", "material-hazard", "thermal", "shop-row-changed");

    /** Those that nothing in the plan mends. */
    static final List<String> BY_HAND = List.of(
            "nothing-holds-it",
            "off-tolerance",
            "will-not-clean-up",
            "loads-wrong-way-round",
            "drill-wanders",
            "drill-grabs",
            "z-lost",
            "overweight");

    static List<Case> all() {
        return Stream.of(
                        RoomCases.all(),
                        StrapCases.ofRoom(),
                        ToolCases.all(),
                        BoreCases.all(),
                        GripCases.all(),
                        StrapCases.ofGrip(),
                        PlaceCases.all(),
                        OutcomeCases.all(),
                        List.of(StrapCases.headStillTilted()))
                .flatMap(List::stream)
                .toList();
    }

    static Bench block() {
        return Bench.of(SmallJobs.bearingBlock());
    }

    /** The bearing block on 1/4 in parallels, their outer faces this far from the jaws. */
    static Bench thickParallels(double inset) {
        return block().ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 19.05)
                .mm(ViseField.PARALLEL_INSET, inset);
    }

    /** A block that ends below the jaw top, drilled by a stub drill that stands out this far from a chuck 50 mm thick. */
    static Bench stubDrillOut(double mm) {
        Job low = SmallJobs.job(
                "Low block",
                12,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", "28"),
                SmallJobs.plain("h2", "4x 6.8 thru", "6.8", SmallJobs.grid("56", "30")));
        return Bench.of(low)
                .ink(ViseField.PARALLELS, SmallShop.PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 12.7)
                .ink("h2-drill", OperationField.CUTTER, SmallCutters.STUB_6_8)
                .ink("h2-drill", OperationField.HOLDER, SmallHolders.KEYED)
                .mm("h2-drill", OperationField.STICK_OUT, mm);
    }

    static Bench facing(String cutter, String holder) {
        return block().ink("f1-face", OperationField.CUTTER, cutter).ink("f1-face", OperationField.HOLDER, holder);
    }

    /** Right in a drill chuck, at nearly its whole capacity. */
    static Bench spotInChuck() {
        return block().ink("s1-spot", OperationField.HOLDER, SmallHolders.KEYED);
    }

    /** The bearing block under a head that goes no higher than this over the table. */
    static Bench lowHead(double noseHigh) {
        return block().in(SmallShop.shop().with(List.of(SmallShop.machine(noseHigh + " mm"))));
    }

    /** The 6.8 drill through 38 from 123.7 ends at 82.66: 40 out its chuck comes down to 122.66. */
    static Bench drillOut(double stickOut) {
        return block().mm("h2-drill", OperationField.STICK_OUT, stickOut);
    }

    static Bench reamFrom(double kneeHeight) {
        return block().mm("h1-ream", OperationField.KNEE_HEIGHT, kneeHeight);
    }

    /** A deep facing pass of this feed in a vise that is only snug. */
    static Bench snugFacing(double mmPerMin) {
        return block().ink(ViseField.GRIP, GripAsked.SNUG)
                .mm("f1-face", OperationField.DEPTH, 3)
                .ink("f1-face", OperationField.FEED, SmallShop.READING.feed(mmPerMin + " mm/min"));
    }

    /** Faced in half lanes by an end mill with 45 degrees of helix, which pulls upward, in a vise that is only snug. */
    static Bench steepHelix(double mmPerMin) {
        Shop shop = SmallShop.shop();
        EndMill plain = shop.row(SmallCutters.END_MILL, EndMill.class).orElseThrow();
        return block().in(shop.with(List.of(SmallCutters.withHelix(plain, "45 deg"))))
                .ink(ViseField.GRIP, GripAsked.SNUG)
                .ink("f1-face", OperationField.CUTTER, SmallCutters.END_MILL)
                .mm("f1-face", OperationField.DEPTH, 3)
                .mm("f1-face", OperationField.WIDTH, 10)
                .ink("f1-face", OperationField.FEED, SmallShop.READING.feed(mmPerMin + " mm/min"));
    }

    /** A block of this height gripped over its lowest 5.9 mm in a vise that is only snug. */
    static Bench tall(int height) {
        Job job = SmallJobs.job(
                "Post",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", String.valueOf(height)),
                SmallJobs.face("f1", String.valueOf(height - 2)));
        return Bench.of(job)
                .ink(ViseField.GRIP, GripAsked.SNUG)
                .ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 38.1);
    }

    /** The four holes blind, for 12 mm of thread by a tap with four threads of lead, drilled this deep. */
    static Bench drilledTo(double mm) {
        return Bench.of(SmallJobs.blindBlock())
                .ink("h2-tap", OperationField.CUTTER, SmallCutters.STRAIGHT)
                .mm("h2-drill", OperationField.DEPTH, mm);
    }

    static Bench underPower(Bench bench) {
        return bench.ink("h2-tap", OperationField.METHOD, Operation.Method.TAP_UNDER_POWER);
    }

    /** Faced to ±0.1 in one pass of 3 mm by an end mill that stands out 116 mm. */
    static Bench longEndMill(double mmPerMin) {
        Typed<Length> deep = SmallShop.length("3 mm");
        return block().ink("f1-face", OperationField.CUTTER, SmallCutters.LONG_END_MILL)
                .mm("f1-face", OperationField.STICK_OUT, 116)
                .ink("f1-face", OperationField.DEPTH, deep)
                .ink("f1-face", OperationField.FEED, SmallShop.READING.feed(mmPerMin + " mm/min"));
    }
}
