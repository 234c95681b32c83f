package setwright.plan.pencil;

import java.util.List;
import setwright.job.DeviceHolding;
import setwright.job.Drawn;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.ViseHolding;
import setwright.plan.part.DeviceVise;
import setwright.plan.part.Lying;
import setwright.shop.Adhesive;
import setwright.shop.ColletBlock;
import setwright.shop.FixturePlate;
import setwright.shop.Mandrel;
import setwright.shop.Owned;
import setwright.shop.ShopRow;
import setwright.shop.Tailstock;
import setwright.shop.WorkChuck;

/** How a device stands, and what holds the part on it, where nobody said so. */
record DeviceGear(Drafting drafting, Lying lying, boolean lyingBar) {
    /** A bar that stands out farther than this many diameters wants its far end borne (common practice). */
    private static final double FREE = 4;

    DeviceHolding.Stance stance(DeviceHolding.On on) {
        return switch (on) {
            case ANGLE_PLATE, DIVIDING_HEAD -> DeviceHolding.Stance.UPRIGHT;
            case COLLET_BLOCK -> lyingBar ? DeviceHolding.Stance.UPRIGHT : DeviceHolding.Stance.FLAT;
            case V_BLOCKS, FIXTURE_PLATE, SET_UP_BLOCKS, ROTARY_TABLE, MAGNETIC_CHUCK -> DeviceHolding.Stance.FLAT;
        };
    }

    /** A collet block is always in a vise; all else is bolted to the table. */
    String vise(String device) {
        return drafting.rows()
                .row(device, ColletBlock.class)
                .flatMap(block -> DeviceVise.of(block, drafting.rows()))
                .map(ShopRow::id)
                .orElse(ViseHolding.NONE);
    }

    static DeviceHolding.Fastening fastening(DeviceHolding.On on) {
        return switch (on) {
            case V_BLOCKS, ANGLE_PLATE, FIXTURE_PLATE, SET_UP_BLOCKS, ROTARY_TABLE -> DeviceHolding.Fastening.STRAPS;
            case COLLET_BLOCK -> DeviceHolding.Fastening.COLLET;
            case DIVIDING_HEAD -> DeviceHolding.Fastening.CHUCK;
            case MAGNETIC_CHUCK -> DeviceHolding.Fastening.MAGNET;
        };
    }

    String gear(DeviceHolding.Fastening fastening) {
        return switch (fastening) {
            case STRAPS, BOLTS, COLLET, BETWEEN_CENTRES, MAGNET -> ViseHolding.NONE;
            case TAPE -> first(owned(Adhesive.class, row -> row.form() == Adhesive.Form.TAPE));
            case GLUE -> first(owned(Adhesive.class, row -> row.form() == Adhesive.Form.GLUE));
            case SANDWICH -> first(owned(FixturePlate.class, row -> row.madeOf().board()));
            case CHUCK ->
                first(owned(
                        WorkChuck.class,
                        row -> row.least().inside() <= diameter()
                                && row.greatest().inside() >= diameter()));
            case MANDREL ->
                first(owned(
                        Mandrel.class,
                        row -> row.least().inside() <= bore() && row.greatest().inside() >= bore()));
        };
    }

    String tail(DeviceHolding.On on, Drawn<DeviceHolding.Fastening> fastening) {
        boolean level = on == DeviceHolding.On.DIVIDING_HEAD || on == DeviceHolding.On.ROTARY_TABLE && lyingBar;
        boolean wanted = switch (fastening.value()) {
            case BETWEEN_CENTRES, MANDREL -> true;
            case CHUCK -> lyingBar && lying.along().nominal().inside() > FREE * diameter();
            case STRAPS, BOLTS, TAPE, GLUE, SANDWICH, COLLET, MAGNET -> false;
        };
        return level && wanted ? first(owned(Tailstock.class, row -> true)) : ViseHolding.NONE;
    }

    DeviceHolding.Located located(DeviceHolding.On on, Drawn<DeviceHolding.Fastening> fastening) {
        return switch (fastening.value()) {
            case CHUCK, COLLET, MANDREL, BETWEEN_CENTRES -> DeviceHolding.Located.CENTRE;
            case STRAPS, BOLTS, TAPE, GLUE, SANDWICH, MAGNET ->
                on == DeviceHolding.On.ROTARY_TABLE ? DeviceHolding.Located.CENTRE : DeviceHolding.Located.EDGES;
        };
    }

    private double diameter() {
        return Math.min(
                lying.across().nominal().inside(), lying.along().nominal().inside());
    }

    /** The largest plain hole of the part: what a mandrel goes into. */
    private double bore() {
        return drafting.job().plan().features().stream()
                .filter(feature -> feature.kind() == Feature.Kind.HOLE)
                .map(feature -> ((Hole) feature).size())
                .filter(size -> size != null)
                .mapToDouble(size -> size.nominal().inside())
                .max()
                .orElse(0);
    }

    private <T extends Owned> List<T> owned(Class<T> kind, java.util.function.Predicate<T> fits) {
        return drafting.rows().all(kind).stream()
                .filter(row -> row.kept().owned() != 0 && fits.test(row))
                .toList();
    }

    private static String first(List<? extends Owned> rows) {
        return rows.stream().map(ShopRow::id).findFirst().orElse(ViseHolding.NONE);
    }
}
