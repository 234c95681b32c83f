package setwright.drawing;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Nearest;
import setwright.geometry.Point3;
import setwright.geometry.Stock;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.Laid;
import setwright.plan.part.OperationStage;
import setwright.plan.part.Seats;
import setwright.plan.part.SetUpStage;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

/** What is to be drawn: a set-up, and the tool of one of its operations where it was wound to. */
record Scene(Plan plan, DrawnSetUp setUp, SetUpStage stage, Optional<Wound> tool, boolean finished, Printing printing) {
    /** A tool at a place of its path. */
    record Wound(OperationStage on, Point3 point, int move, Optional<OperationRoom> room) {
        List<Nearest> near() {
            return room.map(OperationRoom::touches).orElse(List.of());
        }
    }

    /** Empty where the set-up could not be laid out. */
    static Optional<Scene> of(Plan plan, Place place, Printing printing) {
        Optional<SetUpStage> stage = plan.part().setUp(place.setUp());
        Optional<Wound> tool = plan.part()
                .operation(place.operation())
                .map(on -> new Wound(
                        on,
                        new Winding(on.path()).at(place.wind()),
                        new Winding(on.path()).move(place.wind()),
                        plan.room().operation(on.operation())));
        return plan.drawnUp()
                .setUp(place.setUp())
                .flatMap(
                        setUp -> stage.map(found -> new Scene(plan, setUp, found, tool, place.isFinished(), printing)));
    }

    /** How many parts stand side by side in the vise; 1 elsewhere. */
    int inARow() {
        return switch (setUp.holding().kind()) {
            case VISE -> Math.max(1, ((DrawnVise) setUp.holding()).parts().value());
            case TABLE, DEVICE -> 1;
        };
    }

    /** Whether the part is a bar that lies along the table, so that it is round from the left end. */
    boolean roundFromTheEnd() {
        return Seats.barAlong(plan.job().plan().blank(), Laid.of(setUp));
    }

    Heights heights() {
        return stage.heights();
    }

    Stock before() {
        return tool.map(wound -> wound.on().before()).orElseGet(this::bare);
    }

    Stock after() {
        return tool.map(wound -> wound.on().after()).orElseGet(this::bare);
    }

    /** Where no tool is at work, the part as it is put in or as it leaves. */
    private Stock bare() {
        List<OperationStage> all = stage.operations();
        return finished && !all.isEmpty() ? all.get(all.size() - 1).after() : stage.start();
    }

    /** A clearance with its unit, to a tenth of a millimetre or a thousandth of an inch. */
    String clearance(double mm) {
        return printing.of(Measure.LENGTH, mm, printing.units() == UnitSystem.METRIC ? 1 : 3);
    }

    String number(double mm) {
        return printing.number(Measure.LENGTH, mm);
    }

    /** A height without its unit, all to the same number of decimals. */
    String height(double mm) {
        String printed = printing.of(Measure.LENGTH, mm, printing.units() == UnitSystem.METRIC ? 2 : 3);
        return printed.substring(0, printed.length() - unit().length()).strip();
    }

    String unit() {
        return Measure.LENGTH.unit(printing.units()).symbol();
    }

    /** The lowest that the tool point goes in this set-up; the height of the bed where nothing goes below it. */
    double lowest() {
        return stage.operations().stream()
                .mapToDouble(OperationStage::lowest)
                .reduce(heights().bed(), Math::min);
    }
}
