package setwright.plan.cut;

import setwright.quantity.Band;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/**
 * The same figure by another published way.
 *
 * @param ours what the plan goes by
 * @param other the same quantity by the other way, in the same unit
 */
public record SecondOpinion(Value ours, Worked other) {
    /** From this difference on both ends are shown (house rule: 20 %). */
    public static final double APART = 0.2;

    /** The other over ours, less one: 0.25 where it is a quarter more. */
    public double difference() {
        return other.inside() / ours.inside() - 1;
    }

    public boolean apart() {
        return Math.abs(difference()) > APART;
    }

    /** From the smaller to the larger, with ours in the middle of the record. */
    public Band band() {
        return new Band(
                Math.min(ours.inside(), other.inside()), ours.inside(), Math.max(ours.inside(), other.inside()));
    }
}
