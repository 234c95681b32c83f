package setwright.quantity.fit;

/** A hole and a shaft of one nominal size; clearances in millimetres, negative where they interfere. */
public record Fit(Limits hole, Limits shaft) {
    public Fit {
        if (!hole.isHole() || shaft.isHole()) {
            throw new IllegalArgumentException("A fit is a hole class (capital) over a shaft class (small letter), not "
                    + hole.toleranceClass() + "/" + shaft.toleranceClass() + ".");
        }
    }

    public double largestClearance() {
        return hole.greatest() - shaft.least();
    }

    public double smallestClearance() {
        return hole.least() - shaft.greatest();
    }
}
