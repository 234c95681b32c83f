package setwright.plan.choose;

import java.util.List;

/** Holders ranked for every operation. */
public record ChoicePlan(List<OperationChoice> operations) {
    public ChoicePlan {
        operations = List.copyOf(operations);
    }

    /** Every holder of the shop for one operation's cutter, kept ones first. */
    public record OperationChoice(String operation, List<HolderRank.Candidate> ranked) {
        public OperationChoice {
            ranked = List.copyOf(ranked);
        }
    }
}
