package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.drawing.HoleNumbers;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.part.SetUpStage;
import setwright.plan.room.SetUpRoom;

/** One set-up on the sheet: holding, zero, heights, operations, places of holes. */
final class SetUpBlocks {
    private final Shown shown;
    private final DrawnSetUp setUp;

    SetUpBlocks(Shown shown, DrawnSetUp setUp) {
        this.shown = shown;
        this.setUp = setUp;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        Optional<SetUpStage> stage = shown.plan().part().setUp(setUp.id());
        blocks.add(new Block.Heading("Set-up " + setUp.id() + ": " + title()));
        blocks.add(new Block.Pairs(new HoldingPairs(shown, setUp).pairs()));
        shown.plan().room().setUp(setUp.id()).ifPresent(room -> heights(blocks, room));
        blocks.add(new Block.Heading("Operations of set-up " + setUp.id()));
        int number = 1;
        for (DrawnOperation operation : setUp.operations()) {
            blocks.add(new OperationEntry(shown, operation).block(number++));
        }
        stage.ifPresent(found -> holes(blocks, found));
        shown.plan().index().setUp(setUp.id()).forEach(index -> blocks.addAll(new IndexBlocks(shown, index).blocks()));
        blocks.addAll(new TruthBlocks(shown, setUp).blocks());
        return blocks;
    }

    private String title() {
        String up = Shown.word(setUp.up().value()) + " side up";
        return setUp.title().toLowerCase(Locale.ROOT).contains(up) ? setUp.title() : setUp.title() + ", " + up;
    }

    private void heights(List<Block> blocks, SetUpRoom room) {
        blocks.add(new Block.Heading("Heights over the table"));
        List<List<String>> rows = new ArrayList<>();
        for (int i = room.levels().size() - 1; i >= 0; i--) {
            rows.add(List.of(
                    room.levels().get(i).name(),
                    shown.length(room.levels().get(i).height())));
        }
        blocks.add(new Block.Table(List.of(Block.Column.words("level"), Block.Column.figures("height")), rows));
        blocks.add(Block.Words.of("Z is touched off " + times(room.touchOffs()) + "; the knee stands at "
                + room.kneeHeights().size() + (room.kneeHeights().size() == 1 ? " height" : " heights")
                + (room.movedZeros() == 0 ? "." : "; its zero moves by the dial " + times(room.movedZeros()) + ".")));
    }

    private static String times(int count) {
        return count == 1 ? "once" : count + " times";
    }

    private void holes(List<Block> blocks, SetUpStage stage) {
        HoleNumbers numbers = HoleNumbers.of(stage);
        if (numbers.places().isEmpty()) {
            return;
        }
        Positions positions = new Positions(shown, setUp, stage.heights());
        blocks.add(new Block.Heading("Places of the holes"));
        ZeroWords zero = new ZeroWords(setUp.datum(), shown.plan().rows().machine());
        blocks.add(Block.Words.of(positions.from() + ". " + positions.reading()));
        blocks.add(Block.Words.of("To find it: " + zero.find() + "."));
        if (!zero.dials().isEmpty()) {
            blocks.add(Block.Words.of("Dials: " + zero.dials() + "."));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Point2 place : numbers.places()) {
            rows.add(List.of(Integer.toString(numbers.at(place)), positions.x(place), positions.y(place)));
        }
        blocks.add(new Block.Table(
                List.of(Block.Column.figures("hole"), Block.Column.figures("X"), Block.Column.figures("Y")), rows));
        new CircleWords(shown, setUp, stage, positions).lines().forEach(line -> blocks.add(Block.Words.of(line)));
    }
}
