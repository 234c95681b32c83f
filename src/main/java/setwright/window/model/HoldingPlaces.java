package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.HoldingEdits;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.job.TableField;
import setwright.job.TableHolding;
import setwright.job.ViseHolding;
import setwright.plan.part.StrapPlace;
import setwright.sheet.OnTable;
import setwright.shop.Jack;
import setwright.shop.Owned;
import setwright.shop.Parallels;
import setwright.shop.SetUpBlocks;
import setwright.shop.Stud;
import setwright.shop.TableClamp;
import setwright.shop.Washer;

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
                                    choices(planned, Parallels.class),
                                    choices(planned, Jack.class))
                            .flatMap(one -> one)
                            .toList())),
            new HoldingPlace<>(HoldingValue.table(TableField.PACKING_HEIGHT), "Height", Sort.length(0)));

    private static final List<Place> TABLE_PLACE = List.of(
            new HoldingPlace<>(HoldingValue.table(TableField.X), "Right of the middle", Sort.length(ANY)),
            new HoldingPlace<>(HoldingValue.table(TableField.Y), "Behind the middle", Sort.length(ANY)));

    List<List<Place>> first() {
        List<List<Place>> rows = new ArrayList<>();
        switch (setUp.holding().kind()) {
            case VISE -> {}
            case TABLE -> rows.add(TABLE);
            case DEVICE -> rows.add(new DevicePlaces((DrawnDevice) setUp.holding()).first());
        }
        straps().forEach(strap -> rows.add(pad(strap)));
        return rows;
    }

    List<List<Place>> more() {
        List<List<Place>> rows = new ArrayList<>();
        switch (setUp.holding().kind()) {
            case VISE -> {}
            case TABLE -> rows.add(TABLE_PLACE);
            case DEVICE -> rows.addAll(new DevicePlaces((DrawnDevice) setUp.holding()).more());
        }
        straps().forEach(strap -> {
            rows.add(stud(strap));
            rows.add(pressing(strap));
        });
        return rows;
    }

    private List<DrawnStrap> straps() {
        return HoldingEdits.straps(setUp.holding());
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
                        Sort.row((planned, line) -> orNone(planned, "none: a bolt", TableClamp.class))),
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

    /** What presses, what lies under it and what under its nut. */
    private static List<Place> pressing(DrawnStrap strap) {
        String id = strap.id();
        return List.of(
                new HoldingPlace<>(
                        HoldingValue.strap(id, StrapField.BY),
                        "Presses by",
                        Sort.words(List.of(Strapping.By.values()))),
                new HoldingPlace<>(
                        HoldingValue.strap(id, StrapField.PAD),
                        "Under the pad",
                        Sort.words(List.of(Strapping.Pad.values()))),
                new HoldingPlace<>(
                        HoldingValue.strap(id, StrapField.WASHER),
                        "Washer",
                        Sort.row((planned, line) -> orNone(planned, "a plain one", Washer.class))));
    }

    private static List<Choice> orNone(Planned planned, String none, Class<? extends Owned> kind) {
        return Stream.concat(Stream.of(new Choice(ViseHolding.NONE, none)), choices(planned, kind))
                .toList();
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
