package setwright.geometry;

/**
 * Finds the least clearance with a body without hollows. A straight move, level or not, passes through a body without
 * hollows too, and the distance of both is exact. A round one is halved, each half taken as its chord less what it bulges,
 * as long as a half may come nearer than what is known.
 */
final class ConvexSearch {
    /** A round stretch that bulges less than this in mm from its chord is as good as straight. */
    private static final double STRAIGHT = 1e-7;

    /** So far a round stretch is followed in mm where it is certain that both touch. */
    private static final double TOUCHING = 0.01;

    private final Convex body;
    private final Box box;
    private final Tally tally;

    ConvexSearch(Convex body, Box box, Tally tally) {
        this.body = body;
        this.box = box;
        this.tally = tally;
    }

    void along(Stretch stretch) {
        if (!tally.mayBeNearer(box, stretch)) {
            return;
        }
        for (int i = 0; i < tally.size(); i++) {
            follow(i, stretch);
        }
    }

    private void follow(int i, Stretch stretch) {
        if (!tally.mayBeNearer(i, box, stretch, box.plan().gap(stretch.plan().box()))) {
            return;
        }
        if (!stretch.isShort()) {
            halve(i, stretch);
            return;
        }
        SweptSection tool = swept(i, stretch);
        double bulge = stretch.bulge();
        ConvexGap gap = ConvexGap.between(tool, body, Math.max(0, tally.least(i)) + bulge);
        if (gap.meets()) {
            touch(i, stretch, tool, bulge);
        } else if (gap.distance() - bulge < tally.least(i)) {
            if (bulge > STRAIGHT) {
                halve(i, stretch);
            } else {
                tally.keep(i, gap.distance() - bulge, new ConvexPlace(stretch, gap));
            }
        }
    }

    private void touch(int i, Stretch stretch, SweptSection tool, double bulge) {
        if (-WayOut.atMost(tool, body) - bulge >= tally.least(i)) {
            return;
        }
        if (bulge > STRAIGHT && (bulge > TOUCHING || !touchesOnTheWay(i, stretch))) {
            halve(i, stretch);
            return;
        }
        WayOut level = WayOut.level(tool, body);
        WayOut upright = WayOut.upright(tool, body);
        double clearance = -Math.min(level.length(), upright.length());
        if (clearance < tally.least(i)) {
            tally.keep(i, clearance, new TouchingPlace(stretch, level, upright));
        }
    }

    private boolean touchesOnTheWay(int i, Stretch stretch) {
        Point3 tip = stretch.at(0.5);
        return ConvexGap.between(new SweptSection(tally.section(i).profile(), tip, tip), body, 0)
                .meets();
    }

    /** The half that promises more first, so that the other may be passed over. */
    private void halve(int i, Stretch stretch) {
        Stretch first = stretch.half(0);
        Stretch second = stretch.half(0.5);
        boolean inOrder = promise(i, first) <= promise(i, second);
        follow(i, inOrder ? first : second);
        follow(i, inOrder ? second : first);
    }

    private double promise(int i, Stretch stretch) {
        return ConvexGap.between(swept(i, stretch), body).distance();
    }

    private SweptSection swept(int i, Stretch stretch) {
        return new SweptSection(tally.section(i).profile(), stretch.from(), stretch.to());
    }
}
