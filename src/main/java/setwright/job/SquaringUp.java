package setwright.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Attitude;
import setwright.geometry.Heading;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Reading;
import setwright.quantity.Typed;

/**
 * A blank squared up in one gesture: a set-up in the vise for every side that is neither clean nor cut by a set-up that is
 * written down, before all others, with a round bar at the moving jaw while the side there is rough.
 */
public final class SquaringUp {
    /** Taken off a rough side where the drawing names no size, mm (common practice). */
    private static final double SKIN = 1;

    private static final List<FaceState> ROUGH =
            List.of(FaceState.SAWN, FaceState.HOT_ROLLED, FaceState.FLAME_CUT, FaceState.CAST);

    private final DrawnUp drawnUp;
    private final JobPlan plan;
    private final Block block;
    private final @Nullable String stop;
    private final List<Feature> features;

    private SquaringUp(DrawnUp drawnUp, @Nullable String stop) {
        this.drawnUp = drawnUp;
        this.stop = stop;
        plan = drawnUp.job().plan();
        block = plan.blank().envelope();
        features = new ArrayList<>(plan.features());
    }

    /** Whether a blank has six flat sides. */
    public static boolean suits(Blank blank) {
        return blank.kind() == Blank.Kind.BLOCK || blank.kind() == Blank.Kind.PLATE;
    }

    /**
     * The job with the loads in front; the same job where there is nothing left to square.
     *
     * @param stop id of the row of a vise stop for a batch; empty where the shop has none
     */
    public static Job of(DrawnUp drawnUp, Optional<String> stop) {
        Job job = drawnUp.job();
        return suits(job.plan().blank()) ? new SquaringUp(drawnUp, stop.orElse(null)).job() : job;
    }

    private Job job() {
        List<SquaringLoads.Load> loads = SquaringLoads.of(block, clean(), worked(), later());
        List<SetUp> route = new ArrayList<>();
        List<String> ids = new ArrayList<>(plan.setUps().stream().map(SetUp::id).toList());
        for (SquaringLoads.Load load : loads) {
            if (!facedInInk(load.up())) {
                String id = Ids.setUp(ids);
                ids.add(id);
                faced(load.up());
                route.add(setUp(id, load));
            }
        }
        if (!route.isEmpty()) {
            Side last = loads.get(loads.size() - 1).up();
            workAfter(route, last).forEach(work -> {
                String id = Ids.setUp(ids);
                ids.add(id);
                route.add(work.withIds(id, work.operations()));
            });
        }
        route.addAll(plan.setUps());
        return drawnUp.job().withPlan(plan.withFeatures(features).withSetUps(route));
    }

    /** What more is done on a side that is squared before the last: in a set-up of its own, once all sides are square. */
    private List<SetUp> workAfter(List<SetUp> loads, Side last) {
        List<SetUp> work = new ArrayList<>();
        for (DrawnSetUp drawn : drawnUp.setUps()) {
            Side up = drawn.up().value();
            List<Operation> more = drawn.operations().stream()
                    .filter(operation -> operation.kind() != Operation.Kind.FACE)
                    .map(one -> Operation.pencilled(one.id(), one.kind(), one.features()))
                    .toList();
            boolean squared = loads.stream().anyMatch(load -> load.up().equals(Plannable.inked(up)));
            if (drawn.standing() == Standing.PENCILLED && squared && up != last && !more.isEmpty()) {
                work.add(new SetUp(
                        drawn.id(),
                        drawn.title(),
                        Plannable.inked(up),
                        drawn.quarterTurns(),
                        new UndecidedHolding(),
                        drawn.datum(),
                        more));
            }
        }
        return work;
    }

    private SetUp setUp(String id, SquaringLoads.Load load) {
        String title = SetUp.title(load.up())
                + (load.end() ? ", by a square or an indicator" : load.bar() ? ", round bar" : "");
        return new SetUp(
                id, title, Plannable.inked(load.up()), turns(load), vise(id, load), ZeroFinding.EDGES, List.of());
    }

