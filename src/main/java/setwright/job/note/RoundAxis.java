package setwright.job.note;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Divided;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.GotBy;
import setwright.job.Marks;
import setwright.job.Size;
import setwright.job.Tooth;
import setwright.job.note.Measured.Role;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.gear.GearSizes;

/** Makes what stands round an axis: flats, graduations, splines and teeth of a draft. */
final class RoundAxis {
    private static final int DIGITS = 4;

    private final Draft draft;
    private final Side side;
    private final Asks asks;

    RoundAxis(Draft draft) {
        this.draft = draft;
        this.side = Patterns.side(draft);
        this.asks = new Asks(draft);
    }

    Feature flats() {
        String form = "a count, the size across and the length, as flats 2x 30 x 20 long";
        List<Measured> chain = chain(form);
        if (chain.isEmpty()) {
            throw Asks.at(draft, draft.note.length(), " ", "Which size is left across them?", "");
        }
        Roles roles = Roles.of(chain, List.of(Role.WIDTH, Role.LENGTH), form);
        Size across = roles.size(Role.WIDTH);
        Size length = roles.size(Role.LENGTH);
        if (across == null) {
            throw Asks.at(draft, chain.get(0).number().from(), "", "Which size is left across them?", "");
        }
        if (draft.count == 0) {
            throw Asks.at(draft, draft.note.length(), ", ", "How many flats are there?", "2 off");
        }
        asks.unless(
                length != null,
                "how long are they",
                Asks.round(draft, Asks.seen(draft, side).z() / 2) + " long");
        asks.stop();
        return new Flats(
                id("flats"),
                draft.typed,
                side,
                draft.count,
                across,
                Objects.requireNonNull(length),
                draft.finish,
                GotBy.DIAL);
    }

    Feature graduations() {
        requireCircle("60 off");
        String form = "depth x length, as 60 graduations on 120, 0.3 deep x 5 long";
        Roles roles = Roles.of(chain(form), List.of(Role.DEPTH, Role.LENGTH), form);
        Size depth = roles.size(Role.DEPTH);
        asks.unless(depth != null, "how deep are they", Asks.number(draft, 0.3) + " deep");
        asks.unless(roles.size(Role.LENGTH) != null, "how long is one", Asks.number(draft, 5) + " long");
        asks.place();
        asks.stop();
        return divided(
                Divided.What.GRADUATIONS, on(), null, Objects.requireNonNull(depth), roles.size(Role.LENGTH), null);
    }

    Feature splines() {
        requireCircle("6 off");
        String form = "width x depth x length, as 6 splines 6 wide x 3 deep on 30, 25 long";
        Roles roles = Roles.of(chain(form), List.of(Role.WIDTH, Role.DEPTH, Role.LENGTH), form);
        Size width = roles.size(Role.WIDTH);
        Size depth = roles.size(Role.DEPTH);
        asks.unless(width != null, "how wide is one", Asks.number(draft, 6) + " wide");
        asks.unless(depth != null, "how deep are they", Asks.number(draft, 3) + " deep");
        asks.place();
        asks.stop();
        return divided(Divided.What.SPLINES, on(), width, Objects.requireNonNull(depth), roles.size(Role.LENGTH), null);
    }

    /** With a module or diametral pitch the blank's diameter and the depth follow from it; else both are written. */
    Feature teeth() {
        String form = "depth x length, as 24 teeth module 2, 20 long or 24 teeth on 52, 4.5 deep";
        if (draft.count < 2) {
            throw Asks.at(draft, draft.note.length(), ", ", "How many are there?", "24 off");
        }
        Tooth tooth = tooth();
        if (draft.on == null && tooth == null) {
            throw Asks.at(draft, draft.note.length(), " on ", "On which diameter are they?", "");
        }
        Roles roles = Roles.of(chain(form), List.of(Role.DEPTH, Role.LENGTH), form);
        Size depth = roles.size(Role.DEPTH);
        Size whole = depth == null && tooth != null ? depth(tooth) : depth;
        asks.unless(whole != null, "how deep are they", "2 deep");
        asks.place();
        asks.stop();
        Size over = draft.on == null ? outside(Objects.requireNonNull(tooth)) : on();
        return divided(Divided.What.TEETH, over, null, Objects.requireNonNull(whole), roles.size(Role.LENGTH), tooth);
    }

    private @Nullable Tooth tooth() {
        Typed<Length> module = draft.module;
        if (module == null) {
            return null;
        }
        boolean inch = module.text().contains("in");
        Typed<Angle> pressure =
                draft.angle == null ? draft.numbers.reading().angle(inch ? "14.5 deg" : "20 deg") : draft.angle;
        return new Tooth(module, pressure);
    }

    private Size outside(Tooth tooth) {
        return worked(
                GearSizes.OUTSIDE
                        .kernel()
                        .applyAsDouble(new double[] {draft.count, tooth.module().inside()}),
                tooth);
    }

    private Size depth(Tooth tooth) {
        return worked(
                GearSizes.depth(tooth.pressureAngle().inside(), tooth.diametralPitch())
                        .kernel()
                        .applyAsDouble(new double[] {tooth.module().inside()}),
                tooth);
    }

    /** In the unit of the module, to a ten-thousandth. */
    private Size worked(double mm, Tooth tooth) {
        boolean inch = tooth.diametralPitch() > 0;
        double number = inch ? mm / 25.4 : mm;
        String text = java.math.BigDecimal.valueOf(number)
                .setScale(DIGITS, java.math.RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
        return Size.of(draft.numbers.reading().length(text + (inch ? " in" : " mm")));
    }

    private void requireCircle(String likely) {
        if (draft.count < 2) {
            throw Asks.at(draft, draft.note.length(), ", ", "How many are there?", likely);
        }
        if (draft.on == null) {
            throw Asks.at(draft, draft.note.length(), " on ", "On which diameter are they?", "");
        }
    }

    private Size on() {
        return Objects.requireNonNull(draft.on).length();
    }

    private Divided divided(
            Divided.What what,
            Size diameter,
            @Nullable Size width,
            Size depth,
            @Nullable Size length,
            @Nullable Tooth tooth) {
        return new Divided(
                id("divided"),
                draft.typed,
                side,
                what,
                draft.count,
                diameter,
                width,
                depth,
                length,
                new Patterns(draft, side, List.of()).placed(),
                marks(),
                tooth,
                draft.finish,
                GotBy.TOOL);
    }

    /** One or two kinds of longer line; with one alone there are no middle ones. */
    private @Nullable Marks marks() {
        List<Draft.Line> lines = draft.lines.stream()
                .sorted(Comparator.comparingInt(Draft.Line::every).reversed())
                .toList();
        for (Draft.Line line : lines) {
            if (line.every() < 2 || draft.count % line.every() != 0) {
                throw Halt.refused(
                        Saying.at(line.at()) + " does not go into " + draft.count
                                + "; a count of lines that closes the circle is accepted.",
                        line.at());
            }
        }
        if (lines.size() > 2) {
            throw Halt.refused(
                    Saying.at(lines.get(2).at()) + " is a third kind of line; two beside the short ones are accepted.",
                    lines.get(2).at());
        }
        return lines.isEmpty()
                ? null
                : new Marks(
                        lines.get(0).every(),
                        lines.get(0).length(),
                        lines.get(lines.size() - 1).every(),
                        lines.get(lines.size() - 1).length());
    }

    private List<Measured> chain(String form) {
        Shapes.refuseSecondChain(draft, form);
        return draft.chains.isEmpty() ? List.of() : draft.chains.get(0);
    }

    private String id(String start) {
        return draft.context.id(start);
    }
}
