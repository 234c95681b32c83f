package setwright.caution;

import java.util.List;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.shop.Drill;
import setwright.shop.EndMill;
import setwright.shop.Holder;
import setwright.shop.ShankForm;
import setwright.shop.ToolMaterial;

/** Jobs that ask too much of holder, cutter or spindle, and their neighbours that ask nearly as much. */
final class ToolCases {
    private static final String R8_20 = "collet-r8-20mm";

    private ToolCases() {}

    /** The bearing block faced in lanes by an end mill of 20 in its collet. */
    static Bench lanes(double width, double depth, double mmPerMin) {
        return Cases.facing(SmallCutters.END_MILL, R8_20)
                .mm("f1-face", OperationField.WIDTH, width)
                .mm("f1-face", OperationField.DEPTH, depth)
                .ink("f1-face", OperationField.FEED, SmallShop.READING.feed(mmPerMin + " mm/min"));
    }

    /** An end mill of 104 that stands out so far of a collet: the rest is gripped. */
    static Bench endMillOut(double mm) {
        return Cases.facing(SmallCutters.END_MILL, R8_20).mm("f1-face", OperationField.STICK_OUT, mm);
    }

    /** The spot drill at this speed in a drill chuck whose row says nothing. */
    static Bench spotAt(int revolutions) {
        return Cases.spotInChuck().ink("s1-spot", OperationField.SPEED, speed(revolutions));
    }

    static Bench atSpeed(String operation, int revolutions) {
        return Cases.block().ink(operation, OperationField.SPEED, speed(revolutions));
    }

    private static setwright.quantity.Typed<setwright.quantity.SpindleSpeed> speed(int revolutions) {
        return SmallShop.READING.spindleSpeed(revolutions + " rev/min");
    }

    /** A hole through the block, opened by an end mill that does or does not cut at its centre. */
    static Bench plunged(boolean centreCutting) {
        EndMill mill = endMill("end-mill-hss-10", "10 mm", "26 mm", "72 mm", centreCutting);
        Job foot = SmallJobs.foot();
        return Bench.of(foot)
                .in(SmallShop.shop().with(List.of(mill)))
                .ink("h1-drill", OperationField.CUTTER, mill.id());
    }

