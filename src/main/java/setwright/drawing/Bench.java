package setwright.drawing;

import java.util.Optional;
import java.util.Set;
import setwright.geometry.Nearest;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/**
 * The views of a set-up on one sheet: the plan under the front view at its scale, the end view at its right, and the
 * tightest place once more, larger, in a circle.
 */
public final class Bench {
    /** Between two views, mm. */
    private static final double APART = 17;

    /** A place is drawn larger where the tool comes nearer than this, mm. */
    private static final double TIGHT = 12;

    private static final double LARGE_RADIUS = 40;
    private static final double SMALL_RADIUS = 6;

    private final Scene scene;
    private final Set<View> views;
    private Drawing sheet = Drawing.EMPTY;
    private Point2 right = new Point2(0, 0);

    private Bench(Scene scene, Set<View> views) {
        this.scene = scene;
        this.views = views;
    }

    /** Empty where the set-up could not be laid out. */
    public static Drawing of(Plan plan, Place place, Printing printing, Set<View> views) {
        return Scene.of(plan, place, printing)
                .map(scene -> new Bench(scene, views).drawn())
                .orElse(Drawing.EMPTY);
    }

    private Drawing drawn() {
        Point2 side = new Point2(0, 0);
        Point2 below = new Point2(0, 0);
        if (views.contains(View.FRONT)) {
            sheet = FrontView.of(scene, views);
            caption(View.FRONT, Frame.of(scene, View.FRONT).box());
        }
        if (views.contains(View.SIDE)) {
            Drawing view = SideView.of(scene, views);
            side = sheet.isEmpty()
                    ? side
                    : new Point2(sheet.extent().xHigh() + APART - view.extent().xLow(), 0);
            put(view.moved(side));
            caption(View.SIDE, view.moved(side).extent());
        }
        if (views.contains(View.TOP)) {
            Drawing view = TopView.of(scene, views);
            below = sheet.isEmpty()
                    ? below
                    : new Point2(
                            0, sheet.extent().yLow() - APART - view.extent().yHigh());
            put(view.moved(below));
            caption(View.TOP, view.moved(below).extent());
        }
        right = side;
        detail(below);
        return sheet;
    }

    private void put(Drawing view) {
        sheet = sheet.and(view);
    }

    private void caption(View view, PlanBox box) {
        Mark.Text text = view == View.TOP
                ? new Mark.Text(
                        new Point2(box.xLow() - 4, box.yHigh() - 4),
                        Mark.Anchor.RIGHT,
                        Mark.Lettering.SMALL,
                        view.words())
                : new Mark.Text(
                        new Point2(box.middle().x(), box.yLow()),
                        Mark.Anchor.BELOW,
                        Mark.Lettering.SMALL,
                        view.words() + ", cut at the spindle");
        sheet = new Drawing(sheet.and(text).marks(), sheet.extent());
    }

    /** The tightest place once more, where the sheet has room: under the end view, else at the right of all. */
    private void detail(Point2 below) {
        Optional<Nearest> tight = scene.tool()
                .flatMap(wound -> wound.near().stream().findFirst())
                .filter(near -> near.clearance() < TIGHT);
        Optional<View> best = tight.flatMap(near -> View.seeing(near.place().toward()).stream()
                .filter(views::contains)
                .findFirst());
        if (tight.isEmpty() || best.isEmpty() || views.size() < 2 || !views.contains(View.TOP)) {
            return;
        }
        Nearest near = tight.get();
        Point2 centre = NearMarks.middle(scene, best.get(), near).plus(shift(best.get(), below));
        double radius = Math.max(SMALL_RADIUS, 0.9 * near.clearance());
        put(Drawing.of(java.util.List.of(
                new Mark.Detail(centre, radius, room(below), LARGE_RADIUS / radius, "the tightest place, larger"))));
    }

    private Point2 shift(View view, Point2 below) {
        return switch (view) {
            case FRONT -> new Point2(0, 0);
            case SIDE -> right;
            case TOP -> below;
        };
    }

    private Point2 room(Point2 below) {
        PlanBox all = sheet.extent();
        if (views.contains(View.TOP) && views.contains(View.SIDE)) {
            PlanBox side = Frame.of(scene, View.SIDE).box();
            PlanBox top = TopView.of(scene, views).moved(below).extent();
            double y = top.yHigh() - LARGE_RADIUS;
            return new Point2(right.x() + side.middle().x(), y);
        }
        return new Point2(all.xHigh() + APART + LARGE_RADIUS, all.yLow() + LARGE_RADIUS + APART);
    }
}