    private ViseHolding vise(String id, SquaringLoads.Load load) {
        ViseHolding vise = load.bar()
                ? ViseField.BETWEEN.write(ViseHolding.pencilled(), Plannable.inked(ViseHolding.Between.ROUND_BAR))
                : ViseHolding.pencilled();
        if (stop == null || plan.numberOff() == 1) {
            return vise;
        }
        double middle = SquaringLoads.of(block, load.solid()).nominal().inside() / 2;
        return vise.withStops(List.of(new StopAt(id + "-stop", stop, Edge.LEFT, length(middle))));
    }

    /** Quarter turns that bring a side to the solid jaw. */
    private static int turns(SquaringLoads.Load load) {
        int turns = 0;
        while (new Attitude(load.up(), turns).sideFacing(Heading.PLUS_Y) != load.solid()) {
            turns++;
        }
        return turns;
    }

    private Set<Side> clean() {
        Set<Side> clean = EnumSet.noneOf(Side.class);
        for (Side side : Side.values()) {
            if (!ROUGH.contains(plan.blank().faces().getOrDefault(side, FaceState.SAWN))
                    && face(side).isEmpty()) {
                clean.add(side);
            }
        }
        return clean;
    }

    private Set<Side> worked() {
        Set<Side> worked = EnumSet.noneOf(Side.class);
        plan.features().stream()
                .filter(feature -> feature.kind() != Feature.Kind.FACE)
                .forEach(feature -> worked.add(feature.side()));
        return worked;
    }

    /** Of two sides that the drawing faces to different sizes the one with the smaller. */
    private Set<Side> later() {
        Set<Side> later = EnumSet.noneOf(Side.class);
        for (Side side : Side.values()) {
            Optional<Double> here = face(side).map(SquaringUp::mm);
            Optional<Double> there = face(side.opposite()).map(SquaringUp::mm);
            if (here.isPresent() && there.isPresent() && here.get() < there.get()) {
                later.add(side);
            }
        }
        return later;
    }

    private static double mm(Face face) {
        return face.across().nominal().inside();
    }

    private Optional<Face> face(Side side) {
        return features.stream()
                .filter(feature -> feature.kind() == Feature.Kind.FACE && feature.side() == side)
                .map(Face.class::cast)
                .findFirst();
    }

    private boolean facedInInk(Side side) {
        return drawnUp.setUps().stream()
                .filter(setUp -> setUp.standing() == Standing.INKED)
                .flatMap(setUp -> setUp.operations().stream())
                .filter(operation -> operation.kind() == Operation.Kind.FACE)
                .anyMatch(operation -> face(side)
                        .filter(face -> operation.features().contains(face.id()))
                        .isPresent());
    }

    /** The side is faced: to what the drawing says, else so far that it comes clean. */
    private void faced(Side side) {
        if (face(side).isPresent()) {
            return;
        }
        List<String> taken = features.stream().map(Feature::id).toList();
        String id = "face" + (features.size() + 1);
        Typed<Length> across = length(across(side));
        features.add(
                new Face(Ids.free(id, taken), "square to " + across.text(), side, Size.of(across), null, GotBy.DIAL));
    }

    /** Where both sides are cut, the first to come leaves the second its half. */
    private double across(Side side) {
        double blank = SquaringLoads.of(block, side).leastMm();
        return face(side.opposite()).map(other -> opposite(blank, other)).orElse(blank - SKIN);
    }

    /** The drawing's size is between both sides; what was put in here is what the first side leaves. */
    private double opposite(double blank, Face other) {
        double there = mm(other);
        boolean ofDrawing = plan.features().contains(other);
        return ofDrawing ? (blank + there) / 2 : there - SKIN;
    }

    private Typed<Length> length(double mm) {
        return new Reading(plan.units()).length(new Printing(plan.units()).of(Measure.LENGTH, mm));
    }
}
