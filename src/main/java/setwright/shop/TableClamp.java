package setwright.shop;

/** What a stud in a T-slot presses on the work with. */
public sealed interface TableClamp extends Owned permits Strap, EdgeClamp {
    /** How many pieces the set has. */
    int pieces();
}
