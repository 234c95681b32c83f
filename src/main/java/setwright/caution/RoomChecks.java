package setwright.caution;

import java.util.List;
import setwright.caution.check.ArborFlange;
import setwright.caution.check.ClampOnTheCut;
import setwright.caution.check.CutterMeets;
import setwright.caution.check.DrillMeets;
import setwright.caution.check.HangsOff;
import setwright.caution.check.HolderMeets;
import setwright.caution.check.KneeRunsOut;
import setwright.caution.check.NoRoomToChangeTool;
import setwright.caution.check.OpeningTooSmall;
import setwright.caution.check.PieceComesLoose;
import setwright.caution.check.QuillRunsOut;
import setwright.caution.check.SawPinched;
import setwright.caution.check.ShankRubs;
import setwright.caution.check.StudInPath;
import setwright.caution.check.TravelTooShort;

/** What touches, and what does not fit between table and spindle. */
final class RoomChecks {
    static final List<Check> ALL = List.of(
            DrillMeets.parallel(),
            DrillMeets.bed(),
            CutterMeets.packing(),
            CutterMeets.jaw(),
            CutterMeets.clamp(),
            CutterMeets.stop(),
            HolderMeets.jaw(),
            HolderMeets.clamp(),
            HolderMeets.work(),
            HolderMeets.nose(),
            new ArborFlange(),
            new ShankRubs(),
            new NoRoomToChangeTool(),
            new QuillRunsOut(),
            new KneeRunsOut(),
            new TravelTooShort(),
            new HangsOff(),
            new OpeningTooSmall(),
            new StudInPath(),
            new ClampOnTheCut(),
            new PieceComesLoose(),
            new SawPinched());

    private RoomChecks() {}
}
