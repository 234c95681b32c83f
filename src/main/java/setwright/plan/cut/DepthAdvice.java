package setwright.plan.cut;

/**
 * How deep a pass may be at the speed and feed that are planned.
 *
 * @param most with every limit just kept, as far as the flutes reach
 * @param planned as the pencil takes it: something of every limit in hand, and no deeper than is usual
 */
public record DepthAdvice(PassDepth most, PassDepth planned) {}
