package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * Where a tool can be got in and out, the quill being in: every place with its room and what is needed there.
 *
 * @param places in the order in which they are tried, the cheapest first
 */
public record ToolChange(List<Room> places) {
    public static final Formula ROOM = new Formula(
            "r = H - P - t",
            symbol("r", "room below the tool point", Unit.MM, -1000, 1000),
            List.of(
                    symbol("H", "height of the nose, quill in", Unit.MM, 0, 600),
                    symbol("P", "projection of the tool below the nose", Unit.MM, 0, 300),
                    symbol("t", "highest thing below", Unit.MM, 0, 400)),
            v -> room(v[0], v[1], v[2]),
            Source.of("computed: stack-up from table to nose"));

    /** Heights are typed to a tenth of a millimetre or a thousandth of an inch. */
    private static final double ROUNDING = 0.05;

    /** A place to change the tool, in the order of what it costs. */
    public enum Place {
        OVER_THE_HOLE("over the hole"),
        TABLE_RUN_ASIDE("with the table run aside"),
        KNEE_DOWN("with the knee down and back"),
        KNEE_DOWN_AND_ASIDE("with the knee down and the table run aside");

        private final String words;

        Place(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether the knee moves, so that the depth has to be found again by its dial or ruler. */
        public boolean movesKnee() {
            return this == KNEE_DOWN || this == KNEE_DOWN_AND_ASIDE;
        }
    }

    /**
     * The room at a place; it does where there is at least what is needed.
     *
     * @param lost what the way there and back may lose
     */
    public record Room(Place place, double room, double needed, Lost lost) {
        /** A place that loses nothing. */
        public Room(Place place, double room, double needed) {
            this(place, room, needed, Lost.NOTHING);
        }

        public boolean does() {
            return room >= needed - ROUNDING;
        }

        public double margin() {
            return room - needed;
        }
    }

    /**
     * What slides and knee do not come back to, mm; nought where they move before the next cut in any case.
     *
     * @param place in X and Y
     * @param depth in Z
     */
    public record Lost(double place, double depth) {
        public static final Lost NOTHING = new Lost(0, 0);

        Lost and(Lost other) {
            return new Lost(place + other.place, depth + other.depth);
        }

        public double sum() {
            return place + depth;
        }
    }

    /**
     * The question; heights over the table.
     *
     * @param nose height of the nose with the quill in, at the knee height of the operation
     * @param projection from the nose down to the tool point
     * @param highestBelow the highest thing below the tool over the hole
     * @param highestAside the highest thing below the tool with the table run aside: vise or table
     * @param dropOut how far the tool has to come down
     * @param aside what running the table aside and back loses
     * @param knee what winding the knee down and up again loses
     */
    public record Asked(
            double nose,
            double projection,
            double highestBelow,
            double highestAside,
            DropOut dropOut,
            Lost aside,
            Lost knee) {
        /** Where table and knee move between the two operations in any case. */
        public Asked(double nose, double projection, double highestBelow, double highestAside, DropOut dropOut) {
            this(nose, projection, highestBelow, highestAside, dropOut, Lost.NOTHING, Lost.NOTHING);
        }
    }

    public ToolChange {
        places = List.copyOf(places);
    }

    public static double room(double nose, double projection, double highest) {
        return nose - projection - highest;
    }

    public static ToolChange of(Asked asked, NoseRange machine) {
        double down = Math.max(asked.nose(), machine.highest());
        return new ToolChange(List.of(
                at(Place.OVER_THE_HOLE, asked, asked.nose(), asked.highestBelow()),
                at(Place.TABLE_RUN_ASIDE, asked, asked.nose(), asked.highestAside()),
                at(Place.KNEE_DOWN, asked, down, asked.highestBelow()),
                at(Place.KNEE_DOWN_AND_ASIDE, asked, down, asked.highestAside())));
    }

    private static Room at(Place place, Asked asked, double nose, double highest) {
        return new Room(
                place, room(nose, asked.projection(), highest), asked.dropOut().length(), lost(place, asked));
    }

    private static Lost lost(Place place, Asked asked) {
        return switch (place) {
            case OVER_THE_HOLE -> Lost.NOTHING;
            case TABLE_RUN_ASIDE -> asked.aside();
            case KNEE_DOWN -> asked.knee();
            case KNEE_DOWN_AND_ASIDE -> asked.aside().and(asked.knee());
        };
    }

    /** The lowest nose height at which the tool can be changed over the hole. */
    public static double changeFrom(double projection, double highestBelow, DropOut dropOut) {
        return highestBelow + projection + dropOut.length();
    }

    /** Of the places that do the one that loses least, then the nearest; empty where the tool cannot be got in or out. */
    public Optional<Room> cheapest() {
        return places.stream()
                .filter(Room::does)
                .min(Comparator.comparingDouble(one -> one.lost().sum()));
    }

    /** The place with the most room, which says how much is missing where none does. */
    public Room roomiest() {
        return places.stream()
                .reduce((one, other) -> other.margin() > one.margin() ? other : one)
                .orElseThrow();
    }
}
