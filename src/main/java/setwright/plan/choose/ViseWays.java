package setwright.plan.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Heading;
import setwright.job.DrawnVise;
import setwright.job.Holding;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.job.ViseHolding.GripAsked;
import setwright.job.ViseHolding.JawSeat;
import setwright.shop.SoftJaws;
import setwright.shop.Vise;

/** Between the jaws of every vise, on either seat, gripped in three ways: as most people would first. */
final class ViseWays implements WaysToHold {
    private static final String SOFT_FIRST =
            "Soft jaws are screwed on and cut to the part first: worth it for finished sides and for a batch";

    private static final double SAME = 1;

    private static final List<GripAsked> GRIPS = List.of(GripAsked.FIRM, GripAsked.HARD, GripAsked.SNUG);

    /** An end that stands out of the jaws by more than so many thicknesses gives (common practice). */
    private static final double SLENDER = 3;

    @Override
    public Stream<Arrangement> of(ToHold part) {
        return part.owned(Vise.class).stream()
                .flatMap(vise -> Stream.concat(
                        Stream.of(JawSeat.values()).flatMap(seat -> of(part, vise, seat)), soft(part, vise)));
    }

    /** Soft jaws go on the vise of their width, in place of its own smooth ones. */
    private static Stream<Arrangement> soft(ToHold part, Vise vise) {
        return part.owned(SoftJaws.class).stream()
                .filter(jaws -> vise.jawFace() == Vise.JawFace.SMOOTH
                        && Math.abs(jaws.jawWidth().inside() - vise.jawWidth().inside()) < SAME)
                .map(jaws -> soft(part, vise, jaws));
    }

    private static Arrangement soft(ToHold part, Vise vise, SoftJaws jaws) {
        boolean now = drawn(part)
                .filter(drawn -> drawn.vise().value().equals(vise.id())
                        && drawn.jaws().value().equals(jaws.id()))
                .isPresent();
        ViseHolding from = now ? before(part) : afresh(part);
        ViseHolding on = ViseField.JAWS.write(
                ViseField.VISE.write(from, Plannable.inked(vise.id())), Plannable.inked(jaws.id()));
        return new Arrangement(
                vise.name() + " with " + jaws.name().toLowerCase(Locale.ROOT),
                on,
                ToHold.reasons(against(part, vise, JawSeat.INBOARD)),
                Stream.concat(now ? Stream.empty() : Stream.of(SOFT_FIRST), doubts(part, vise).stream())
                        .toList(),
                now);
    }

    /** Where it does not go in at all, how hard it is gripped is no question. */
    private static Stream<Arrangement> of(ToHold part, Vise vise, JawSeat seat) {
        String jaws = vise.name() + ", jaws " + ToHold.word(seat);
        Optional<String> against = against(part, vise, seat);
        if (against.isPresent()) {
            return Stream.of(new Arrangement(
                    jaws, ink(part, vise, seat, GripAsked.FIRM), ToHold.reasons(against), now(part, vise, seat)));
        }
        return GRIPS.stream()
                .map(grip -> new Arrangement(
                        jaws + ", " + ToHold.word(grip),
                        ink(part, vise, seat, grip),
                        List.of(),
                        doubts(part, vise),
                        now(part, vise, seat)
                                && drawn(part).orElseThrow().grip().value() == grip));
    }

    private static Optional<String> against(ToHold part, Vise vise, JawSeat seat) {
        double across = part.lying().across().greatestMm();
        double opening = opening(vise, seat);
        if (across > opening) {
            return Optional.of("It does not go in: " + part.length(across) + " across, and the jaws open "
                    + part.length(opening) + " " + ToHold.word(seat));
        }
        if (seat == JawSeat.OUTBOARD && across <= vise.openingInboard().inside() && !now(part, vise, seat)) {
            return Optional.of("It goes in with the jaws inboard; moving them out gains nothing");
        }
        return Optional.empty();
    }

    /** What no check looks at: faces that rock, ends that hang out. */
    private static List<String> doubts(ToHold part, Vise vise) {
        List<String> doubts = new ArrayList<>();
        if (part.roughBody(Heading.PLUS_Y) || part.roughBody(Heading.MINUS_Y)) {
            doubts.add("The jaws bear on rough faces: it rocks between them, even with card or copper under the jaws");
        }
        double hangs = (part.lying().along().greatestMm() - vise.jawWidth().inside()) / 2;
        double thick =
                Math.min(part.lying().across().leastMm(), part.lying().upright().leastMm());
        if (hangs > Math.max(vise.jawWidth().inside() / 2, SLENDER * thick)) {
            doubts.add("It stands " + part.length(hangs)
                    + " out of the jaws at each end: jack its ends, or lay it on the table");
        }
        return doubts;
    }

    private static double opening(Vise vise, JawSeat seat) {
        return switch (seat) {
            case INBOARD -> vise.openingInboard().inside();
            case OUTBOARD -> vise.openingOutboard().inside();
        };
    }

    /** In the vise that it is in, nothing but the grip changes; in another the packing is chosen anew. */
    private static ViseHolding ink(ToHold part, Vise vise, JawSeat seat, GripAsked grip) {
        ViseHolding from = now(part, vise, seat) ? before(part) : afresh(part);
        ViseHolding on =
                ViseField.SEAT.write(ViseField.VISE.write(from, Plannable.inked(vise.id())), Plannable.inked(seat));
        return ViseField.GRIP.write(on, Plannable.inked(grip));
    }

    private static ViseHolding before(ToHold part) {
        return part.written().kind() == Holding.Kind.VISE ? (ViseHolding) part.written() : ViseHolding.pencilled();
    }

    /** What is left where the vise is another: how many parts, what is between, and the stops. */
    private static ViseHolding afresh(ToHold part) {
        ViseHolding before = before(part);
        ViseHolding parts = ViseField.PARTS.write(ViseHolding.pencilled(), before.parts());
        return ViseField.BETWEEN.write(parts, before.between()).withStops(before.stops());
    }

    private static boolean now(ToHold part, Vise vise, JawSeat seat) {
        return drawn(part)
                .filter(drawn -> drawn.vise().value().equals(vise.id())
                        && drawn.seat().value() == seat
                        && drawn.jaws().value().equals(ViseHolding.NONE))
                .isPresent();
    }

    private static Optional<DrawnVise> drawn(ToHold part) {
        return part.setUp().holding() instanceof DrawnVise drawn ? Optional.of(drawn) : Optional.empty();
    }
}
