package setwright.caution;

import java.util.List;
import setwright.caution.check.ToolSprings;
import setwright.caution.check.WrongHolder;

/** What holder, cutter and spindle can take. */
final class ToolChecks {
    static final List<Check> ALL = List.of(new WrongHolder(), new ToolSprings());

    private ToolChecks() {}
}
