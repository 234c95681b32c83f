package setwright.job.note;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Edge;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.Hole;
import setwright.job.InWords;
import setwright.job.InclinedFace;
import setwright.job.Keyseat;
import setwright.job.Marks;
import setwright.job.Pattern;
import setwright.job.Pattern.Datum;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.job.Tooth;
import setwright.job.WoodruffSeat;
import setwright.quantity.Quantity;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** Features as sentences, from their fields alone; a size in the units of the job stands without its unit. */
public final class Spoken {
    private final String unit;

    public Spoken(UnitSystem units) {
        this.unit = units == UnitSystem.INCH ? " in" : " mm";
    }

    static String word(Enum<?> name) {
        return InWords.word(name);
    }

    /** For instance {@code 4 tapped holes M6, through, from the top, on a 76 x 36 rectangle about the middle}. */
    public String sentence(Feature feature) {
        return switch (feature.kind()) {
            case HOLE -> new SpokenHole(this, (Hole) feature).sentence();
            case FACE -> face((Face) feature);
            case SLOT -> slot((Slot) feature);
            case SLIT -> slit((Slit) feature);
            case POCKET -> pocket((Pocket) feature);
            case STEP -> step((Step) feature);
            case KEYSEAT -> keyseat((Keyseat) feature);
            case CHAMFER -> chamfer((Chamfer) feature);
            case T_SLOT -> tSlot((TSlot) feature);
            case DOVETAIL -> dovetail((Dovetail) feature);
            case FLATS -> flats((Flats) feature);
            case DIVIDED -> divided((Divided) feature);
            case ARC_SLOT, RADIUS_END, PROFILE, WOODRUFF_SEAT, INCLINED_FACE -> unwritten(feature);
        };
    }

    private String face(Face face) {
        return capital(word(face.side())) + " faced to " + size(face.across()) + " from the "
                + word(face.side().opposite()) + finish(face.finish());
    }

    private String from(Side side) {
        return ", from the " + word(side);
    }

    private String slot(Slot slot) {
        return "Slot " + size(slot.width()) + " wide, " + depth(slot.depth()) + ", "
                + length(slot.length(), "open at both ends") + from(slot.side()) + placed(slot.side(), slot.place())
                + finish(slot.finish());
    }

    private String slit(Slit slit) {
        return "Slit " + size(slit.width()) + " wide, " + depth(slit.depth()) + ", "
                + length(slit.length(), "right across") + from(slit.side()) + placed(slit.side(), slit.place())
                + finish(slit.finish());
    }

    private String pocket(Pocket pocket) {
        return "Pocket " + size(pocket.length()) + " x " + size(pocket.width()) + ", " + depth(pocket.depth())
                + ", corners R" + plain(pocket.corner()) + from(pocket.side()) + placed(pocket.side(), pocket.place())
                + finish(pocket.finish());
    }

    private String step(Step step) {
        String along = step.length() == null ? "" : ", " + size(step.length()) + " long";
        return "Step " + size(step.width()) + " wide, " + size(step.depth()) + " deep" + along + " along the "
                + Corners.name(step.side(), step.edge()) + " edge of the " + word(step.side()) + finish(step.finish());
    }

    private String keyseat(Keyseat seat) {
        return "Keyseat " + size(seat.width()) + " wide, " + size(seat.depth()) + " deep at its "
                + word(seat.from()) + ", " + length(seat.length(), "to the end") + ", on a shaft of "
                + size(seat.shaft())
                + from(seat.side()) + placed(seat.side(), seat.place()).replace(", turned 90°", ", along the bar")
                + finish(seat.finish());
    }

    private String chamfer(Chamfer chamfer) {
        String of = chamfer.of().equals(Chamfer.OUTLINE)
                ? " round the " + word(chamfer.side())
                : " at " + chamfer.of() + from(chamfer.side());
        return "Chamfer " + size(chamfer.width()) + " x " + chamfer.angle().text() + of + finish(chamfer.finish());
    }

    private String tSlot(TSlot slot) {
        return "T-slot, neck " + size(slot.neck()) + ", " + size(slot.depth()) + " deep, head " + size(slot.headWidth())
                + " x "
                + size(slot.headHeight()) + ", " + length(slot.length(), "open at both ends") + from(slot.side())
                + placed(slot.side(), slot.place()) + finish(slot.finish());
    }

