package setwright.command;

import java.util.stream.Collectors;
import setwright.file.RowNote;

/** Says what of a job's copy of a shop row is not what the shop has. */
final class RowWords {
    private RowWords() {}

    static String of(RowNote note) {
        if (note.inShop() == null) {
            return note.copy().name() + " is not in the shop; the job's own copy of its row is used.";
        }
        return note.copy().name() + " is not as the shop has it; the job's own copy is used: "
                + note.differences().stream()
                        .map(one -> one.key() + " " + one.copy() + " (the shop: " + one.inShop() + ")")
                        .collect(Collectors.joining(", "))
                + ".";
    }
}
