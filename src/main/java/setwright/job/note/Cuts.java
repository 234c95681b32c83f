package setwright.job.note;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Point3;
import setwright.geometry.Side;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Keyseat;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.note.Draft.Said;
import setwright.job.note.Measured.Role;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Makes slots, pockets, steps, keyseats and slits of a draft. */
final class Cuts {
    private final Draft draft;
    private final Side side;
    private final Asks asks;

    Cuts(Draft draft) {
        this.draft = draft;
        this.side = draft.head == Head.STEP ? stepSide(draft) : Patterns.side(draft);
        this.asks = new Asks(draft);
    }

    Feature slot() {
        Roles roles =
                roles(List.of(Role.WIDTH, Role.DEPTH, Role.LENGTH), "width x depth x length, as slot 12 x 8 x 40 long");
        Size width = first(roles, Role.WIDTH);
        Size depth = depth(roles);
        Size length = length(roles);
        requireLonger(roles, width);
        asks.place();
        asks.stop();
        return new Slot(id("slot"), draft.typed, side, width, depth, length, placed(), draft.finish, GotBy.DIAL);
    }

    Feature slit() {
        Roles roles =
                roles(List.of(Role.WIDTH, Role.DEPTH, Role.LENGTH), "width x depth x length, as slit 2 x 10 deep");
        Size width = first(roles, Role.WIDTH);
        Size depth = depth(roles);
        Size length = roles.size(Role.LENGTH);
        asks.place();
        asks.stop();
        return new Slit(id("slit"), draft.typed, side, width, depth, length, placed(), draft.finish, GotBy.TOOL);
    }

    Feature pocket() {
        Roles roles = roles(
                List.of(Role.LENGTH, Role.WIDTH, Role.DEPTH),
                "length x width x depth and a radius, as pocket 40x30x10 R6");
        Size length = first(roles, Role.LENGTH);
        Size width = first(roles, Role.WIDTH);
        Size depth = depth(roles);
        Typed<Length> corner = draft.radius;
        double most = Math.min(length.nominal().inside(), width.nominal().inside()) / 2;
        asks.unless(corner != null, "which radius have its corners", "R" + Asks.round(draft, Math.min(most * 0.4, 6)));
        if (corner != null && (corner.inside() > most || corner.inside() <= 0)) {
            throw Halt.refused(
                    "A corner radius of " + corner.text() + " does not go into the pocket; more than nought, up to "
                            + Asks.number(draft, most) + ", is accepted.",
                    0,
                    draft.note.length());
        }
        asks.place();
        asks.stop();
        return new Pocket(
                id("pocket"),
                draft.typed,
                side,
                length,
                width,
                depth,
                Objects.requireNonNull(corner),
                placed(),
                draft.finish,
                GotBy.DIAL);
    }

    Feature step() {
        Roles roles =
                roles(List.of(Role.WIDTH, Role.DEPTH, Role.LENGTH), "width x depth and an edge, as step 10 x 5 left");
        Size width = first(roles, Role.WIDTH);
        Size depth = roles.size(Role.DEPTH);
        Edge edge = edge(side);
        asks.unless(
                depth != null,
                "how deep is it",
                Asks.round(draft, width.nominal().inside() / 2) + " deep");
        asks.unless(edge != null, "along which edge", "left" + (draft.side == null ? ", on top" : ""));
        asks.stop();
        return new Step(
                id("step"),
                draft.typed,
                side,
                Objects.requireNonNull(edge),
                width,
                Objects.requireNonNull(depth),
                roles.size(Role.LENGTH),
                draft.finish,
                GotBy.DIAL);
    }

    /** Of a step the side is named behind on or second; the edge first. */
    private static Side stepSide(Draft draft) {
        if (draft.side != null) {
            return draft.side;
        }
        Side second = draft.sides.size() > 1 ? Corners.side(draft.sides.get(1)) : null;
        return second == null ? Side.TOP : second;
    }

    private @Nullable Edge edge(Side on) {
        if (draft.sides.isEmpty()) {
            return null;
        }
        Piece word = draft.sides.get(0);
        Edge edge = Corners.edge(on, word.text());
        if (edge == null) {
            throw Halt.refused(
                    Saying.at(word) + " is no edge of the " + Spoken.word(on) + "; an edge is left, right, or one of "
                            + Corners.name(on, Edge.LOW) + " and " + Corners.name(on, Edge.HIGH) + ".",
                    word);
        }
        return edge;
    }

