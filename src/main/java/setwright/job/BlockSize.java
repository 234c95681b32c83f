package setwright.job;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** The three sizes of a block. */
public enum BlockSize {
    LENGTH(Block::length),
    DEPTH(Block::depth),
    HEIGHT(Block::height);

    private final Function<Block, Size> of;

    BlockSize(Function<Block, Size> of) {
        this.of = of;
    }

    public Size of(Block block) {
        return of.apply(block);
    }

    /** The block with another nominal size; what it may be over or under is kept. */
    public Block with(Block block, Typed<Length> nominal, UnitSystem units) {
        Size before = of(block);
        double step = nominal.inside() - before.nominal().inside();
        Size changed = new Size(nominal, moved(before.least(), step, units), moved(before.greatest(), step, units));
        return new Block(
                this == LENGTH ? changed : block.length(),
                this == DEPTH ? changed : block.depth(),
                this == HEIGHT ? changed : block.height(),
                block.faces());
    }

    private static @Nullable Typed<Length> moved(@Nullable Typed<Length> limit, double step, UnitSystem units) {
        return limit == null
                ? null
                : new Reading(units).length(new Printing(units).of(Measure.LENGTH, limit.inside() + step));
    }
}
