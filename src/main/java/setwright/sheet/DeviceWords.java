package setwright.sheet;

import setwright.job.DrawnDevice;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.shop.ShopRow;

/** A part on a device in the words of the machine: where it lies, what holds it there, what the device stands in. */
record DeviceWords(Plan plan, DrawnDevice holding) {
    /** {@code on the rotary table (Rotary table 6 in, 90 to 1), set to 30 deg, in the jaws of 3-jaw chuck 100 mm}. */
    String text() {
        String angle =
                holding.angle() == null ? "" : ", set to " + holding.angle().text();
        return where() + " (" + row(holding.device().value()) + ")" + angle + held() + tail() + vise();
    }

    private String where() {
        return switch (holding.on()) {
            case V_BLOCKS -> "in a pair of V-blocks";
            case ANGLE_PLATE -> "against the angle plate";
            case FIXTURE_PLATE -> "on the fixture plate";
            case SET_UP_BLOCKS -> "on a pair of blocks";
            case COLLET_BLOCK -> "in the collet block";
            case ROTARY_TABLE -> holding.upright() ? "on the rotary table, upright" : "on the rotary table";
            case DIVIDING_HEAD -> "in the dividing head";
            case MAGNETIC_CHUCK -> "on the magnetic chuck";
        };
    }

    private String held() {
        return switch (holding.fastening().value()) {
            case STRAPS, COLLET, MAGNET -> "";
            case BOLTS -> ", bolted through its own holes";
            case TAPE, GLUE -> ", stuck down with " + row(holding.gear().value());
            case SANDWICH -> ", between it and " + row(holding.gear().value());
            case CHUCK -> named(holding.gear().value(), ", in the jaws of ");
            case MANDREL -> named(holding.gear().value(), ", on ");
            case BETWEEN_CENTRES -> ", between centres with a dog";
        };
    }

    private String tail() {
        return named(holding.tail().value(), ", its far end in ");
    }

    private String vise() {
        return named(holding.vise().value(), ", which is in ");
    }

    private String named(String id, String before) {
        return id.equals(ViseHolding.NONE) ? "" : before + row(id);
    }

    private String row(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse("nothing in the shop fits");
    }
}
