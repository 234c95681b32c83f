package setwright.caution;

import java.util.List;
import setwright.caution.check.BarDoesNotFitHole;
import setwright.caution.check.BarSprings;
import setwright.caution.check.BeltSlips;
import setwright.caution.check.CannotPlunge;
import setwright.caution.check.ChatterLikely;
import setwright.caution.check.ClimbPullsTable;
import setwright.caution.check.FeedOutOfRange;
import setwright.caution.check.GivesInHolder;
import setwright.caution.check.OffsetTooLarge;
import setwright.caution.check.PushTooHeavy;
import setwright.caution.check.QuillFarOut;
import setwright.caution.check.QuillFeedOverloaded;
import setwright.caution.check.ReamAllowance;
import setwright.caution.check.ShortGrip;
import setwright.caution.check.SlotComesWide;
import setwright.caution.check.SpeedOutOfRange;
import setwright.caution.check.SpindleOverloaded;
import setwright.caution.check.TooFastForTool;
import setwright.caution.check.ToolBreaks;
import setwright.caution.check.ToolSprings;
import setwright.caution.check.WrongHolder;

/** What holder, cutter and spindle can take. */
final class ToolChecks {
    static final List<Check> ALL = List.of(
            new WrongHolder(),
            new ShortGrip(),
            GivesInHolder.pullsOut(),
            GivesInHolder.slips(),
            new TooFastForTool(),
            new CannotPlunge(),
            new SpeedOutOfRange(),
            new SpindleOverloaded(),
            new BeltSlips(),
            new FeedOutOfRange(),
            new QuillFeedOverloaded(),
            new PushTooHeavy(),
            new ClimbPullsTable(),
            new ToolBreaks(),
            new ToolSprings(),
            new BarSprings(),
            new SlotComesWide(),
            new ChatterLikely(),
            new QuillFarOut(),
            new ReamAllowance(),
            new BarDoesNotFitHole(),
            new OffsetTooLarge());

    private ToolChecks() {}
}