    private String dovetail(Dovetail tail) {
        return "Dovetail " + (tail.male() ? "that stands" : "slot") + ", " + size(tail.width()) + " at its widest, "
                + size(tail.depth()) + " deep, flanks " + tail.angle().text() + from(tail.side())
                + placed(tail.side(), tail.place()) + finish(tail.finish());
    }

    private String flats(Flats flats) {
        return flats.count() + (flats.count() == 1 ? " flat, " : " flats, ") + size(flats.across()) + " across, "
                + size(flats.length()) + " long" + from(flats.side()) + finish(flats.finish());
    }

    private String divided(Divided divided) {
        String length = divided.length() == null ? "" : ", " + size(divided.length()) + " long";
        return divided.count() + " " + word(divided.what()) + " on a circle of " + size(divided.diameter()) + ", "
                + width(divided) + size(divided.depth()) + " deep" + length + tooth(divided) + lines(divided)
                + from(divided.side())
                + placed(divided.side(), divided.axis())
                + finish(divided.finish());
    }

    private String width(Divided divided) {
        return divided.width() == null ? "" : size(divided.width()) + " wide, ";
    }

    private static String tooth(Divided divided) {
        Tooth tooth = divided.tooth();
        return tooth == null
                ? ""
                : ", module " + tooth.module().text() + ", "
                        + tooth.pressureAngle().text();
    }

    private String lines(Divided divided) {
        Marks marks = divided.marks();
        if (marks == null) {
            return "";
        }
        String middle = marks.middleEvery() == marks.longEvery()
                ? ""
                : ", every " + marks.middleEvery() + " " + size(marks.middleLength()) + " long";
        return ", every " + marks.longEvery() + " " + size(marks.longLength()) + " long" + middle;
    }

    /** What no note makes yet. */
    private String unwritten(Feature feature) {
        Side side = feature.side();
        String what = switch (feature.kind()) {
            case ARC_SLOT -> "Arc slot " + size(((ArcSlot) feature).width());
            case RADIUS_END -> "Radius end " + size(((RadiusEnd) feature).radius());
            case PROFILE -> ((ProfileCut) feature).inside() ? "Window" : "Outline";
            case WOODRUFF_SEAT -> "Seat for Woodruff key " + ((WoodruffSeat) feature).key();
            case INCLINED_FACE ->
                "Face inclined " + ((InclinedFace) feature).angle().text();
            case FACE, STEP, SLOT, POCKET, HOLE, KEYSEAT, T_SLOT, DOVETAIL, FLATS, CHAMFER, SLIT, DIVIDED ->
                word(feature.kind());
        };
        return what + from(side);
    }

    String depth(@Nullable Size depth) {
        return depth == null ? "through" : size(depth) + " deep";
    }

    private String length(@Nullable Size length, String whole) {
        return length == null ? whole : size(length) + " long";
    }

    private static String finish(@Nullable Typed<?> finish) {
        return finish == null ? "" : ", Ra " + finish.text();
    }

    private String placed(Side side, Placed place) {
        String turned = place.angle() == null ? "" : ", turned " + place.angle().text();
        boolean centred = place.from() == Datum.CENTRE
                && place.u().inside() == 0
                && place.v().inside() == 0;
        return (centred ? ", centred" : ", middle " + at(side, place.from(), new Pattern.Place(place.u(), place.v())))
                + turned;
    }

    /** A place with what it is counted from: {@code 12 from the left, 8 from the front}. */
    String at(Side side, Datum from, Pattern.Place place) {
        if (from == Datum.CENTRE) {
            return plain(place.u()) + ", " + plain(place.v()) + " from the middle";
        }
        boolean right = from == Datum.RIGHT_LOW || from == Datum.RIGHT_HIGH;
        boolean high = from == Datum.LEFT_HIGH || from == Datum.RIGHT_HIGH;
        return plain(place.u()) + " from the " + (right ? "right" : "left") + ", " + plain(place.v()) + " from the "
                + Corners.name(side, high ? Edge.HIGH : Edge.LOW);
    }

    String size(Size size) {
        boolean limits = size.toleranced();
        return plain(size.nominal())
                + (limits ? " (" + plain(size.least()) + " to " + plain(size.greatest()) + ")" : "");
    }

    String plain(@Nullable Typed<? extends Quantity> typed) {
        String text = typed == null ? "" : typed.text();
        return text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : text;
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Sentences of several features, one behind the other. */
    public String all(List<Feature> features) {
        return String.join("; ", features.stream().map(this::sentence).toList());
    }
}
