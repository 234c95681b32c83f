package setwright.plan.pencil;

import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.Block;
import setwright.job.DeviceHolding;
import setwright.job.Holding;
import setwright.job.SetUp;
import setwright.job.TableHolding;
import setwright.job.ViseHolding;
import setwright.plan.part.Lying;
import setwright.plan.part.TableSlots;
import setwright.shop.VBlocks;
import setwright.shop.Vise;

/** What holds the part where nobody decided it: a vise where one takes it, else slot, V-blocks or straps on the table. */
final class HoldingChoice {
    /** A part may stand out of a vise to three widths of its jaws in all (common practice). */
    private static final double JAW_WIDTHS = 3;

    /** A plate wider than this many thicknesses bows when it is squeezed (common practice). */
    private static final double BOWS = 40;

    private final Drafting drafting;

    HoldingChoice(Drafting drafting) {
        this.drafting = drafting;
    }

    Holding decided(SetUp setUp, Side up) {
        return setUp.holding().kind() == Holding.Kind.UNDECIDED ? chosen(setUp, up) : setUp.holding();
    }

    /** Quarter turns that lay the longer size of a side along the table. */
    static int alongTable(Block block, Side up) {
        Lying lying = Lying.of(block, up, 0);
        return lying.along().nominal().inside() < lying.across().nominal().inside() ? 1 : 0;
    }

    private Holding chosen(SetUp setUp, Side up) {
        Lying lying = Lying.of(drafting.block(), up, setUp.quarterTurns());
        if (inVise(lying)) {
            return ViseHolding.pencilled();
        }
        if (bar(up)
                && lying.along().nominal().inside() > lying.across().nominal().inside()) {
            return forBar(lying.across().greatestMm());
        }
        return TableHolding.pencilled();
    }

    private boolean inVise(Lying lying) {
        double across = lying.across().greatestMm();
        Optional<Vise> vise = HoldingPencil.fitting(drafting, across);
        return vise.isPresent()
                && lying.along().greatestMm()
                        <= JAW_WIDTHS * vise.get().jawWidth().inside()
                && across <= BOWS * lying.upright().leastMm();
    }

    private Holding forBar(double diameter) {
        boolean slot = TableSlots.suits(diameter, drafting.rows().machine().table());
        boolean vees = drafting.rows().all(VBlocks.class).stream()
                .anyMatch(row -> row.kept().owned() != 0
                        && row.least().inside() <= diameter
                        && row.greatest().inside() >= diameter);
        return slot || !vees ? TableHolding.pencilled() : DeviceHolding.pencilled(DeviceHolding.On.V_BLOCKS);
    }

    private boolean bar(Side up) {
        Blank.Kind kind = drafting.job().plan().blank().kind();
        boolean round = kind == Blank.Kind.ROUND_BAR || kind == Blank.Kind.TUBE;
        return round && up != Side.TOP && up != Side.BOTTOM;
    }
}
