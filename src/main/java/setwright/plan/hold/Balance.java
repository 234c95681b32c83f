package setwright.plan.hold;

import java.util.List;
import java.util.function.Function;
import setwright.holding.Outlook;
import setwright.holding.balance.Answer;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Value;

/**
 * The balance of a part in its holding, made once for a set-up and asked for every operation. Places from the part's left
 * front bottom corner.
 *
 * @param given what presses, for the working
 * @param grips that both are made of
 */
record Balance(FrictionBalance expected, FrictionBalance pessimistic, Value given, Function<Outlook, Grip> grips) {
    /** Standard acceleration of fall, m/s²: newtons from kilograms. */
    static final double GRAVITY = 9.80665;

    static Balance of(Function<Outlook, Grip> grips, Value given) {
        return new Balance(
                new FrictionBalance(grips.apply(Outlook.EXPECTED)),
                new FrictionBalance(grips.apply(Outlook.PESSIMISTIC)),
                given,
                grips);
    }

    /** The same with everything that presses that many times as hard. */
    Balance scaled(double times) {
        return of(outlook -> scaled(grips.apply(outlook), times), given);
    }

    private static Grip scaled(Grip grip, double times) {
        return new Grip(grip.contacts().stream().map(one -> one.scaled(times)).toList(), grip.ownWeight());
    }

    /** The part's own weight as it is put in. */
    static Load weight(SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        return Load.weight(
                GRAVITY * stage.start().bound() * rows.material().density().inside(),
                new Vector(heights.length() / 2, heights.depth() / 2, (heights.startTop() - heights.partBottom()) / 2));
    }

    Answer answer(Outlook outlook, List<Load> loads) {
        return switch (outlook) {
            case EXPECTED -> expected.answer(loads);
            case PESSIMISTIC -> pessimistic.answer(loads);
        };
    }
}
