package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Chamfer;
import setwright.job.Dovetail;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Placed;
import setwright.job.Size;
import setwright.job.TSlot;
import setwright.job.note.Draft.Said;
import setwright.job.note.Measured.Role;
import setwright.quantity.Angle;
import setwright.quantity.Typed;
import setwright.quantity.Unit;

/** Makes faces, chamfers, T-slots and dovetails of a draft. */
final class Shapes {
    private final Draft draft;
    private final Side side;
    private final Asks asks;

    Shapes(Draft draft) {
        this.draft = draft;
        this.side = Patterns.side(draft);
        this.asks = new Asks(draft);
    }

    static void refuseSecondChain(Draft draft, String form) {
        if (draft.chains.size() > 1) {
            Piece piece = draft.chains.get(1).get(0).number();
            throw Halt.refused(Saying.at(piece) + " is joined to nothing; accepted is " + form + ".", piece);
        }
    }

    Feature face() {
        Size across = only("the size across, as face to 20", "Which size is left from the opposite side?", "");
        return new Face(id("face"), draft.typed, side, across, draft.finish, GotBy.DIAL);
    }

    /** Every side of a block faced to the sizes of the blank. */
    List<Feature> square() {
        if (draft.context.blank() == null || draft.context.isRound()) {
            throw Halt.refused(
                    "Square all over wants a blank with six flat sides; the sizes of the blank are written first, as 100x60x25.",
                    0,
                    draft.note.length());
        }
        Block block = draft.context.blank().envelope();
        List<Feature> faces = new ArrayList<>();
        NoteContext context = draft.context;
        for (Side each : List.of(Side.BOTTOM, Side.TOP, Side.FRONT, Side.BACK, Side.LEFT, Side.RIGHT)) {
            Size across = switch (each) {
                case TOP, BOTTOM -> block.height();
                case FRONT, BACK -> block.depth();
                case LEFT, RIGHT -> block.length();
            };
            Feature face = new Face(context.id("face"), draft.typed, each, across, draft.finish, GotBy.DIAL);
            context = context.with(List.of(face));
            faces.add(face);
        }
        return faces;
    }

    Feature chamfer() {
        String form = "width x angle, as chamfer 1 x 45";
        refuseSecondChain(draft, form);
        if (draft.chains.isEmpty()) {
            throw Asks.at(draft, draft.note.length(), " ", "Which width and angle has the chamfer?", "1 x 45");
        }
        List<Measured> chain = draft.chains.get(0);
        if (chain.size() > 2) {
            throw Halt.refused(
                    Saying.at(chain.get(2).number()) + " is one size too many; accepted is " + form + ".",
                    chain.get(2).number());
        }
        Typed<Angle> angle = chain.size() > 1 ? angle(chain.get(1), 89) : draft.angle;
        if (angle == null) {
            throw Asks.at(draft, chain.get(0).to(), " x ", "Which angle has the chamfer?", "45");
        }
        String of = draft.other == null ? Chamfer.OUTLINE : draft.other;
        return new Chamfer(
                id("chamfer"), draft.typed, side, of, chain.get(0).length(), angle, draft.finish, GotBy.TOOL);
    }

    private Typed<Angle> angle(Measured measured, double most) {
        Typed<Angle> angle = measured.angle();
        if (angle == null) {
            Piece number = measured.number();
            angle = Numbers.guarded(number, () -> draft.numbers.reading().angle(number.text()));
        }
        requireAngle(angle, measured.number(), most);
        return angle;
    }

    private static void requireAngle(Typed<Angle> angle, Piece number, double most) {
        double degrees = Unit.DEG.fromInside(angle.inside());
        if (degrees < 1 || degrees > most) {
            throw Halt.refused(
                    Saying.at(number) + " is no angle for it; 1 to " + Math.round(most) + " degrees are accepted.",
                    number);
        }
    }

    Feature tSlot() {
        String form = "neck x depth x head width x head height, as T-slot 12 x 20 x 19 x 8";
        List<Measured> chain = chain(form, "Which width has its neck?", "");
        Size neck = chain.get(0).length();
        if (chain.size() < 4) {
            String likely =
                    chain.size() == 1 ? TSlotSizes.behindNeck(neck.nominal().inside()) : "";
            throw Asks.at(
                    draft,
                    chain.get(chain.size() - 1).to(),
                    " x ",
                    chain.size() == 1
                            ? "Which depth, head width and head height has it?"
                            : "Which sizes are left of " + form + "?",
                    likely);
        }
        requireCount(chain, 4, form);
        Size length = chain.stream()
                .filter(size -> size.role() == Role.LENGTH)
                .findFirst()
                .map(Measured::length)
                .orElse(null);
        asks.unless(length != null || draft.says(Said.OPEN), "how long is it", "open");
        asks.place();
        asks.stop();
        requireWider(chain.get(2), neck);
        return new TSlot(
                id("tslot"),
                draft.typed,
                side,
                neck,
                chain.get(1).length(),
                chain.get(2).length(),
                chain.get(3).length(),
                length,
                placed(),
                draft.finish,
                GotBy.DIAL);
    }

    private static void requireWider(Measured head, Size neck) {
        if (head.length().nominal().inside() <= neck.nominal().inside()) {
            throw Halt.refused(
                    Saying.at(head.number()) + " is a head no wider than the neck of "
                            + neck.nominal().text() + "; a wider one is accepted.",
                    head.number());
        }
    }

    Feature dovetail() {
        String form = "width x depth and an angle, as dovetail 40 x 10 60 deg";
        List<Measured> chain = chain(form, "Which width, at its widest, and depth has it?", "40 x 10");
        Roles roles = Roles.of(chain, List.of(Role.WIDTH, Role.DEPTH), form);
        Size width = roles.size(Role.WIDTH);
        Size depth = roles.size(Role.DEPTH);
        if (width == null || depth == null) {
            throw Asks.at(
                    draft,
                    chain.get(0).to(),
                    " x ",
                    "How deep is the dovetail?",
                    Asks.round(draft, chain.get(0).length().nominal().inside() / 4));
        }
        asks.unless(draft.angle != null, "which angle have its flanks", "60 deg");
        asks.place();
        asks.stop();
        return new Dovetail(
                id("dovetail"),
                draft.typed,
                side,
                draft.says(Said.MALE),
                width,
                depth,
                Objects.requireNonNull(draft.angle),
                placed(),
                draft.finish,
                GotBy.MEASURED);
    }

    private List<Measured> chain(String form, String question, String likely) {
        if (draft.chains.isEmpty()) {
            throw Asks.at(draft, draft.note.length(), " ", question, likely);
        }
        refuseSecondChain(draft, form);
        return draft.chains.get(0);
    }

    private static void requireCount(List<Measured> chain, int most, String form) {
        long sizes = chain.stream().filter(size -> size.role() != Role.LENGTH).count();
        if (sizes > most) {
            Piece piece = chain.get(most).number();
            throw Halt.refused(Saying.at(piece) + " is one size too many; accepted is " + form + ".", piece);
        }
    }

    private Size only(String form, String question, String likely) {
        List<Measured> chain = chain(form, question, likely);
        if (chain.size() > 1) {
            Piece piece = chain.get(1).number();
            throw Halt.refused(Saying.at(piece) + " is one size too many; accepted is " + form + ".", piece);
        }
        return chain.get(0).length();
    }

    private Placed placed() {
        return new Patterns(draft, side, List.of()).placed();
    }

    private String id(String start) {
        return draft.context.id(start);
    }
}
