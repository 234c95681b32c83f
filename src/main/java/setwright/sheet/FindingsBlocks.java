package setwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** What the check found, on the sheet. */
final class FindingsBlocks {
    private FindingsBlocks() {}

    static List<Block> of(Findings findings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("What the check found"));
        blocks.add(Block.Words.of(findings.head()));
        add(blocks, "Cautions open", findings.open());
        add(blocks, "Cautions accepted", findings.accepted());
        add(blocks, "Not checked", findings.notChecked());
        return blocks;
    }

    private static void add(List<Block> blocks, String heading, List<String> lines) {
        blocks.add(new Block.Heading(heading + ": " + (lines.isEmpty() ? "none" : Integer.toString(lines.size()))));
        if (!lines.isEmpty()) {
            blocks.add(new Block.Words(lines));
        }
    }
}
