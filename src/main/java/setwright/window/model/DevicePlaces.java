package setwright.window.model;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import setwright.job.DeviceField;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.ViseHolding;
import setwright.shop.Adhesive;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.Mandrel;
import setwright.shop.Owned;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.Tailstock;
import setwright.shop.VBlocks;
import setwright.shop.Vise;
import setwright.shop.WorkChuck;

/** Which places the line of a part on a device shows: the device and what holds the part on it, then how it stands. */
record DevicePlaces(DrawnDevice holding) {
    private static final double ANY = Double.NEGATIVE_INFINITY;

    private static final Place FASTENING = new HoldingPlace<>(
            HoldingValue.device(DeviceField.FASTENING),
            "Held by",
            Sort.words(List.of(DeviceHolding.Fastening.values())));

    private static final Place LOCATED = new HoldingPlace<>(
            HoldingValue.device(DeviceField.LOCATED),
            "Located by",
            Sort.words(List.of(DeviceHolding.Located.values())));

    private static final List<Place> PLACE = List.of(
            new HoldingPlace<>(HoldingValue.device(DeviceField.X), "Right of the middle", Sort.length(ANY)),
            new HoldingPlace<>(HoldingValue.device(DeviceField.Y), "Behind the middle", Sort.length(ANY)));

    private static final List<Place> STANDS = List.of(
            new HoldingPlace<>(
                    HoldingValue.device(DeviceField.STANCE),
                    "Stands",
                    Sort.words(List.of(DeviceHolding.Stance.values()))),
            new HoldingPlace<>(
                    HoldingValue.device(DeviceField.VISE),
                    "In the vise",
                    Sort.row((planned, line) -> orNone(choices(planned, Vise.class, row -> true)))),
            new HoldingPlace<>(
                    HoldingValue.device(DeviceField.TAIL),
                    "Tailstock",
                    Sort.row((planned, line) -> orNone(choices(planned, Tailstock.class, row -> true)))));

    List<Place> first() {
        return List.of(device(), FASTENING, gear(), LOCATED);
    }

    List<List<Place>> more() {
        return List.of(PLACE, STANDS);
    }

    private Place device() {
        return new HoldingPlace<>(
                HoldingValue.device(DeviceField.DEVICE),
                Words.capital(Words.of(holding.on())),
                Sort.row((planned, line) ->
                        choices(planned, rows(holding.on()), row -> true).toList()));
    }

    private Place gear() {
        return new HoldingPlace<>(
                HoldingValue.device(DeviceField.GEAR),
                "With",
                Sort.row((planned, line) ->
                        orNone(gears(planned, holding.fastening().value()))));
    }

    private static Class<? extends Owned> rows(DeviceHolding.On on) {
        return switch (on) {
            case V_BLOCKS -> VBlocks.class;
            case ANGLE_PLATE -> AnglePlate.class;
            case FIXTURE_PLATE -> FixturePlate.class;
            case SET_UP_BLOCKS -> SetUpBlocks.class;
            case COLLET_BLOCK -> ColletBlock.class;
            case ROTARY_TABLE -> RotaryTable.class;
            case DIVIDING_HEAD -> DividingHead.class;
            case MAGNETIC_CHUCK -> MagneticChuck.class;
        };
    }

    private static Stream<Choice> gears(Planned planned, DeviceHolding.Fastening fastening) {
        return switch (fastening) {
            case STRAPS, BOLTS, COLLET, BETWEEN_CENTRES, MAGNET -> Stream.of();
            case TAPE -> choices(planned, Adhesive.class, row -> row.form() == Adhesive.Form.TAPE);
            case GLUE -> choices(planned, Adhesive.class, row -> row.form() == Adhesive.Form.GLUE);
            case SANDWICH ->
                choices(planned, FixturePlate.class, row -> row.madeOf().board());
            case CHUCK -> choices(planned, WorkChuck.class, row -> true);
            case MANDREL -> choices(planned, Mandrel.class, row -> true);
        };
    }

    private static List<Choice> orNone(Stream<Choice> choices) {
        return Stream.concat(Stream.of(new Choice(ViseHolding.NONE, "none")), choices)
                .toList();
    }

    private static <T extends Owned> Stream<Choice> choices(Planned planned, Class<T> kind, Predicate<T> fits) {
        return planned.plan().rows().all(kind).stream()
                .filter(fits)
                .map(row -> new Choice(row.id(), row.name(), row.kept().owned() == 0 ? "none owned" : ""));
    }
}
