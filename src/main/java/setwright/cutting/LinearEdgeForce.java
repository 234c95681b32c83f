package setwright.cutting;

/**
 * A force that grows linearly with the chip from the force of the bare edge: Kc h + Ke, as cutting tests are written up.
 *
 * @param cutting parts in proportion to the chip, N/mm²
 * @param edge parts of the edge alone, N/mm
 */
public record LinearEdgeForce(EdgeForce.Parts cutting, EdgeForce.Parts edge) implements EdgeForce {
    @Override
    public Parts at(double chip) {
        return new Parts(
                cutting.tangential() * chip + edge.tangential(),
                cutting.normal() * chip + edge.normal(),
                cutting.along() * chip + edge.along());
    }

    @Override
    public Kind kind() {
        return Kind.LINEAR_EDGE;
    }
}
