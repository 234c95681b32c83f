package setwright.plan.hold;

import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

/** How hard a set-up may be held, in words: {@code grip from 4.1 kN for o1 to 25 kN: the vise gives no more}. */
public record GripRangeWords(GripRange range, Printing printing) {
    public String text() {
        String what = range.by() == GripRange.By.VISE ? "grip " : "torque at the nuts ";
        String most = said(range.most()) + ": " + range.because();
        if (!Double.isFinite(range.least())) {
            return what + "none holds " + range.asks() + " with the factors asked; at most " + most;
        }
        String least = said(range.least()) + " for " + range.asks();
        return range.crosses()
                ? what + "wants " + least + ", and stands " + most
                : what + "from " + least + " to " + most;
    }

    /** Three figures are more than a hand feels. */
    private String said(double value) {
        return switch (range.by()) {
            case VISE -> force(value);
            case NUT -> printing.of(Measure.TORQUE, value, 0);
        };
    }

    private String force(double newtons) {
        boolean metric = printing.units() == UnitSystem.METRIC;
        return metric && newtons >= 1000
                ? printing.factor(Unit.KN.fromInside(newtons)) + " kN"
                : printing.of(Measure.FORCE, newtons);
    }
}
