package setwright.location.key;

import setwright.quantity.Source;

/**
 * The parallel key of a range of shafts; millimetres.
 *
 * @param over the shaft is larger than that
 * @param to up to and including that
 * @param depth of the seat in the shaft from the standard's own datum
 */
public record KeyRow(double over, double to, double width, double height, double depth, Source source) {}
