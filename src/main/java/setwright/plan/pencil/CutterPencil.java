package setwright.plan.pencil;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.TapDrill;
import setwright.quantity.thread.Threads;
import setwright.shop.Cutter;
import setwright.shop.Drill;
import setwright.shop.EndMill;
import setwright.shop.FaceMill;
import setwright.shop.Reamer;
import setwright.shop.ShopRow;
import setwright.shop.SpotDrill;
import setwright.shop.Tap;

/** Cutter: the owned one that suits the feature best; ties go by row id. */
final class CutterPencil {
    /** Stock left on the diameter for a reamer, mm: least, aimed at, most (common practice for 5 to 20 mm). */
    private static final double REAM_LEAST = 0.1;

    private static final double REAM_AIM = 0.25;
    private static final double REAM_MOST = 0.5;

    /** Thread engagement aimed at, share of 1.299 P (common practice). */
    private static final double ENGAGEMENT = 0.75;

    private static final double ENGAGEMENT_LEAST = 0.65;
    private static final double ENGAGEMENT_MOST = 0.83;

    /** A face mill is best a little wider than the face (common practice). */
    private static final double FACE_MILL_OVER_WIDTH = 1.15;

    private final Drafting drafting;

    CutterPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    String choose(Operation operation, double faceWidth) {
        return switch (operation.kind()) {
            case FACE -> facing(faceWidth);
            case SPOT -> spotting(operation);
            case DRILL -> hole(operation).map(this::drilling).orElse(Rows.NOTHING);
            case REAM -> hole(operation).map(this::reaming).orElse(Rows.NOTHING);
            case TAP -> hole(operation).map(this::tapping).orElse(Rows.NOTHING);
        };
    }

    private Optional<Hole> hole(Operation operation) {
        return operation.features().stream()
                .map(drafting::hole)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private String facing(double width) {
        double aim = FACE_MILL_OVER_WIDTH * width;
        Optional<FaceMill> faceMill = owned(FaceMill.class)
                .filter(this::usable)
                .filter(mill -> mill.diameter().inside() >= width)
                .min(Comparator.comparingDouble(
                                (FaceMill mill) -> Math.abs(mill.diameter().inside() - aim))
                        .thenComparing(ShopRow::id));
        if (faceMill.isPresent()) {
            return faceMill.get().id();
        }
        return owned(EndMill.class)
                .filter(this::usable)
                .max(Comparator.comparingDouble(
                                (EndMill mill) -> mill.diameter().inside())
                        .thenComparing(Comparator.comparing(ShopRow::id).reversed()))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private String spotting(Operation operation) {
        double largest = operation.features().stream()
                .map(drafting::hole)
                .flatMap(Optional::stream)
                .mapToDouble(hole -> hole.size().nominal().inside())
                .max()
                .orElse(0);
        Comparator<SpotDrill> bySize = Comparator.comparingDouble(
                        (SpotDrill spot) -> spot.diameter().inside())
                .thenComparing(ShopRow::id);
        List<SpotDrill> spots = owned(SpotDrill.class).sorted(bySize).toList();
        return spots.stream()
                .filter(spot -> spot.diameter().inside() >= largest)
                .findFirst()
                .or(() -> spots.stream().reduce((first, last) -> last))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private String drilling(Hole hole) {
        double size = hole.size().nominal().inside();
        return switch (hole.make()) {
            case PLAIN -> drill(size, size - 0.001, size + 0.001);
            case REAMED -> drill(size - REAM_AIM, size - REAM_MOST, size - REAM_LEAST);
            case TAPPED -> tapDrill(hole);
        };
    }

    private String tapDrill(Hole hole) {
        if (hole.thread() == null) {
            return Rows.NOTHING;
        }
        ScrewThread thread = Threads.listed().read(hole.thread());
        return drill(
                TapDrill.diameter(thread.major(), thread.pitch(), ENGAGEMENT),
                TapDrill.diameter(thread.major(), thread.pitch(), ENGAGEMENT_MOST),
                TapDrill.diameter(thread.major(), thread.pitch(), ENGAGEMENT_LEAST));
    }

    private String drill(double aim, double least, double most) {
        return owned(Drill.class)
                .filter(drill ->
                        drill.diameter().inside() >= least && drill.diameter().inside() <= most)
                .min(Comparator.comparingDouble(
                                (Drill drill) -> Math.abs(drill.diameter().inside() - aim))
                        .thenComparing(Drill::series)
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private String reaming(Hole hole) {
        return owned(Reamer.class)
                .filter(reamer -> Math.abs(reamer.diameter().inside()
                                - hole.size().nominal().inside())
                        < 0.001)
                .min(Comparator.comparing((Reamer reamer) -> !reamer.fit().equals(hole.fit()))
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    String tapping(Hole hole) {
        Tap.Flute wanted = hole.through() ? Tap.Flute.SPIRAL_POINT : Tap.Flute.STRAIGHT;
        return owned(Tap.class)
                .filter(tap -> tap.thread().equals(hole.thread()))
                .min(Comparator.comparing((Tap tap) -> tap.flute() != wanted).thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    /** Whether the shop has cutting speeds for it in this material, and something that holds it. */
    private boolean usable(Cutter cutter) {
        return drafting.rows().cuttingSpeed(cutter.form(), cutter.material()).isPresent()
                && !Rows.NOTHING.equals(new HolderPencil(drafting).choose(cutter));
    }

    private <C extends Cutter> java.util.stream.Stream<C> owned(Class<C> form) {
        return drafting.rows().all(form).stream().filter(cutter -> cutter.kept().owned() != 0);
    }
}
