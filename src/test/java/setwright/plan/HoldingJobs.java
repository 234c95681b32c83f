package setwright.plan;

import static setwright.plan.HoldingShop.angle;
import static setwright.plan.HoldingShop.length;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.Block;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Holding;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Keyseat;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Plannable;
import setwright.job.Plate;
import setwright.job.RoundBar;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.Tilt;
import setwright.job.ZeroFinding;
import setwright.shop.Shop;

/** Parts of the telescope mount, each held in another way. */
public final class HoldingJobs {
    private HoldingJobs() {}

    public static Size size(String text) {
        return Size.of(length(text));
    }

    public static Blank plate(String length, String depth, String thickness) {
        return new Plate(size(length), size(depth), size(thickness), Map.of());
    }

    public static Blank block(String length, String depth, String height) {
        return new Block(size(length), size(depth), size(height), Map.of());
    }

    public static Blank bar(String diameter, String length) {
        return new RoundBar(size(diameter), size(length), Map.of());
    }

    /** Plain holes on a grid about the middle of the top. */
    public static Feature holes(
            String id, Side side, String size, @Nullable String depth, int columns, String u, int rows, String v) {
        return new Hole(
                id,
                "",
                side,
                Hole.Make.PLAIN,
                size(size),
                null,
                null,
                depth == null ? null : size(depth),
                new Pattern.Grid(
                        Pattern.Datum.CENTRE,
                        new Pattern.Place(length("0 mm"), length("0 mm")),
                        columns,
                        rows,
                        length(u),
                        length(v)),
                null,
                GotBy.TOOL);
    }

    public static Feature keyseat(Side side, String shaft) {
        return new Keyseat(
                "key1",
                "",
                side,
                size(shaft),
                size("8 mm"),
                size("4 mm"),
                Keyseat.From.CROWN,
                size("30 mm"),
                new Placed(Pattern.Datum.CENTRE, length("0 mm"), length("0 mm"), angle("90 deg")),
                null,
                GotBy.TOOL);
    }

    public static Job job(Blank blank, List<Feature> features, List<SetUp> setUps) {
        Job block = BearingBlock.job();
        JobPlan plan = block.plan();
        return block.withPlan(plan.withBlank(blank)
                .withRelations(List.of())
                .withReceived(List.of())
                .withFeatures(features)
                .withSetUps(setUps));
    }

    public static SetUp setUp(Side up, int quarterTurns, Holding holding) {
        return new SetUp("s1", "First", Plannable.inked(up), quarterTurns, holding, ZeroFinding.EDGES, List.of());
    }

    public static SetUp tilted(SetUp setUp, Tilt tilt) {
        return setUp.withTilt(tilt);
    }

    public static Plan plan(Blank blank, List<Feature> features, List<SetUp> setUps) {
        return plan(job(blank, features, setUps));
    }

    public static Plan plan(Job job) {
        Shop shop = HoldingShop.shop();
        return Planner.plan(job, shop);
    }
}
