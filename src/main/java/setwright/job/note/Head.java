package setwright.job.note;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a note is about, and the words that say so: common practice on drawings. */
enum Head {
    HOLE("hole", "hole", "holes", "drill", "drilled", "drill hole"),
    TAP("tapped hole", "tap", "tapped", "thread", "threaded"),
    REAM("reamed hole", "ream", "reamed", "rm"),
    BORE("bore", "bore", "bored"),
    COUNTERBORE("counterbore", "cbore", "c'bore", "c-bore", "counterbore", "counterbored"),
    COUNTERSINK("countersink", "csk", "c'sk", "c-sk", "csink", "countersink", "countersunk"),
    SPOTFACE("spotface", "spotface", "spotfaced", "s'face", "spot face", "spot-face", "sf"),
    T_SLOT("T-slot", "t-slot", "t-slots", "t slot", "t slots", "tslot"),
    SLOT("slot", "slot", "slots", "groove"),
    POCKET("pocket", "pocket", "pockets", "recess"),
    STEP("step", "step", "steps", "shoulder", "rebate"),
    KEYSEAT("keyseat", "keyseat", "keyway", "key seat", "key way"),
    CHAMFER("chamfer", "chamfer", "chamfers", "chf", "cham", "break edges", "break edge", "break"),
    FACE("face", "face", "mill", "skim"),
    SQUARE("square all over", "square all over", "square up", "square", "machine all over", "fao"),
    DOVETAIL("dovetail", "dovetail", "dove tail"),
    FLATS("flats", "flats", "flat"),
    SLIT("slit", "slit", "slits", "saw cut", "sawcut"),
    GRADUATIONS("graduations", "graduations", "graduation", "grads", "divisions"),
    SPLINES("splines", "splines", "spline"),
    TEETH("teeth", "teeth", "tooth");

    private final String name;
    private final List<String> phrases;

    Head(String name, String... phrases) {
        this.name = name;
        this.phrases = List.of(phrases);
    }

    /** As a sentence calls it. */
    String called() {
        return name;
    }

    boolean isMouth() {
        return this == COUNTERBORE || this == COUNTERSINK || this == SPOTFACE;
    }

    boolean isRoundAxis() {
        return this == FLATS || this == GRADUATIONS || this == SPLINES || this == TEETH;
    }

    boolean isHole() {
        return this == HOLE || this == TAP || this == REAM || this == BORE || isMouth();
    }

    /** The one whose words stand here; the words are passed. Null where none does. */
    static @Nullable Head passed(Cursor cursor) {
        for (Head head : values()) {
            if (cursor.passes(head.phrases.toArray(new String[0]))) {
                return head;
            }
        }
        return null;
    }
}
