package setwright.plan.pencil;

import setwright.job.Operation;

/** What is left for the last pass, and whether one without infeed follows (common practice). */
final class LastPassPencil {
    /** Left on the radius of a bored hole, mm: enough to measure, cut half and still have a chip. */
    private static final double IN_A_BORE = 0.25;

    private LastPassPencil() {}

    static double finish(Operation.Kind kind) {
        return kind == Operation.Kind.BORE ? IN_A_BORE : 0;
    }

    static Operation.LastPass lastPass(Operation.Kind kind) {
        return kind == Operation.Kind.BORE ? Operation.LastPass.WITH_SPRING_PASS : Operation.LastPass.NONE;
    }
}
