package setwright.job;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Blanks, features and places in the trade's words, sizes as they were typed. */
public final class InWords {
    private InWords() {}

    /** A name of the program's in words: {@code between edges}. */
    public static String word(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** For instance {@code block 82 mm x 52 mm x 40 mm}. */
    public static String blank(Blank blank) {
        return switch (blank.kind()) {
            case BLOCK -> "block " + box(blank);
            case PLATE -> "plate " + box(blank);
            case ROUND_BAR -> {
                RoundBar bar = (RoundBar) blank;
                yield "round bar " + by(bar.diameter(), bar.length());
            }
            case TUBE -> {
                Tube tube = (Tube) blank;
                yield "tube " + by(tube.outside(), tube.bore(), tube.length());
            }
            case PROFILE_BAR -> {
                ProfileBar bar = (ProfileBar) blank;
                yield word(bar.section()) + " bar " + by(bar.width(), bar.height(), bar.length());
            }
            case OUTLINE -> "piece within " + box(blank);
            case ROUGH_BODY -> "rough body within " + box(blank);
        };
    }

    private static String box(Blank blank) {
        Block box = blank.envelope();
        return by(box.length(), box.depth(), box.height());
    }

    private static String by(Size... sizes) {
        return Stream.of(sizes).map(size -> size.nominal().text()).collect(Collectors.joining(" x "));
    }

    /** The drawing note, else what the fields say: {@code slot 12 mm}. */
    public static String feature(Feature feature) {
        return feature.note().isEmpty() ? plain(feature) : feature.note();
    }

    private static String plain(Feature feature) {
        return switch (feature.kind()) {
            case FACE -> "the " + word(feature.side()) + " side";
            case HOLE -> hole((Hole) feature);
            case STEP -> "step " + by(((Step) feature).width(), ((Step) feature).depth());
            case SLOT -> "slot " + by(((Slot) feature).width());
            case ARC_SLOT -> "arc slot " + by(((ArcSlot) feature).width());
            case RADIUS_END -> "radius end " + by(((RadiusEnd) feature).radius());
            case POCKET -> "pocket " + by(((Pocket) feature).length(), ((Pocket) feature).width());
            case PROFILE -> ((ProfileCut) feature).inside() ? "window" : "outline";
            case KEYSEAT -> "keyseat " + by(((Keyseat) feature).width());
            case WOODRUFF_SEAT -> "seat for Woodruff key " + ((WoodruffSeat) feature).key();
            case T_SLOT -> "T-slot " + by(((TSlot) feature).neck());
            case DOVETAIL -> "dovetail " + by(((Dovetail) feature).width());
            case FLATS -> ((Flats) feature).count() + " flats " + by(((Flats) feature).across());
            case CHAMFER -> "chamfer " + by(((Chamfer) feature).width());
            case SLIT -> "slit " + by(((Slit) feature).width());
            case INCLINED_FACE ->
                "face inclined " + ((InclinedFace) feature).angle().text();
            case DIVIDED -> ((Divided) feature).count() + " " + word(((Divided) feature).what());
        };
    }

    private static String hole(Hole hole) {
        String size = hole.thread() == null ? hole.size().nominal().text() : hole.thread();
        return "hole " + size + (hole.fit() == null ? "" : " " + hole.fit());
    }
}
