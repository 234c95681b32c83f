package setwright.caution;

import java.util.List;
import setwright.caution.check.DrillGrabs;
import setwright.caution.check.DrillWanders;
import setwright.caution.check.HeadStillTilted;
import setwright.caution.check.HoldingFaceGone;
import setwright.caution.check.LoadsWrongWayRound;
import setwright.caution.check.MaterialHazard;
import setwright.caution.check.NearDrillSize;
import setwright.caution.check.NotInShop;
import setwright.caution.check.OffDrawing;
import setwright.caution.check.OffTolerance;
import setwright.caution.check.OrderBroken;
import setwright.caution.check.Overweight;
import setwright.caution.check.RelatedFeaturesSplit;
import setwright.caution.check.RoughFaceAsDatum;
import setwright.caution.check.ShopRowChanged;
import setwright.caution.check.TapBottoms;
import setwright.caution.check.TapOffAxis;
import setwright.caution.check.Thermal;
import setwright.caution.check.WillNotCleanUp;
import setwright.caution.check.XyLost;
import setwright.caution.check.ZLost;

/** Location, order and the batch. */
final class PlaceChecks {
    static final List<Check> ALL = List.of(
            new OffTolerance(),
            new RelatedFeaturesSplit(),
            new HoldingFaceGone(),
            new RoughFaceAsDatum(),
            new WillNotCleanUp(),
            OffDrawing.left(),
            OffDrawing.tooMuch(),
            new LoadsWrongWayRound(),
            new DrillWanders(),
            new DrillGrabs(),
            new TapBottoms(),
            new TapOffAxis(),
            new ZLost(),
            new XyLost(),
            new OrderBroken(),
            new NearDrillSize(),
            new NotInShop(),
            new Overweight(),
            new MaterialHazard(),
            new Thermal(),
            new ShopRowChanged(),
            new HeadStillTilted());

    private PlaceChecks() {}
}
