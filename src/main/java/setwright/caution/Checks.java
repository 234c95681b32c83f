package setwright.caution;

import java.util.List;
import setwright.caution.check.DrillMeetsParallel;
import setwright.caution.check.GivesInGrip;
import setwright.caution.check.HolderMeets;
import setwright.caution.check.NoRoomToChangeTool;
import setwright.caution.check.QuillRunsOut;
import setwright.caution.check.TapBottoms;
import setwright.caution.check.ToolSprings;
import setwright.caution.check.WrongHolder;

/** Every check of the program, in the order in which their cautions are listed. */
public final class Checks {
    public static final List<Check> ALL = List.of(
            new DrillMeetsParallel(),
            HolderMeets.jaw(),
            HolderMeets.work(),
            new WrongHolder(),
            new NoRoomToChangeTool(),
            new QuillRunsOut(),
            GivesInGrip.slides(),
            GivesInGrip.lifts(),
            GivesInGrip.tips(),
            new TapBottoms(),
            new ToolSprings());

    private Checks() {}

    /** Every slug, in the order of {@link #ALL}. */
    public static List<String> slugs() {
        return ALL.stream().map(Check::slug).toList();
    }
}
