package setwright.file.shape;

import setwright.file.json.Place;
import setwright.file.json.Problems;

/** One check of a file: where its problems go, and who looks at every record on the way. */
public record Checking(Problems problems, Watch watch) {
    /** Looks at every record that a check passes, also at those that are not whole. */
    @FunctionalInterface
    public interface Watch {
        void pass(HalfRead record);
    }

    void problem(Place at, String path, String message) {
        problems.add(at, path, message);
    }
}
