package setwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Gap;
import setwright.geometry.plane.Straight;

/** Finds the least clearance of each section of the tool with one body. */
final class Search {
    /** The height in mm over which a stretch of a slanted move counts as one. */
    static final double STEP = 0.01;

    private final Body body;
    private final List<Section> sections;
    private final double[] least;
    private final @Nullable Candidate[] best;

    Search(Body body, List<Section> sections) {
        this.body = body;
        this.sections = sections;
        least = new double[sections.size()];
        Arrays.fill(least, Clearance.REACH);
        best = new Candidate[sections.size()];
    }

    void along(List<Move> moves) {
        for (Single solid : body.solid().parts()) {
            Target target = Target.of(solid);
            if (target != null) {
                for (int i = 0; i < moves.size(); i++) {
                    Move move = moves.get(i);
                    along(target, new Stretch(i, move.plan(), move.zFrom(), move.zTo()));
                }
            }
        }
    }

    List<Nearest> found() {
        List<Nearest> found = new ArrayList<>();
        for (int i = 0; i < best.length; i++) {
            Candidate candidate = best[i];
            if (candidate != null) {
                found.add(candidate.nearest(sections.get(i), body));
            }
        }
        return found;
    }

    private void along(Target target, Stretch stretch) {
        double aside = target.box().plan().gap(stretch.plan().box());
        if (mayBeNearer(target, stretch, aside)) {
            refine(target, trial(target, stretch));
        }
    }

    private static Trial trial(Target target, Stretch stretch) {
        return new Trial(stretch, target.gap(stretch.plan()));
    }

    /** Keeps what is nearer; a slanted stretch is halved as long as it may be, the half that promises more first. */
    private void refine(Target target, Trial trial) {
        Stretch stretch = trial.stretch();
        boolean whole = !stretch.isSlanted() || stretch.height() <= STEP;
        if (!isNearer(target, trial, whole) || whole) {
            return;
        }
        Trial first = trial(target, stretch.half(0));
        Trial second = trial(target, stretch.half(0.5));
        boolean inOrder = promise(target, first) <= promise(target, second);
        refine(target, inOrder ? first : second);
        refine(target, inOrder ? second : first);
    }

    /** True where some section comes nearer than before; {@code keep} keeps it. */
    private boolean isNearer(Target target, Trial trial, boolean keep) {
        boolean nearer = false;
        for (int i = 0; i < least.length; i++) {
            for (Swept swept : trial.swept(sections.get(i))) {
                ProfileGap upright = trial.upright(swept, target);
                if (upright.clearance() < least[i]) {
                    nearer = true;
                    if (keep) {
                        least[i] = upright.clearance();
                        best[i] = new Candidate(target, trial.stretch(), swept, trial.gap(), upright);
                    }
                }
            }
        }
        return nearer;
    }

    /** The least clearance of any section there. */
    private double promise(Target target, Trial trial) {
        double promise = Double.POSITIVE_INFINITY;
        for (Section section : sections) {
            for (Swept swept : trial.swept(section)) {
                promise = Math.min(promise, trial.upright(swept, target).clearance());
            }
        }
        return promise;
    }

    /** Compares the boxes alone: cheap, and never too pessimistic. */
    private boolean mayBeNearer(Target target, Stretch stretch, double aside) {
        for (int i = 0; i < least.length; i++) {
            Profile profile = sections.get(i).profile();
            double side = Math.max(0, aside - profile.greatestRadius());
            double below = stretch.zLow() + profile.zLow() - target.box().zHigh();
            double above = target.box().zLow() - stretch.zHigh() - profile.zHigh();
            double height = Math.max(0, Math.max(below, above));
            boolean meets = side == 0 && height == 0;
            if (meets || side * side + height * height < least[i] * least[i]) {
                return true;
            }
        }
        return false;
    }

    /** A solid made ready: its box, what the path is measured against in plan, and the radius to be taken off. */
    record Target(Single solid, Box box, Profile profile) {
        static @Nullable Target of(Single solid) {
            Box box = solid.box();
            if (box.isEmpty()) {
                return null;
            }
            Profile profile = switch (solid.kind()) {
                case PRISM -> Profile.cylinder(solid.zLow(), solid.zHigh(), 0);
                case UPRIGHT_CYLINDER -> ((UprightCylinder) solid).profile();
                case UPRIGHT_CONE -> ((UprightCone) solid).profile();
                case UNION -> throw new IllegalArgumentException("A union is not a single solid.");
            };
            return new Target(solid, box, profile);
        }

        /** The distance of a path in plan from the prism, or from the axis of a round solid. */
        Gap gap(Edge path) {
            return switch (solid.kind()) {
                case PRISM -> ((Prism) solid).region().gap(path);
                case UPRIGHT_CYLINDER -> Gap.between(path, Straight.point(((UprightCylinder) solid).axis()));
                case UPRIGHT_CONE -> Gap.between(path, Straight.point(((UprightCone) solid).axis()));
                case UNION -> throw new IllegalArgumentException("A union is not a single solid.");
            };
        }
    }

    /** A stretch of a move with its distance in plan. */
    private record Trial(Stretch stretch, Gap gap) {
        List<Swept> swept(Section section) {
            return Swept.of(section.profile(), stretch.zLow(), stretch.zHigh());
        }

        ProfileGap upright(Swept swept, Target target) {
            return ProfileGap.between(swept.profile(), target.profile(), gap.distance());
        }
    }

    /** A stretch of a move. */
    record Stretch(int move, Edge plan, double zFrom, double zTo) {
        double zLow() {
            return Math.min(zFrom, zTo);
        }

        double zHigh() {
            return Math.max(zFrom, zTo);
        }

        double height() {
            return Math.abs(zTo - zFrom);
        }

        boolean isSlanted() {
            return zFrom != zTo && !plan.from().at(plan.to());
        }

        Stretch half(double start) {
            double step = zTo - zFrom;
            return new Stretch(move, plan.part(start, start + 0.5), zFrom + start * step, zFrom + (start + 0.5) * step);
        }
    }
}
