package setwright.job;

/** A holding as drawn up. */
public sealed interface DrawnHolding permits DrawnVise {
    Holding.Kind kind();
}
