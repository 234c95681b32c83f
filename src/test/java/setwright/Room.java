package setwright;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The rooms of the house, and which others each may use. Every room stands below those that it uses. */
enum Room {
    QUANTITY,
    GEOMETRY(QUANTITY),
    SHOP(QUANTITY),
    CUTTING(QUANTITY, SHOP),
    RIGIDITY(QUANTITY, SHOP, CUTTING),
    HOLDING(QUANTITY, SHOP, GEOMETRY, RIGIDITY),
    REACH(QUANTITY, SHOP, GEOMETRY),
    LOCATION(QUANTITY, SHOP),
    BATCH(QUANTITY, SHOP),
    JOB(QUANTITY, SHOP, GEOMETRY),
    PLAN(QUANTITY, GEOMETRY, SHOP, CUTTING, RIGIDITY, HOLDING, REACH, LOCATION, BATCH, JOB),
    CAUTION(withAllBelow(PLAN)),
    DRAWING(withAllBelow(CAUTION)),
    FILE(QUANTITY, JOB, SHOP, GEOMETRY),
    REVIEW(withAllBelow(CAUTION, FILE)),
    SHEET(withAllBelow(DRAWING, REVIEW)),
    PAINT(withAllBelow(DRAWING, SHEET)),
    FIGURES(QUANTITY, GEOMETRY, CUTTING, RIGIDITY, HOLDING, REACH, LOCATION, BATCH, SHOP, FILE),
    COMMAND(withAllBelow(PAINT, FIGURES)),
    WINDOW(withAllBelow(PAINT, FIGURES));

    /** Rooms that talk to people or machines; all others only work things out. */
    private static final EnumSet<Room> OUTER = EnumSet.of(PAINT, COMMAND, WINDOW);

    private final List<Room> mayUse;

    Room(Room... mayUse) {
        this.mayUse = List.of(mayUse);
    }

    private static Room[] withAllBelow(Room... rooms) {
        Set<Room> all = new LinkedHashSet<>(List.of(rooms));
        for (Room room : rooms) {
            all.addAll(room.mayUse);
        }
        return all.toArray(Room[]::new);
    }

    static String[] core() {
        return packages(EnumSet.complementOf(OUTER));
    }

    static String[] packages(Room... rooms) {
        return packages(List.of(rooms));
    }

    private static String[] packages(Collection<Room> rooms) {
        return rooms.stream().map(Room::classes).toArray(String[]::new);
    }

    /** The room's package with its sub-rooms, as ArchUnit writes it. */
    String classes() {
        return "setwright." + name().toLowerCase(Locale.ROOT) + "..";
    }

    String[] classesItMayUse() {
        List<Room> all = new ArrayList<>(mayUse);
        all.add(this);
        return packages(all);
    }
}
