package setwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The least clearance of each section of the tool so far. */
final class Tally {
    private final List<Section> sections;
    private final double[] least;
    private final @Nullable Tightest[] best;

    Tally(List<Section> sections) {
        this.sections = sections;
        least = new double[sections.size()];
        Arrays.fill(least, Clearance.REACH);
        best = new Tightest[sections.size()];
    }

    int size() {
        return least.length;
    }

    Section section(int i) {
        return sections.get(i);
    }

    double least(int i) {
        return least[i];
    }

    void keep(int i, double clearance, Tightest place) {
        least[i] = clearance;
        best[i] = place;
    }

    /** Compares the boxes alone: cheap, and never too pessimistic. */
    boolean mayBeNearer(Box target, Stretch stretch) {
        double aside = target.plan().gap(stretch.plan().box());
        for (int i = 0; i < least.length; i++) {
            if (mayBeNearer(i, target, stretch, aside)) {
                return true;
            }
        }
        return false;
    }

    boolean mayBeNearer(int i, Box target, Stretch stretch, double aside) {
        Profile profile = sections.get(i).profile();
        double side = Math.max(0, aside - profile.greatestRadius());
        double below = stretch.zLow() + profile.zLow() - target.zHigh();
        double above = target.zLow() - stretch.zHigh() - profile.zHigh();
        double height = Math.max(0, Math.max(below, above));
        boolean meets = side == 0 && height == 0;
        return meets || side * side + height * height < least[i] * least[i];
    }

    List<Nearest> found(Body body) {
        List<Nearest> found = new ArrayList<>();
        for (int i = 0; i < best.length; i++) {
            Tightest place = best[i];
            if (place != null) {
                found.add(place.nearest(sections.get(i), body));
            }
        }
        return found;
    }
}
