package setwright.command;

import java.util.Optional;
import setwright.geometry.Nearest;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.InWords;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.hold.OperationHold;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.quantity.Value;
import setwright.shop.ShopRow;

/** The operations of a set-up in two tables: what is set, and what that asks of tool, machine and grip. */
final class OperationTables {
    private static final String INDENT = "  ";

    private final Plan plan;
    private final DrawnSetUp setUp;
    private final Printing printing;

    OperationTables(JobCheck.Worked check, DrawnSetUp setUp, Printing printing) {
        plan = check.plan();
        this.setUp = setUp;
        this.printing = printing;
    }

    String text() {
        String unit = Measure.LENGTH.unit(printing.units()).symbol();
        return settings() + "\n" + loads()
                + Wrapped.behind(
                        "  ",
                        "gives: how far the tool gives, " + unit
                                + "; grip, low: how many times the load the grip bears, as expected and at worst;"
                                + " clear: least clearance to the thing named, " + unit
                                + ", none within 200 mm left out.")
                + new LeavesTable(plan, setUp, printing).text(INDENT)
                + new OpinionTable(plan, setUp).text(INDENT);
    }

    private String settings() {
        String unit = Measure.LENGTH.unit(printing.units()).symbol();
        TextTable table = new TextTable(
                "op",
                "does",
                "~cutter",
                "~holder",
                ">out " + unit,
                ">rev/min",
                ">" + Measure.FEED.unit(printing.units()).symbol());
        for (DrawnOperation operation : setUp.operations()) {
            table.row(
                    operation.id(),
                    word(operation),
                    row(operation.cutter().value()),
                    row(operation.holder().value()),
                    printing.number(Measure.LENGTH, operation.stickOut().value().inside()),
                    speed(operation),
                    operation.speed().value().inside() > 0
                            ? printing.number(
                                    Measure.FEED, operation.feed().value().inside())
                            : "");
        }
        return table.text(INDENT);
    }

    private static String word(DrawnOperation operation) {
        return InWords.word(operation.kind());
    }

    private String speed(DrawnOperation operation) {
        double speed = operation.speed().value().inside();
        return speed > 0 ? printing.number(Measure.SPINDLE_SPEED, speed) : "by hand";
    }

    private String row(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse("nothing in the shop fits");
    }

    private String loads() {
        TextTable table = new TextTable(
                "op",
                ">cut " + Measure.LENGTH.unit(printing.units()).symbol(),
                ">kW",
                ">N·m",
                ">side N",
                ">push N",
                ">gives",
                ">grip",
                ">low",
                ">clear",
                "~to",
                ">min");
        setUp.operations().forEach(operation -> table.row(load(operation)));
        return table.text(INDENT);
    }

    private String[] load(DrawnOperation operation) {
        Optional<OperationCut> cut = plan.cut().operation(operation.id());
        Optional<OperationHold> hold = plan.hold().operation(operation.id());
        Optional<Nearest> nearest = plan.room().operation(operation.id()).map(OperationRoom::nearest);
        return new String[] {
            operation.id(),
            cut.map(this::passes).orElse(""),
            cut.map(OperationTables::power).orElse(""),
            number(Unit.N_M, cut.map(OperationCut::torque)),
            number(Unit.N, cut.map(OperationCut::peakForce)),
            number(Unit.N, cut.map(OperationCut::thrust)),
            cut.map(OperationCut::deflection).map(one -> fine(one.inside())).orElse(""),
            hold.map(one -> times(one.factor().expected())).orElse(""),
            hold.map(one -> times(one.factor().pessimistic())).orElse(""),
            nearest.map(one -> printing.number(Measure.LENGTH, one.clearance())).orElse(""),
            nearest.map(one -> one.body().name()).orElse(""),
            minutes(operation)
        };
    }

    private String passes(OperationCut cut) {
        String depth = printing.number(Measure.LENGTH, cut.depth());
        return cut.passes() == 1 ? depth : cut.passes() + " x " + depth;
    }

    private static String times(double factor) {
        return factor >= 99 ? "99+" : SetUpText.times(factor);
    }

    /** From the least to the most where published ways lie apart. */
    private static String power(OperationCut cut) {
        return cut.powerBand()
                .map(band -> kilowatt(band.low()) + " to " + kilowatt(band.high()))
                .orElseGet(() -> kilowatt(cut.power().inside()));
    }

    private static String kilowatt(double watt) {
        return new Printing(UnitSystem.METRIC).number(Unit.KW, watt);
    }

    private static String number(Unit unit, Optional<Value> value) {
        return value.map(one -> new Printing(UnitSystem.METRIC).number(unit, one.inside()))
                .orElse("");
    }

    private String fine(double mm) {
        String printed = printing.of(Measure.LENGTH, mm, printing.units() == UnitSystem.INCH ? 4 : 3);
        return printed.substring(0, printed.indexOf(' '));
    }

    private String minutes(DrawnOperation operation) {
        return plan.time()
                .operation(operation.id())
                .map(time -> new Printing(UnitSystem.METRIC).number(Measure.TIME, time.whole()))
                .orElse("");
    }
}
