package setwright.geometry;

import java.util.List;
import setwright.geometry.plane.Gap;

/** Finds the least clearance of each section of the tool with one body. */
final class Search {
    /** The height in mm over which a stretch of a slanted move past a solid with hollows counts as one. */
    static final double STEP = 0.01;

    private final Body body;
    private final List<Section> sections;
    private final Tally tally;

    Search(Body body, List<Section> sections) {
        this.body = body;
        this.sections = sections;
        tally = new Tally(sections);
    }

    void along(List<Move> moves) {
        for (Single solid : body.solid().parts()) {
            Target target = Target.of(solid);
            if (target != null) {
                for (int i = 0; i < moves.size(); i++) {
                    along(target, Stretch.of(i, moves.get(i)));
                }
            }
        }
    }

    List<Nearest> found() {
        return tally.found(body);
    }

    private void along(Target target, Stretch stretch) {
        Convex convex = target.convex();
        boolean exact = stretch.isSlanted() && stretch.isStraight();
        if (convex != null && (target.upright() == null || exact)) {
            new ConvexSearch(convex, target.box(), tally).along(stretch);
        } else if (tally.mayBeNearer(target.box(), stretch)) {
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
        for (int i = 0; i < tally.size(); i++) {
            for (Swept swept : trial.swept(sections.get(i))) {
                ProfileGap upright = trial.upright(swept, target);
                if (upright.clearance() < tally.least(i)) {
                    nearer = true;
                    if (keep) {
                        Candidate found = new Candidate(target, trial.stretch(), swept, trial.gap(), upright);
                        tally.keep(i, upright.clearance(), found);
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

    /** A stretch of a move with its distance in plan. */
    private record Trial(Stretch stretch, Gap gap) {
        List<Swept> swept(Section section) {
            return Swept.of(section.profile(), stretch.zLow(), stretch.zHigh());
        }

        ProfileGap upright(Swept swept, Target target) {
            return ProfileGap.between(swept.profile(), target.profile(), gap.distance());
        }
    }
}
