package setwright.plan.hold;

import setwright.holding.HoldFactor;
import setwright.quantity.Value;

/**
 * How well the part is held against one operation.
 *
 * @param factor how many times the cutting load the grip could bear, expected and pessimistic; 99 stands for 99 or more
 * @param firstToGive the contact that gives way first, in words; empty where nothing gives below 99
 * @param motion {@code slides}, {@code lifts}, {@code tips}, {@code turns}; empty where nothing moves
 * @param worked the expected factor with its working
 */
public record OperationHold(
        String setUp, String operation, HoldFactor factor, String firstToGive, String motion, Value worked) {}
