package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.job.DeviceField;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.HoldingEdits;
import setwright.job.StrapField;
import setwright.job.TableField;
import setwright.job.TableHolding;
import setwright.job.ViseHolding;
import setwright.plan.part.StrapPlace;
import setwright.sheet.OnTable;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.Owned;
import setwright.shop.Parallels;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.Strap;
import setwright.shop.Stud;
import setwright.shop.VBlocks;

/** Which places the line of a part on the table or a device shows: what it lies on, and a row for every strap. */
record HoldingPlaces(Planned planned, DrawnSetUp setUp) {
    private static final double ANY = Double.NEGATIVE_INFINITY;

    private static final List<Place> TABLE = List.of(
            new HoldingPlace<>(
                    HoldingValue.table(TableField.SEAT), "Lies on", Sort.words(List.of(TableHolding.Seat.values()))),
            new HoldingPlace<>(
                    HoldingValue.table(TableField.PACKING),
                    "Packing",
                    Sort.row((planned, line) -> Stream.of(
                                    Stream.of(new Choice(ViseHolding.NONE, "none")),
                                    choices(planned, SetUpBlocks.class),
                                    choices(planned, Parallels.class))
                            .flatMap(one -> one)
                            .toList())),
            new HoldingPlace<>(HoldingValue.table(TableField.PACKING_HEIGHT), "Height", Sort.length(0)));

    private static final List<Place> TABLE_PLACE = List.of(
            new HoldingPlace<>(HoldingValue.table(TableField.X), "Right of the middle", Sort.length(ANY)),
            new HoldingPlace<>(HoldingValue.table(TableField.Y), "Behind the middle", Sort.length(ANY)));

    private static final List<Place> DEVICE_PLACE = List.of(
            new HoldingPlace<>(HoldingValue.device(DeviceField.X), "Right of the middle", Sort.length(ANY)),
            new HoldingPlace<>(HoldingValue.device(DeviceField.Y), "Behind the middle", Sort.length(ANY)));

    List<List<Place>> first() {
        List<List<Place>> rows = new ArrayList<>();
        switch (setUp.holding().kind()) {
            case VISE -> {}
            case TABLE -> rows.add(TABLE);
            case DEVICE -> rows.add(List.of(device(((DrawnDevice) setUp.holding()).on())));
        }
        straps().forEach(strap -> rows.add(pad(strap)));
        return rows;
    }

    List<List<Place>> more() {
        List<List<Place>> rows = new ArrayList<>();
        switch (setUp.holding().kind()) {
            case VISE -> {}
            case TABLE -> rows.add(TABLE_PLACE);
            case DEVICE -> rows.add(DEVICE_PLACE);
        }
        straps().forEach(strap -> rows.add(stud(strap)));
        return rows;
    }

    private List<DrawnStrap> straps() {
        return HoldingEdits.straps(setUp.holding());
    }

    private static Place device(DeviceHolding.On on) {
        return new HoldingPlace<>(
                HoldingValue.device(DeviceField.DEVICE),
                Words.capital(Words.of(on)),
                Sort.row((planned, line) -> choices(planned, rows(on)).toList()));
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

    private static Stream<Choice> choices(Planned planned, Class<? extends Owned> kind) {
        return planned.plan().rows().all(kind).stream()
                .map(row -> new Choice(row.id(), row.name(), row.kept().owned() == 0 ? "none owned" : ""));
    }

    private List<Place> pad(DrawnStrap strap) {
        String id = strap.id();
        return List.of(
                new HoldingPlace<>(
                        HoldingValue.strap(id, StrapField.STRAP),
                        name(strap),
                        Sort.row(
                                (planned, line) -> choices(planned, Strap.class).toList())),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.U), "Pad from the left", Sort.length(ANY)),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.V), "Pad from the front", Sort.length(ANY)),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.TOWARD), "Heel toward", Sort.ANGLE));
    }

    private List<Place> stud(DrawnStrap strap) {
        String id = strap.id();
        return List.of(
                new HoldingPlace<>(
                        HoldingValue.strap(id, StrapField.STUD),
                        "Stud, " + name(strap).toLowerCase(java.util.Locale.ROOT),
                        Sort.row((planned, line) -> choices(planned, Stud.class).toList())),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.PAD_TO_STUD), "Pad to stud", Sort.SIZE),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.STUD_TO_HEEL), "Stud to heel", Sort.SIZE),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.HEEL_OVER), "Heel over pad", Sort.length(ANY)),
                new HoldingPlace<>(HoldingValue.strap(id, StrapField.TORQUE), "Nut", Sort.TORQUE));
    }

    private String name(DrawnStrap strap) {
        return new OnTable(planned.plan(), setUp, planned.printing())
                .straps().stream()
                        .filter(place -> place.drawn().id().equals(strap.id()))
                        .map(StrapPlace::name)
                        .findFirst()
                        .map(Words::capital)
                        .orElse("Strap");
    }
}
