package setwright.shop;

import setwright.quantity.Stiffness;
import setwright.quantity.Stress;
import setwright.quantity.Typed;

/**
 * Coefficients of milling tests: the force on a millimetre of edge is K c times the chip and K e for the edge alone.
 *
 * @param tangentialChip Ktc, against the motion of the edge
 * @param radialChip Krc, square to the edge
 * @param axialChip Kac, along the axis
 * @param tangentialEdge Kte, N/mm
 * @param radialEdge Kre, N/mm
 * @param axialEdge Kae, N/mm
 * @param source the tests, with what cut
 */
public record LinearEdge(
        Typed<Stress> tangentialChip,
        Typed<Stress> radialChip,
        Typed<Stress> axialChip,
        Typed<Stiffness> tangentialEdge,
        Typed<Stiffness> radialEdge,
        Typed<Stiffness> axialEdge,
        String source) {}
