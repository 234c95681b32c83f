package setwright.plan.choose;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Attitude;
import setwright.geometry.Heading;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.Holding;
import setwright.job.Hole;
import setwright.job.Pattern;
import setwright.job.SetUp;
import setwright.job.UndecidedHolding;
import setwright.plan.Rows;
import setwright.plan.part.Laid;
import setwright.plan.part.Lying;
import setwright.plan.part.Seats;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.shop.Owned;

/** The part of a set-up that is to be held: how it lies, and what is cut of it there. */
record ToHold(DrawnUp drawnUp, DrawnSetUp setUp, Rows rows) {
    private static final List<FaceState> ROUGH =
            List.of(FaceState.SAWN, FaceState.HOT_ROLLED, FaceState.FLAME_CUT, FaceState.CAST);

    Blank blank() {
        return drawnUp.job().plan().blank();
    }

    Lying lying() {
        return Lying.of(blank().envelope(), setUp.up().value(), setUp.quarterTurns());
    }

    /** The holding as it is written down. */
    Holding written() {
        return drawnUp.job().plan().setUps().stream()
                .filter(one -> one.id().equals(setUp.id()))
                .map(SetUp::holding)
                .findFirst()
                .orElse(new UndecidedHolding());
    }

    /** Whether it is a bar or tube that lies along the table. */
    boolean barAlong() {
        return Seats.barAlong(blank(), Laid.of(setUp));
    }

    /** Whether it is a bar or tube, however it lies. */
    boolean round() {
        return blank().kind() == Blank.Kind.ROUND_BAR || blank().kind() == Blank.Kind.TUBE;
    }

    /** Of a round part, mm. */
    double diameter() {
        Lying lying = lying();
        double across = lying.across().nominal().inside();
        return barAlong() ? across : Math.min(across, lying.along().nominal().inside());
    }

    /** What is cut in the set-up. */
    Stream<Feature> cut() {
        List<String> ids = setUp.operations().stream()
                .flatMap(operation -> operation.features().stream())
                .toList();
        return drawnUp.job().plan().features().stream().filter(feature -> ids.contains(feature.id()));
    }

    /** Whether all of its upper face is cut, so that nothing may lie on it. A rough body has lugs below its face. */
    boolean topIsCut() {
        return blank().kind() != Blank.Kind.ROUGH_BODY
                && cut().anyMatch(feature -> feature.kind() == Feature.Kind.FACE
                        && feature.side() == setUp.up().value());
    }

    /** Whether something about it is cut all round an axis, so that it has to be turned under the cutter. */
    boolean isTurned() {
        return cut().anyMatch(feature -> switch (feature.kind()) {
            case DIVIDED, ARC_SLOT, RADIUS_END, FLATS -> true;
            case HOLE -> ((Hole) feature).place().kind() == Pattern.Kind.BOLT_CIRCLE;
            case FACE,
                    STEP,
                    SLOT,
                    POCKET,
                    PROFILE,
                    KEYSEAT,
                    WOODRUFF_SEAT,
                    T_SLOT,
                    DOVETAIL,
                    CHAMFER,
                    SLIT,
                    INCLINED_FACE -> false;
        });
    }

    /** Whether a rough body is still rough on the side that faces that way. */
    boolean roughBody(Heading heading) {
        Side side = new Attitude(setUp.up().value(), setUp.quarterTurns()).sideFacing(heading);
        return blank().kind() == Blank.Kind.ROUGH_BODY
                && ROUGH.contains(blank().faces().getOrDefault(side, FaceState.SAWN))
                && !faced(side);
    }

    /** Whether a set-up before this one faces a side. */
    private boolean faced(Side side) {
        List<DrawnSetUp> before =
                drawnUp.setUps().subList(0, Math.max(0, drawnUp.setUps().indexOf(setUp)));
        return drawnUp.job().plan().features().stream()
                .filter(feature -> feature.kind() == Feature.Kind.FACE && feature.side() == side)
                .anyMatch(face -> before.stream()
                        .flatMap(one -> one.operations().stream())
                        .anyMatch(operation -> operation.features().contains(face.id())));
    }

    <T extends Owned> List<T> owned(Class<T> kind) {
        return rows.all(kind).stream().filter(row -> row.kept().owned() != 0).toList();
    }

    String length(double mm) {
        return new Printing(drawnUp.job().plan().units()).of(Measure.LENGTH, mm);
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static List<String> reasons(Optional<String> reason) {
        return reason.stream().toList();
    }
}
