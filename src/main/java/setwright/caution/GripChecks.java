package setwright.caution;

import java.util.List;
import setwright.caution.check.ClampOverAir;
import setwright.caution.check.CutSkimsTheSkin;
import setwright.caution.check.DeviceSlidesOnTable;
import setwright.caution.check.ForceOffSolidJaw;
import setwright.caution.check.GivesInGrip;
import setwright.caution.check.GripTooShallow;
import setwright.caution.check.HeelLow;
import setwright.caution.check.IndexNotLocked;
import setwright.caution.check.MarksFinishedFace;
import setwright.caution.check.NoHoleForBolt;
import setwright.caution.check.NoSlotUnderStud;
import setwright.caution.check.NothingHolds;
import setwright.caution.check.OneEndOfJaws;
import setwright.caution.check.RoundOnTwoLines;
import setwright.caution.check.SlotOverloaded;
import setwright.caution.check.SpringsWhenReleased;
import setwright.caution.check.StudNearHeel;
import setwright.caution.check.StudTooShort;
import setwright.caution.check.ThinWall;
import setwright.caution.check.UnequalGang;
import setwright.caution.check.WorkSprings;

/** What holds the work. */
final class GripChecks {
    static final List<Check> ALL = List.of(
            new NothingHolds(),
            GivesInGrip.slides(),
            GivesInGrip.lifts(),
            GivesInGrip.tips(),
            new DeviceSlidesOnTable(),
            new GripTooShallow(),
            new ForceOffSolidJaw(),
            new OneEndOfJaws(),
            new SpringsWhenReleased(),
            new WorkSprings(),
            new ThinWall(),
            new MarksFinishedFace(),
            new CutSkimsTheSkin(),
            new ClampOverAir(),
            new NoSlotUnderStud(),
            new NoHoleForBolt(),
            new HeelLow(),
            new StudNearHeel(),
            new StudTooShort(),
            new SlotOverloaded(),
            new RoundOnTwoLines(),
            new UnequalGang(),
            new IndexNotLocked());

    private GripChecks() {}
}
