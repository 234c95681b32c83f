package setwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Changes of what holds a part on the table or on a device, each {@code Job -> Job}. Straps that are only pencilled so far
 * are written down, every value still pencilled, before one of them is changed.
 */
public final class HoldingEdits {
    private HoldingEdits() {}

    /** Puts a value into a field of a holding on the table. */
    public static <T> Job set(DrawnUp drawnUp, String setUp, TableField<T> field, Plannable<T> value) {
        return Edits.withHolding(drawnUp, setUp, ink -> field.write(table(ink), value));
    }

    /** Puts a value into a field of a holding on a device. */
    public static <T> Job set(DrawnUp drawnUp, String setUp, DeviceField<T> field, Plannable<T> value) {
        return Edits.withHolding(drawnUp, setUp, ink -> field.write(device(ink, drawn(drawnUp, setUp)), value));
    }

    /** Puts a value into a field of a strap: ink, a measurement, or back to the pencil. */
    public static <T> Job set(DrawnUp drawnUp, StrapAt at, StrapField<T> field, Plannable<T> value) {
        if (straps(drawn(drawnUp, at.setUp()).holding()).stream()
                .noneMatch(drawn -> drawn.id().equals(at.strap()))) {
            throw new IllegalArgumentException("Set-up " + at.setUp() + " has no strap " + at.strap() + ".");
        }
        return withStraps(
                drawnUp,
                at.setUp(),
                all -> all.stream()
                        .map(each -> each.id().equals(at.strap()) ? field.write(each, value) : each)
                        .toList());
    }

    /** One strap more, everything about it pencilled. */
    public static Job addStrap(DrawnUp drawnUp, String setUp) {
        return withStraps(drawnUp, setUp, all -> {
            List<Strapping> more = new ArrayList<>(all);
            more.add(Strapping.pencilled(newId(all)));
            return more;
        });
    }

    /** One strap less; where it was the last, the pencil lays them anew. */
    public static Job deleteStrap(DrawnUp drawnUp, StrapAt at) {
        return withStraps(
                drawnUp,
                at.setUp(),
                all -> all.stream()
                        .filter(each -> !each.id().equals(at.strap()))
                        .toList());
    }

    /** A strap by its set-up and its id. */
    public record StrapAt(String setUp, String strap) {}

    /** The drawn-up straps of a holding; none in a vise. */
    public static List<DrawnStrap> straps(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> List.of();
            case TABLE -> ((DrawnTable) holding).straps();
            case DEVICE -> ((DrawnDevice) holding).straps();
        };
    }

    /** The straps that a holding has written down. */
    public static List<Strapping> straps(Holding holding) {
        return switch (holding.kind()) {
            case UNDECIDED, VISE -> List.of();
            case TABLE -> ((TableHolding) holding).straps();
            case DEVICE -> ((DeviceHolding) holding).straps();
        };
    }

    private static String newId(List<Strapping> all) {
        int number = all.size() + 1;
        while (has(all, "strap" + number)) {
            number++;
        }
        return "strap" + number;
    }

    private static boolean has(List<Strapping> all, String id) {
        return all.stream().anyMatch(strap -> strap.id().equals(id));
    }

    private static Job withStraps(DrawnUp drawnUp, String setUp, UnaryOperator<List<Strapping>> change) {
        DrawnSetUp drawn = drawn(drawnUp, setUp);
        Function<List<Strapping>, List<Strapping>> after =
                ink -> change.apply(ink.isEmpty() ? pencilled(drawn.holding()) : ink);
        return Edits.withHolding(drawnUp, setUp, ink -> switch (drawn.holding().kind()) {
            case TABLE -> {
                TableHolding table = table(ink);
                yield table.withStraps(after.apply(table.straps()));
            }
            case DEVICE -> {
                DeviceHolding device = device(ink, drawn);
                yield device.withStraps(after.apply(device.straps()));
            }
            case VISE -> throw new IllegalArgumentException("Set-up " + setUp + " is held in a vise, not by straps.");
        });
    }

    private static List<Strapping> pencilled(DrawnHolding holding) {
        return straps(holding).stream()
                .map(strap -> Strapping.pencilled(strap.id()))
                .toList();
    }

    private static TableHolding table(Holding ink) {
        return switch (ink.kind()) {
            case TABLE -> (TableHolding) ink;
            case UNDECIDED -> TableHolding.pencilled();
            case VISE, DEVICE -> throw new IllegalArgumentException("The part does not lie on the table itself.");
        };
    }

    private static DeviceHolding device(Holding ink, DrawnSetUp drawn) {
        return switch (ink.kind()) {
            case DEVICE -> (DeviceHolding) ink;
            case UNDECIDED -> DeviceHolding.pencilled(((DrawnDevice) drawn.holding()).on());
            case VISE, TABLE -> throw new IllegalArgumentException("Set-up " + drawn.id() + " has no device.");
        };
    }

    private static DrawnSetUp drawn(DrawnUp drawnUp, String setUp) {
        return drawnUp.setUp(setUp)
                .orElseThrow(() -> new IllegalArgumentException("The drawn-up job has no set-up " + setUp + "."));
    }
}
