package setwright.drawing;

import java.util.List;
import setwright.geometry.Move;
import setwright.geometry.Point3;
import setwright.geometry.Role;
import setwright.geometry.ToolStack;
import setwright.geometry.plane.Point2;

/** The tool in an upright view, where it was wound to, and where it ends. */
final class ToolMarks {
    /** The axis goes on beyond point and quill, mm. */
    static final double BEYOND = 5;

    /** How far beside the tool its stick-out is dimensioned, mm. */
    private static final double ASIDE = 8;

    private static final double LEAST_ASIDE = 32;

    private final Scene scene;
    private final Frame frame;
    private final Scene.Wound wound;
    private final ToolFrame tool;

    ToolMarks(Scene scene, Frame frame, Scene.Wound wound) {
        this.scene = scene;
        this.frame = frame;
        this.wound = wound;
        tool = Frame.tool(scene, frame.view(), frame.table(), wound);
    }

    void draw(Pen pen) {
        endPositions(pen);
        ToolStack stack = wound.on().tool();
        for (ToolFrame.Piece piece : tool.pieces(stack, wound.point())) {
            pen.fill(Fills.of(piece.section().role()), piece.corners());
            outline(pen, piece);
        }
        double x = frame.view().across(wound.point());
        pen.line(
                LineRole.CENTRE,
                new Point2(x, tool.y(wound.point(), 0) - BEYOND),
                new Point2(x, tool.y(wound.point(), ToolFrame.top(stack)) + BEYOND));
        stickOut(pen);
    }

    private static void outline(Pen pen, ToolFrame.Piece piece) {
        List<Point2> at = piece.corners();
        pen.line(LineRole.VISIBLE, at.get(1), at.get(2));
        pen.line(LineRole.VISIBLE, at.get(3), at.get(0));
        pen.line(piece.brokenBelow() ? LineRole.BROKEN : LineRole.VISIBLE, at.get(0), at.get(1));
        pen.line(piece.brokenAbove() ? LineRole.BROKEN : LineRole.VISIBLE, at.get(2), at.get(3));
    }

    /** The cutter at the ends of the cut: of the passage that it is on, or of the hole that it is over. */
    private void endPositions(Pen pen) {
        if (wound.on().spots().isEmpty()) {
            ends(Move.Kind.CUT, pen);
        } else {
            wound.on().path().moves().stream()
                    .skip(Math.max(0, wound.move()))
                    .filter(move -> move.kind() == Move.Kind.PLUNGE)
                    .findFirst()
                    .ifPresent(move -> cutter(pen, move.to()));
        }
    }

    private void ends(Move.Kind kind, Pen pen) {
        List<Move> moves = wound.on().path().moves();
        moves.stream()
                .skip(Math.max(0, wound.move()))
                .filter(move -> move.kind() == kind)
                .findFirst()
                .ifPresent(move -> {
                    cutter(pen, move.from());
                    cutter(pen, move.to());
                });
    }

    private void cutter(Pen pen, Point3 point) {
        if (point.distance(wound.point()) < 0.5) {
            return;
        }
        double top = wound.on().spots().isEmpty()
                ? frame.up().high()
                : frame.table().of(wound.on().workTop()) + BEYOND;
        Clip clip = new Clip(frame.across(), new Span(frame.up().low(), top));
        for (ToolFrame.Piece piece : tool.pieces(wound.on().tool().only(Role.CUTTER), point)) {
            List<Point2> seen = clip.of(piece.corners());
            if (seen.size() > 2) {
                pen.closed(LineRole.NEIGHBOUR, seen);
            }
        }
    }

    private void stickOut(Pen pen) {
        ToolStack stack = wound.on().tool();
        double holder = stack.heightOf(Role.HOLDER);
        double face = Double.isFinite(holder) ? holder : stack.heightOf(Role.SPINDLE_NOSE);
        if (frame.view() != View.FRONT || !Double.isFinite(face)) {
            return;
        }
        double radius = stack.only(Role.CUTTER, Role.SHANK, Role.HOLDER).greatestRadius();
        double x = frame.view().across(wound.point());
        double middle = (scene.heights().left() + scene.heights().right()) / 2;
        Point2 aside = new Point2((x < middle ? -1 : 1) * Math.max(LEAST_ASIDE, radius + ASIDE), 0);
        pen.add(new Mark.Dimension(
                new Point2(x, tool.y(wound.point(), 0)),
                new Point2(x, tool.y(wound.point(), face)),
                aside,
                scene.printing().of(setwright.quantity.Measure.LENGTH, face) + " out"));
    }
}
