package setwright.caution;

import java.util.List;
import setwright.caution.check.DrillMeetsParallel;
import setwright.caution.check.HolderMeets;
import setwright.caution.check.NoRoomToChangeTool;
import setwright.caution.check.QuillRunsOut;

/** What touches, and what does not fit between table and spindle. */
final class RoomChecks {
    static final List<Check> ALL = List.of(
            new DrillMeetsParallel(),
            HolderMeets.jaw(),
            HolderMeets.work(),
            new NoRoomToChangeTool(),
            new QuillRunsOut());

    private RoomChecks() {}
}
