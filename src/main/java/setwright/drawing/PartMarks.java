package setwright.drawing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import setwright.geometry.Profile;
import setwright.geometry.Single;
import setwright.geometry.Stock;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** The part in an upright view: cut by the plane, with what the operation takes away and what lies behind. */
final class PartMarks {
    /** A centre line goes on beyond its hole, mm. */
    private static final double BEYOND = 4;

    /** The line of a finished face goes on beyond the part, mm. */
    private static final double FACE_BEYOND = 7;

    private final Scene scene;
    private final Frame frame;
    private final Chords plane;

    PartMarks(Scene scene, Frame frame, Chords plane) {
        this.scene = scene;
        this.frame = frame;
        this.plane = plane;
    }

    void draw(Pen pen) {
        if (frame.view() == View.SIDE && scene.roundFromTheEnd()) {
            round(pen);
            return;
        }
        Stock before = scene.before();
        StockSection cut = StockSection.of(before, plane);
        StockSection after = StockSection.of(scene.after(), plane);
        behind(pen, before);
        cut.areas().forEach(area -> pen.fill(Fill.PART, up(area)));
        after.areas().forEach(area -> pen.hatch(Hatch.PART, up(area)));
        StockSection gone = StockSection.gone(before, scene.after(), plane);
        gone.areas().forEach(area -> pen.fill(Fill.CUT_AWAY, up(area)));
        holes(pen, before);
        gone.outline().forEach(edge -> pen.line(LineRole.THIN, up(edge)));
        cut.rims().forEach(edge -> pen.line(LineRole.EDGE, up(edge)));
        cut.outline().forEach(edge -> pen.line(LineRole.VISIBLE, up(edge)));
        finishedFace(pen);
    }

    /** A bar from its end: what its circle and the section have in common. */
    private void round(Pen pen) {
        double radius = scene.heights().depth() / 2;
        Point2 middle = new Point2(
                -(scene.heights().front() + scene.heights().back()) / 2,
                frame.table().of(scene.before().blank().zLow() + radius));
        Region circle = Region.of(Outline.polygon(Flat.points(Outline.circle(middle, radius))));
        Region before = common(circle, StockSection.of(scene.before(), plane));
        Region after = common(circle, StockSection.of(scene.after(), plane));
        before.outers().forEach(outline -> pen.fill(Fill.PART, Flat.points(outline)));
        after.outers().forEach(outline -> pen.hatch(Hatch.PART, Flat.points(outline)));
        before.minus(after).outers().forEach(outline -> {
            pen.fill(Fill.CUT_AWAY, Flat.points(outline));
            pen.closed(LineRole.THIN, Flat.points(outline));
        });
        before.outers().forEach(outline -> pen.closed(LineRole.VISIBLE, Flat.points(outline)));
        double arm = radius + BEYOND;
        pen.line(LineRole.CENTRE, middle.minus(new Point2(arm, 0)), middle.plus(new Point2(arm, 0)));
        pen.line(LineRole.CENTRE, middle.minus(new Point2(0, arm)), middle.plus(new Point2(0, arm)));
    }

    private Region common(Region circle, StockSection section) {
        Region all = Region.NONE;
        for (List<Point2> area : section.areas()) {
            all = all.plus(Region.of(Outline.polygon(up(area))));
        }
        return circle.meet(all);
    }

    /** Paper behind the holes that the plane lays open, so that nothing behind the part shows through. */
    private void behind(Pen pen, Stock stock) {
        double left = frame.view().left(stock.blank().box());
        double right = frame.view().right(stock.blank().box());
        Span up = new Span(frame.table().of(stock.blank().zLow()), frame.table().of(stock.top()));
        List<Point2> corners = Pen.rectangle(new Span(left, right), up);
        pen.fill(Fill.OPEN, corners);
        pen.closed(LineRole.EDGE, corners);
    }

    /** Centre lines of holes that are cut, dashes of holes behind the plane. */
    private void holes(Pen pen, Stock stock) {
        Set<List<Point2>> dashes = new LinkedHashSet<>();
        Set<List<Point2>> centres = new LinkedHashSet<>();
        for (Single cut : stock.cuts()) {
            if (!Chords.standsRound(cut)) {
                continue;
            }
            Profile profile = Chords.profile(cut);
            double beyond = plane.beyond(Chords.axis(cut));
            if (Math.abs(beyond) < profile.greatestRadius()) {
                centres.add(centre(Chords.axis(cut), stock));
            } else if (beyond > 0) {
                hidden(dashes, cut, stock);
            }
        }
        dashes.forEach(dash -> pen.line(LineRole.HIDDEN, dash));
        centres.forEach(centre -> pen.line(LineRole.CENTRE, centre));
    }

    private List<Point2> centre(Point2 axis, Stock stock) {
        double x = plane.across(axis);
        return List.of(
                new Point2(x, frame.table().of(stock.blank().zLow()) - BEYOND),
                new Point2(x, frame.table().of(stock.top()) + BEYOND));
    }

    private void hidden(Set<List<Point2>> dashes, Single cut, Stock stock) {
        Profile profile = Chords.profile(cut);
        double low = Math.max(profile.zLow(), stock.blank().zLow());
        double high = Math.min(profile.zHigh(), stock.top());
        if (high <= low) {
            return;
        }
        double x = plane.across(Chords.axis(cut));
        double narrow = profile.radiusAt(low);
        double wide = profile.radiusAt(high);
        dashes.add(dash(x - narrow, low, x - wide, high));
        dashes.add(dash(x + narrow, low, x + wide, high));
        if (low > stock.blank().zLow()) {
            dashes.add(dash(x - narrow, low, x + narrow, low));
        }
    }

    private List<Point2> dash(double x, double z, double toX, double toZ) {
        return List.of(
                new Point2(x, frame.table().of(z)),
                new Point2(toX, frame.table().of(toZ)));
    }

    /** The height to which the part is faced, while it still stands on stock. */
    private void finishedFace(Pen pen) {
        double finished = scene.heights().finishedTop();
        if (scene.before().top() <= finished + 1e-6) {
            return;
        }
        double y = frame.table().of(finished);
        pen.line(
                LineRole.THIN,
                new Point2(frame.view().left(scene.before().blank().box()) - FACE_BEYOND, y),
                new Point2(frame.view().right(scene.before().blank().box()) + FACE_BEYOND, y));
    }

    private List<Point2> up(List<Point2> corners) {
        return corners.stream()
                .map(corner -> new Point2(corner.x(), frame.table().of(corner.y())))
                .toList();
    }
}
