package setwright.job;

/** Nobody has decided what holds the part: the pencil takes what suits. */
public record UndecidedHolding() implements Holding {
    @Override
    public Kind kind() {
        return Kind.UNDECIDED;
    }
}
