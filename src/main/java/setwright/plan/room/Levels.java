package setwright.plan.room;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnTable;
import setwright.job.InWords;
import setwright.plan.part.Heights;
import setwright.reach.Level;

/** The levels of a set-up from the table up, each called by the thing whose level it is. */
final class Levels {
    private Levels() {}

    static List<Level> of(DrawnHolding holding, Heights heights) {
        List<Level> levels = new ArrayList<>();
        levels.add(new Level("table", 0));
        switch (holding.kind()) {
            case VISE -> addVise(levels, heights);
            case TABLE -> addTable(levels, (DrawnTable) holding, heights);
            case DEVICE -> addDevice(levels, (DrawnDevice) holding, heights);
        }
        levels.add(new Level("finished top", heights.finishedTop()));
        if (heights.startTop() > heights.finishedTop()) {
            levels.add(new Level("blank top, largest", heights.startTop()));
        }
        return levels;
    }

    private static void addVise(List<Level> levels, Heights heights) {
        levels.add(new Level("vise bed", heights.bed()));
        if (heights.partBottom() > heights.bed()) {
            levels.add(new Level("top of parallels", heights.partBottom()));
        }
        levels.add(new Level("jaw top", heights.jawTop()));
    }

    private static void addTable(List<Level> levels, DrawnTable holding, Heights heights) {
        switch (holding.seat().value()) {
            case PACKING -> levels.add(new Level("top of packing", heights.partBottom()));
            case JACKS -> levels.add(new Level("top of jacks", heights.partBottom()));
            case TABLE, T_SLOT -> {}
        }
        addClamps(levels, heights);
    }

    private static void addDevice(List<Level> levels, DrawnDevice holding, Heights heights) {
        if (heights.bed() > 0) {
            String device = holding.on() == DeviceHolding.On.COLLET_BLOCK ? "vise bed" : InWords.word(holding.on());
            levels.add(new Level(device, heights.bed()));
        }
        if (heights.partBottom() > heights.bed()) {
            levels.add(new Level("part bottom", heights.partBottom()));
        }
        addClamps(levels, heights);
    }

    private static void addClamps(List<Level> levels, Heights heights) {
        if (heights.jawTop() > heights.startTop()) {
            levels.add(new Level("top of clamps", heights.jawTop()));
        }
    }
}
