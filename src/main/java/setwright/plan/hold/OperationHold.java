package setwright.plan.hold;

import setwright.holding.HoldFactor;
import setwright.quantity.Value;

/**
 * How well one joint of the chain from the part to the table is held against one operation.
 *
 * @param joint which of them
 * @param thing what would move: {@code part}, or the device as the shop calls it
 * @param factor how many times the cutting load the grip could bear, expected and pessimistic; 99 stands for 99 or more
 * @param firstToGive the contact that gives way first, in words; empty where nothing gives below 99
 * @param motion {@code slides}, {@code lifts}, {@code tips}, {@code turns}; empty where nothing moves
 * @param worked the expected factor with its working
 */
public record OperationHold(
        String setUp,
        String operation,
        Joint joint,
        String thing,
        HoldFactor factor,
        String firstToGive,
        String motion,
        Value worked) {}
