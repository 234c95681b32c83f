package setwright.plan.part;

import java.util.List;
import java.util.stream.Stream;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Divided;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Slit;
import setwright.job.WoodruffSeat;

/** Which side has to be up for a feature: its own, but for what a disc cuts level and what lies in a dividing head. */
public final class MadeFrom {
    private static final double SAME = 1e-6;

    private MadeFrom() {}

    /** The side that is up when a feature is made: of those that serve, the first that a written set-up has up. */
    public static Side up(Feature feature, Job job) {
        List<Side> all = sides(feature, job.plan().blank().envelope());
        return job.plan().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream()
                                .anyMatch(operation -> operation.features().contains(feature.id()))
                        ? inked(setUp)
                        : Stream.empty())
                .filter(all::contains)
                .findFirst()
                .or(() -> job.plan().setUps().stream()
                        .flatMap(MadeFrom::inked)
                        .filter(all::contains)
                        .findFirst())
                .orElse(all.get(0));
    }

    /** Whether a feature is flats round an axis that stands when they are made. */
    public static boolean standingFlats(Feature feature, Job job) {
        boolean flats = feature.kind() == Feature.Kind.FLATS
                || feature instanceof Divided divided && divided.what() == Divided.What.FLATS;
        return flats && up(feature, job) == feature.side();
    }

    private static Stream<Side> inked(SetUp setUp) {
        return setUp.up() instanceof Plannable.Inked<Side> side ? Stream.of(side.value()) : Stream.empty();
    }

    private static List<Side> sides(Feature feature, Block block) {
        return switch (feature.kind()) {
            case SLIT -> slit((Slit) feature);
            case WOODRUFF_SEAT -> across(feature.side(), alongU((WoodruffSeat) feature, block));
            case FLATS -> besideOrUp(feature.side());
            case DIVIDED ->
                switch (((Divided) feature).what()) {
                    case TEETH, SPLINES, FLATS -> besideOrUp(feature.side());
                    case GRADUATIONS, HOLES -> List.of(feature.side());
                };
            default -> List.of(feature.side());
        };
    }

    private static List<Side> slit(Slit slit) {
        double angle = slit.place().angle() == null ? 0 : slit.place().angle().inside();
        if (Math.abs(StrictMath.sin(angle)) < SAME) {
            return across(slit.side(), true);
        }
        return Math.abs(StrictMath.cos(angle)) < SAME ? across(slit.side(), false) : List.of(slit.side());
    }

    /** Square to what runs along u, or along v, of a side. */
    private static List<Side> across(Side side, boolean alongU) {
        Side one = Side.facing(alongU ? side.v() : side.u());
        return List.of(one, one.opposite());
    }

    /** With the axis lying; or standing, where somebody wrote that down. */
    private static List<Side> besideOrUp(Side axis) {
        Stream<Side> beside = Stream.of(Side.TOP, Side.FRONT, Side.BACK, Side.RIGHT, Side.LEFT, Side.BOTTOM)
                .filter(side -> side != axis && side != axis.opposite());
        return Stream.concat(beside, Stream.of(axis)).toList();
    }

    /** Whether the shaft of a seat runs along u of its side: the longer way. */
    private static boolean alongU(WoodruffSeat seat, Block block) {
        Lying lying = Lying.of(block, seat.side(), 0);
        return lying.along().nominal().inside() >= lying.across().nominal().inside();
    }

    /** The same on the table. */
    static boolean alongU(WoodruffSeat seat, Heights heights, Laid laid) {
        return SideBeside.of(laid, seat.side(), heights)
                .map(side -> side.level(0) == side.length() >= side.height())
                .orElse(false);
    }
}
