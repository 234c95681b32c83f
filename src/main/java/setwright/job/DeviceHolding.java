package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * The part on a device that stands on the table, or in a vise.
 *
 * @param on what kind of device it is
 * @param device id of its row; two of a pair are one row
 * @param x middle of the device to the middle of the table, to the right
 * @param y middle of the device to the middle of the table, to the column
 * @param stance whether its face lies or stands
 * @param vise id of the vise that it stands in; {@link ViseHolding#NONE} where its own bolts hold it on the table
 * @param fastening what holds the part on it
 * @param gear id of the tape, glue, chuck, mandrel or board that does; {@link ViseHolding#NONE} where none is wanted
 * @param tail id of the tailstock at the far end; {@link ViseHolding#NONE} for none
 * @param located what brings each part to the same place
 * @param angle at which it is set (angle plate, rotary table, angle blocks)
 * @param straps that hold the part on it; none where it grips by itself or the pencil lays them
 * @param stops against which the part is pushed
 */
public record DeviceHolding(
        On on,
        Plannable<String> device,
        Plannable<Typed<Length>> x,
        Plannable<Typed<Length>> y,
        Plannable<Stance> stance,
        Plannable<String> vise,
        Plannable<Fastening> fastening,
        Plannable<String> gear,
        Plannable<String> tail,
        Plannable<Located> located,
        @Nullable Typed<Angle> angle,
        List<Strapping> straps,
        List<StopAt> stops)
        implements Holding {
    public DeviceHolding {
        straps = List.copyOf(straps);
        stops = List.copyOf(stops);
    }

    /** As its kind usually stands and holds. */
    public DeviceHolding(
            On on,
            Plannable<String> device,
            Plannable<Typed<Length>> x,
            Plannable<Typed<Length>> y,
            @Nullable Typed<Angle> angle,
            List<Strapping> straps,
            List<StopAt> stops) {
        this(
                on,
                device,
                x,
                y,
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                angle,
                straps,
                stops);
    }

    public static DeviceHolding pencilled(On on) {
        return new DeviceHolding(
                on, Plannable.pencilled(), Plannable.pencilled(), Plannable.pencilled(), null, List.of(), List.of());
    }

    /** The kinds of device. */
    public enum On {
        V_BLOCKS,
        ANGLE_PLATE,
        FIXTURE_PLATE,
        SET_UP_BLOCKS,
        COLLET_BLOCK,
        ROTARY_TABLE,
        DIVIDING_HEAD,
        MAGNETIC_CHUCK
    }

    /** How a device stands that can do both. */
    public enum Stance {
        FLAT,
        UPRIGHT
    }

    /** What holds the part on its device. */
    public enum Fastening {
        /** Straps or clamps over it. */
        STRAPS,
        /** Screws or bolts through its own holes, into the device or through it. */
        BOLTS,
        /** Double-sided tape under all of it. */
        TAPE,
        /** Glue under all of it. */
        GLUE,
        /** A board over it, strapped down with it. */
        SANDWICH,
        CHUCK,
        COLLET,
        MANDREL,
        BETWEEN_CENTRES,
        MAGNET
    }

    /** What brings each part of a batch to the same place. */
    public enum Located {
        /** Pushed against stops, or set by its edges. */
        EDGES,
        DOWELS,
        POCKET,
        /** A plug, chuck, collet or mandrel in or round its middle. */
        CENTRE
    }

    public DeviceHolding withStraps(List<Strapping> changed) {
        return with(changed, stops);
    }

    public DeviceHolding withStops(List<StopAt> changed) {
        return with(straps, changed);
    }

    private DeviceHolding with(List<Strapping> strapped, List<StopAt> stopped) {
        return new DeviceHolding(
                on, device, x, y, stance, vise, fastening, gear, tail, located, angle, strapped, stopped);
    }

    @Override
    public Kind kind() {
        return Kind.DEVICE;
    }
}