    Feature keyseat() {
        Roles roles = roles(
                List.of(Role.WIDTH, Role.DEPTH, Role.LENGTH), "width x depth x length, as keyseat 8 x 4 x 40 long");
        Size width = first(roles, Role.WIDTH);
        Size depth = roles.size(Role.DEPTH);
        asks.unless(
                depth != null,
                "how deep is it",
                Asks.round(draft, width.nominal().inside() / 2) + " deep");
        Side on = keyseatSide();
        Size length = roles.size(Role.LENGTH);
        asks.unless(
                length != null || draft.says(Said.OPEN),
                "how long is it",
                Asks.round(draft, width.nominal().inside() * 4) + " long");
        Size shaft = shaft();
        askKeyseatPlace();
        asks.stop();
        return new Keyseat(
                id("keyseat"),
                draft.typed,
                on,
                shaft,
                width,
                Objects.requireNonNull(depth),
                Keyseat.From.SIDE,
                length,
                keyseatPlace(on),
                draft.finish,
                GotBy.DIAL);
    }

    /** The axis of a round bar is upright as drawn, so that a keyseat is on one of the four sides round it. */
    private Side keyseatSide() {
        boolean named = draft.side != null || !draft.sides.isEmpty();
        if (draft.context.isRound() && named && (side == Side.TOP || side == Side.BOTTOM)) {
            throw Halt.refused(
                    "The " + Spoken.word(side)
                            + " of a round bar is its end, and a keyseat runs along the bar; on front, back,"
                            + " left or right is accepted.",
                    0,
                    draft.note.length());
        }
        return !named && draft.context.isRound() ? Side.FRONT : side;
    }

    private void askKeyseatPlace() {
        if (draft.context.isRound()) {
            boolean named = draft.side != null || !draft.sides.isEmpty();
            asks.unless(draft.isPlaced(), "where is its middle", "centred" + (named ? "" : " on front"));
        } else {
            asks.place();
        }
    }

    private Placed keyseatPlace(Side on) {
        Placed place = new Patterns(draft, on, List.of()).placed();
        return draft.context.isRound() && place.angle() == null
                ? new Placed(
                        place.from(),
                        place.u(),
                        place.v(),
                        draft.numbers.reading().angle("90"))
                : place;
    }

    private Size shaft() {
        if (draft.on != null) {
            return draft.on.length();
        }
        if (draft.context.isRound() && draft.context.blank() != null) {
            return draft.context.blank().envelope().length();
        }
        throw Asks.at(
                draft,
                draft.note.length(),
                ", on ",
                "Which diameter has the shaft there?",
                Asks.round(draft, Asks.seen(draft, side).y() / 2));
    }

    private Roles roles(List<Role> order, String form) {
        Head head = Objects.requireNonNull(draft.head);
        if (draft.chains.isEmpty()) {
            throw Asks.at(draft, draft.note.length(), " ", "Which sizes has the " + head.called() + "?", "");
        }
        Shapes.refuseSecondChain(draft, form);
        return Roles.of(draft.chains.get(0), order, form);
    }

    private Size first(Roles roles, Role role) {
        Size size = roles.size(role);
        if (size == null) {
            throw Asks.at(
                    draft,
                    draft.chains.get(0).get(0).to(),
                    " x ",
                    "Which " + role.name().toLowerCase(Locale.ROOT) + " has it?",
                    "");
        }
        return size;
    }

    private @Nullable Size depth(Roles roles) {
        Size depth = roles.size(Role.DEPTH);
        if (depth != null && draft.says(Said.THROUGH)) {
            throw Halt.refused(
                    "It is through or " + depth.nominal().text() + " deep, not both; leave one out.",
                    draft.piece(Said.THROUGH));
        }
        Within.depth(depth, side, draft);
        asks.unless(depth != null || draft.says(Said.THROUGH), "how deep is it", "thru");
        return depth;
    }

    private @Nullable Size length(Roles roles) {
        Size length = roles.size(Role.LENGTH);
        Point3 seen = Asks.seen(draft, side);
        if (draft.says(Said.CLOSED)) {
            asks.unless(length != null, "how long is it", Asks.round(draft, seen.x() / 2) + " long");
        } else {
            asks.unless(length != null || draft.says(Said.OPEN), "how long is it", "open");
        }
        return length;
    }

    private static void requireLonger(Roles roles, Size width) {
        Measured length = roles.measured(Role.LENGTH);
        if (length != null
                && length.length().nominal().inside() < width.nominal().inside()) {
            throw Halt.refused(
                    Saying.at(length.number()) + " is a length less than the width of "
                            + width.nominal().text()
                            + "; accepted is width x depth x length, as slot 12 x 8 x 40 long.",
                    length.number());
        }
    }

    private Placed placed() {
        return new Patterns(draft, side, List.of()).placed();
    }

    private String id(String start) {
        return draft.context.id(start);
    }
}
