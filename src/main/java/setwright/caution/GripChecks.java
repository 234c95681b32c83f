package setwright.caution;

import java.util.List;
import setwright.caution.check.GivesInGrip;

/** What holds the work. */
final class GripChecks {
    static final List<Check> ALL = List.of(GivesInGrip.slides(), GivesInGrip.lifts(), GivesInGrip.tips());

    private GripChecks() {}
}
