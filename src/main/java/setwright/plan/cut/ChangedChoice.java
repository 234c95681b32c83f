package setwright.plan.cut;

import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Standing;
import setwright.plan.cut.LimitRule.Choice;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.Typed;
import setwright.quantity.Unit;

/** An operation with one of its choices tried otherwise. */
record ChangedChoice(DrawnOperation operation) {
    DrawnOperation to(Choice choice, double value) {
        return operation.taking(
                length(choice == Choice.STICK_OUT, operation.stickOut(), value),
                length(choice == Choice.DEPTH, operation.depth(), value),
                length(choice == Choice.WIDTH, operation.width(), value),
                operation.speed(),
                choice == Choice.FEED ? feed(value) : operation.feed());
    }

    private static Drawn<Typed<Length>> length(boolean changed, Drawn<Typed<Length>> now, double value) {
        return changed ? new Drawn<>(new Typed<>(value + " mm", new Length(value)), Standing.PENCILLED) : now;
    }

    private static Drawn<Typed<Speed>> feed(double value) {
        String text = Unit.MM_PER_MIN.fromInside(value) + " mm/min";
        return new Drawn<>(new Typed<>(text, new Speed(value)), Standing.PENCILLED);
    }
}
