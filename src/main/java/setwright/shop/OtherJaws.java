package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Jaws that are screwed onto a vise in place of its own; a pair counts as one. */
public sealed interface OtherJaws extends Owned permits SoftJaws, VeeJaws {
    /** Width of the vise that they fit. */
    Typed<Length> jawWidth();

    Typed<Length> height();

    /** Of one jaw, uncut. */
    Typed<Length> thickness();
}
