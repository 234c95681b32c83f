package setwright.drawing;

/** From a lower to a higher number, mm. */
record Span(double low, double high) {
    double length() {
        return high - low;
    }

    boolean holds(double value) {
        return value > low && value < high;
    }
}
