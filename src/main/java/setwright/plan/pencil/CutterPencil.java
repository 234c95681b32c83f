package setwright.plan.pencil;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.cutting.LeverPush;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.plan.part.MadeFrom;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.thread.FormingDrill;
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

    /** Least stock left on the diameter for a boring bar, mm (common practice). */
    private static final double BORE_STOCK = 1;

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
            case FACE -> standing(operation) ? new MillPencil(drafting).choose(operation) : facing(faceWidth);
            case SPOT -> spotting(operation);
            case DRILL -> hole(operation).map(this::drilling).orElse(Rows.NOTHING);
            case REAM -> hole(operation).map(this::reaming).orElse(Rows.NOTHING);
            case TAP -> hole(operation).map(this::tapping).orElse(Rows.NOTHING);
            case STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, WOODRUFF, SAW, CHAMFER, FORM, SCRIBE ->
                new MillPencil(drafting).choose(operation);
            case BORE, COUNTERBORE, SPOTFACE, COUNTERSINK ->
                hole(operation)
                        .map(hole -> new MouthPencil(drafting).choose(operation.kind(), hole))
                        .orElse(Rows.NOTHING);
        };
    }

    /** Flats round an axis that stands are cut by the side of an end mill. */
    private boolean standing(Operation operation) {
        return operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .anyMatch(feature -> MadeFrom.standingFlats(feature, drafting.job()));
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

    String drilling(Hole hole) {
        double size = hole.size().nominal().inside();
        return switch (hole.make()) {
            case PLAIN -> drill(hole, size, size - 0.001, size + 0.001);
            case BORED -> beforeBoring(size - BORE_STOCK);
            case REAMED -> drill(hole, size - REAM_AIM, size - REAM_MOST, size - REAM_LEAST);
            case TAPPED -> tapDrill(hole);
        };
    }

    /** The largest that a hand on the quill's lever pushes into the full; a bar takes the rest. */
    private String beforeBoring(double most) {
        return owned(Drill.class)
                .filter(Drill::cutsInTheFull)
                .filter(drill -> drill.diameter().inside() <= most && pushed(drill) <= LeverPush.BY_HAND)
                .max(Comparator.comparingDouble(
                                (Drill drill) -> drill.diameter().inside())
                        .thenComparing(Comparator.comparing(ShopRow::id).reversed()))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    /** What it asks of the hand in the full, N. */
    private double pushed(Drill drill) {
        double diameter = drill.diameter().inside();
        return drafting.rows()
                .cuttingSpeed(drill.form(), drill.material())
                .map(row -> LeverPush.slowest(
                        diameter,
                        row.feedAt(diameter),
                        0,
                        drafting.rows().material().drillFactor().inside()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private String tapDrill(Hole hole) {
        if (hole.thread() == null) {
            return Rows.NOTHING;
        }
        boolean forms = formed(hole);
        return drill(
                hole,
                before(hole.thread(), ENGAGEMENT, forms),
                before(hole.thread(), ENGAGEMENT_MOST, forms),
                before(hole.thread(), ENGAGEMENT_LEAST, forms));
    }

    private static double before(String name, double engagement, boolean forms) {
        ScrewThread thread = Threads.listed().read(name);
        return forms
                ? FormingDrill.diameter(thread.major(), thread.pitch(), engagement)
                : TapDrill.diameter(thread.major(), thread.pitch(), engagement);
    }

    /** Whether the tap that is written down for it, else the one that would be taken, pushes the thread up. */
    private boolean formed(Hole hole) {
        return drafting.written(Operation.Kind.TAP, hole)
                .reduce((first, last) -> first)
                .or(() -> Optional.of(tapping(hole)))
                .flatMap(drafting.rows()::cutter)
                .filter(tap -> ((Tap) tap).flute() == Tap.Flute.FORM)
                .isPresent();
    }

    /** One of the system that the hole is drawn in goes before one that is nearer by a hair. */
    private String drill(Hole hole, double aim, double least, double most) {
        boolean metric = hole.thread() == null
                ? metric(hole.size().nominal())
                : hole.thread().startsWith("M");
        return owned(Drill.class)
                .filter(Drill::cutsInTheFull)
                .filter(drill ->
                        drill.diameter().inside() >= least && drill.diameter().inside() <= most)
                .min(Comparator.comparing((Drill drill) -> metric(drill.diameter()) != metric)
                        .thenComparingDouble(drill -> Math.abs(drill.diameter().inside() - aim))
                        .thenComparing(Drill::series)
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private static boolean metric(Typed<Length> size) {
        return size.text().endsWith("mm");
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

    /** Ahead through a through hole, back out of a blind one (common practice). */
    String tapping(Hole hole) {
        List<Tap.Flute> best = hole.through()
                ? List.of(Tap.Flute.SPIRAL_POINT, Tap.Flute.STRAIGHT, Tap.Flute.SPIRAL_FLUTE, Tap.Flute.FORM)
                : List.of(Tap.Flute.SPIRAL_FLUTE, Tap.Flute.STRAIGHT, Tap.Flute.FORM, Tap.Flute.SPIRAL_POINT);
        return owned(Tap.class)
                .filter(tap -> tap.thread().equals(hole.thread()))
                .min(Comparator.comparing((Tap tap) -> best.indexOf(tap.flute()))
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    /** Whether the shop has cutting speeds for it in this material, and something that holds it. */
    boolean usable(Cutter cutter) {
        return drafting.rows().cuttingSpeed(cutter.form(), cutter.material()).isPresent()
                && !Rows.NOTHING.equals(new HolderPencil(drafting).choose(cutter));
    }

    <C extends Cutter> Stream<C> owned(Class<C> form) {
        return drafting.rows().all(form).stream()
                .filter(cutter -> cutter.kept().owned() != 0)
                .filter(cutter -> !(cutter instanceof EndMill mill) || mill.plain());
    }
}