    private static EndMill endMill(String id, String size, String flutes, String overall, boolean centreCutting) {
        return new EndMill(
                id,
                "End mill " + size,
                ToolMaterial.HSS,
                SmallShop.length(size),
                SmallShop.length(size),
                ShankForm.PLAIN,
                SmallShop.length(flutes),
                SmallShop.length(overall),
                4,
                SmallShop.READING.angle("30 deg"),
                centreCutting,
                null,
                null,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** The four holes, or the hole to be reamed, fed by the quill under power: 11.8 and 6.8 against 3/8 in. */
    static Bench quillFeeds(String operation) {
        return Cases.block().ink(operation, OperationField.METHOD, Operation.Method.QUILL_POWER);
    }

    /** A hole of this size through steel by the lever, in a collet chuck. */
    static Bench drilled(String size) {
        Drill drill = drill("drill-hss-jobber-" + size, size);
        Job plate = SmallJobs.job(
                "Plate",
                2,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", "40"),
                SmallJobs.plain("h1", size + " thru", size, SmallJobs.middle()));
        return Bench.of(plate)
                .in(SmallShop.shop().with(List.of(drill)))
                .ink("h1-drill", OperationField.CUTTER, drill.id())
                .ink("h1-drill", OperationField.METHOD, Operation.Method.QUILL_LEVER);
    }

    /** @param size diameter and shank, mm */
    private static Drill drill(String id, String size) {
        return new Drill(
                id,
                "Drill " + size + " mm",
                ToolMaterial.HSS,
                SmallShop.length(size + " mm"),
                SmallShop.length(size + " mm"),
                ShankForm.PLAIN,
                SmallShop.length("120 mm"),
                SmallShop.length("178 mm"),
                2,
                SmallShop.READING.angle("118 deg"),
                Drill.Series.JOBBER,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    static Bench climbing(double width, double depth) {
        return lanes(width, depth, 150).ink("f1-face", OperationField.DIRECTION, Operation.Direction.CLIMB);
    }

    /** The face mill with the knee this far down from where the quill is in: 25 of arbor and 40 of body over 123.7. */
    static Bench quillOut(double mm) {
        return Cases.block().mm("f1-face", OperationField.KNEE_HEIGHT, 123.7 + 65 + mm);
    }

    /** The hole of 12 H7 reamed after a drill of this size. */
    static Bench reamedAfter(String size) {
        Drill drill = drill("drill-hss-jobber-" + size, size);
        return Cases.block()
                .in(SmallShop.shop().with(List.of(drill)))
                .ink("h1-drill", OperationField.CUTTER, drill.id());
    }

    /** The bearing block with the limit of its keyed chuck written into its row. */
    static Bench chuckMarked(String fastest, int revolutions) {
        Holder chuck = SmallShop.shop().row(SmallHolders.KEYED, Holder.class).orElseThrow();
        Holder marked = new Holder(
                chuck.id(),
                chuck.name(),
                chuck.style(),
                chuck.taper(),
                chuck.projection(),
                chuck.noseDiameter(),
                chuck.shankLeast(),
                chuck.shankGreatest(),
                chuck.grip(),
                chuck.runOutLow(),
                chuck.runOutHigh(),
                chuck.dropOut(),
                SmallShop.READING.spindleSpeed(fastest),
                chuck.keepsLength(),
                chuck.kept(),
                chuck.source());
        return Cases.block()
                .in(SmallShop.shop().with(List.of(marked)))
                .ink("s1-spot", OperationField.HOLDER, SmallHolders.KEYED)
                .ink("s1-spot", OperationField.SPEED, speed(revolutions));
    }

    /** A thin drill that is pushed by the lever and stands out so far. */
    static Bench thinDrillOut(double mm) {
        return drilled("3").mm("h1-drill", OperationField.STICK_OUT, mm);
    }

    /** An end mill of 20 with 141 to its end, which stands out so far. */
    static Bench slender(double mm) {
        return Cases.longEndMill(300).mm("f1-face", OperationField.STICK_OUT, mm);
    }

    static List<Cases.Case> all() {
        return List.of(
                new Cases.Case(
                        "wrong-holder",
                        Cases.facing(SmallCutters.CARBIDE_END_MILL, SmallHolders.KEYED),
                        Cases.spotInChuck()),
                new Cases.Case("short-grip", endMillOut(75), endMillOut(74)),
                new Cases.Case("pulls-out-of-holder", lanes(15, 20, 150), lanes(15, 18, 150)),
                new Cases.Case("slips-in-holder", lanes(10, 12, 150), lanes(10, 11, 150)),
                new Cases.Case("too-fast-for-the-tool", spotAt(3100), spotAt(2950)),
                new Cases.Case("cannot-plunge", plunged(false), plunged(true)),
                new Cases.Case("speed-out-of-range", atSpeed("f1-face", 800), atSpeed("f1-face", 750)),
                new Cases.Case("spindle-overloaded", lanes(15, 14, 150), lanes(15, 13, 150)),
                new Cases.Case("belt-slips", lanes(5, 12, 480), lanes(5, 12, 440)),
                new Cases.Case("feed-out-of-range", lanes(10, 3, 150), lanes(10, 3, 145)),
                new Cases.Case("quill-feed-overloaded", quillFeeds("h1-drill"), quillFeeds("h2-drill")),
                new Cases.Case("push-too-heavy", drilled("16"), drilled("13")),
                new Cases.Case("climb-pulls-table", climbing(4, 12), climbing(4, 8)),
                new Cases.Case("tool-breaks", thinDrillOut(66), thinDrillOut(64)),
                new Cases.Case("tool-springs", Cases.longEndMill(500), Cases.longEndMill(350)),
                SpringCases.barSprings(),
                SpringCases.slotComesWide(),
                new Cases.Case("chatter-likely", slender(121), slender(119)),
                new Cases.Case("quill-far-out", quillOut(61), quillOut(59)),
                new Cases.Case("ream-allowance", reamedAfter("11.3"), reamedAfter("11.4")));
    }
}
