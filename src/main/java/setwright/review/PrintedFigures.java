package setwright.review;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Nearest;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SurfaceLeft;
import setwright.plan.hold.OperationHold;
import setwright.plan.place.FeatureBudget;
import setwright.plan.room.OperationRoom;
import setwright.plan.room.SetUpRoom;
import setwright.plan.time.TimePlan;
import setwright.quantity.Band;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** The figures of a plan as printed, a line each. */
final class PrintedFigures {
    private final Printing printing;
    private final List<String> lines = new ArrayList<>();

    private PrintedFigures(Printing printing) {
        this.printing = printing;
    }

    static List<String> of(Plan plan) {
        PrintedFigures figures =
                new PrintedFigures(new Printing(plan.job().plan().units()));
        plan.cut().operations().forEach(figures::cut);
        plan.hold().operations().forEach(figures::hold);
        plan.room().setUps().forEach(figures::room);
        plan.place().budgets().forEach(figures::budget);
        figures.time(plan.time());
        return List.copyOf(figures.lines);
    }

    private void cut(OperationCut cut) {
        String at = cut.operation();
        value(at, cut.speed());
        value(at, cut.wantedSpeed());
        value(at, cut.feed());
        value(at, cut.feedPerEdge());
        value(at, cut.secondsPerTurn());
        figure(at, "depth", Unit.MM, cut.depth());
        figure(at, "width", Unit.MM, cut.width());
        line(at, "passes", String.valueOf(cut.passes()));
        value(at, cut.power());
        value(at, cut.torque());
        value(at, cut.peakForce());
        value(at, cut.thrust());
        value(at, cut.deflection());
        band(at, "deflection", cut.deflectionBand());
        value(at, cut.leaves());
        cut.surfaces().forEach(left -> left(at, left));
        cut.work().forEach(gives -> {
            value(at, gives.worked());
            band(at, gives.worked().name(), gives.band());
        });
        cut.limits().forEach(limit -> line(at, limit.name().words(), printing.factor(limit.used())));
    }

    private void left(String at, SurfaceLeft left) {
        String what = "left on the " + left.surface().words();
        figure(at, what, Unit.MM, left.inside());
        band(at, what, left.band());
    }

    private void hold(OperationHold hold) {
        line(hold.operation(), "held", printing.factor(hold.factor().expected()));
        line(
                hold.operation(),
                "held on a bad day",
                printing.factor(hold.factor().pessimistic()));
        line(hold.operation(), "gives", hold.motion() + " " + hold.firstToGive());
    }

    private void room(SetUpRoom room) {
        room.levels().forEach(level -> figure(room.setUp(), level.name(), Unit.MM, level.height()));
        line(room.setUp(), "touch-offs", String.valueOf(room.touchOffs()));
        room.operations().forEach(this::room);
    }

    private void room(OperationRoom room) {
        String at = room.operation();
        Nearest nearest = room.nearest();
        if (nearest != null) {
            String pair = nearest.section().name() + " to " + nearest.body().name();
            figure(at, pair, Unit.MM, nearest.clearance());
        }
        figure(at, "knee height", Unit.MM, room.kneeHeight());
        figure(at, "lowest knee", Unit.MM, room.kneeLow());
        figure(at, "highest knee", Unit.MM, room.kneeHigh());
        figure(at, "lowest nose", Unit.MM, room.noseLowest());
        value(at, room.quillUsed());
        if (!room.change().stays()) {
            figure(
                    at,
                    "room to change " + room.change().where(),
                    Unit.MM,
                    room.change().room());
        }
    }

    private void budget(FeatureBudget budget) {
        value(budget.subject(), budget.worstCase());
        value(budget.subject(), budget.rss());
        figure(budget.subject(), "allowed", Unit.MM, budget.limit());
    }

    private void time(TimePlan time) {
        time.operations().forEach(one -> figure(one.operation(), "time", Unit.SECOND, one.whole()));
        figure("", "set-up time", Unit.SECOND, time.setUp());
        figure("", "time each", Unit.SECOND, time.each());
        figure("", "time of the batch", Unit.SECOND, time.batch());
    }

    private void value(String at, @Nullable Value value) {
        if (value != null) {
            figure(at, value.name(), value.unit(), value.inside());
        }
    }

    private void band(String at, String what, @Nullable Band band) {
        if (band != null) {
            figure(at, "least " + what, Unit.MM, band.low());
            figure(at, "most " + what, Unit.MM, band.high());
        }
    }

    private void figure(String at, String what, Unit unit, double inside) {
        line(at, what, Texts.figure(printing, unit, inside));
    }

    private void line(String at, String what, String text) {
        lines.add(at + " " + what + ": " + text);
    }
}
