package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.plan.part.TableCover;
import setwright.quantity.Measure;
import setwright.quantity.Printing;

/** A large part on the table in words. */
record CoverWords(TableCover cover, Printing printing) {
    /** From this mass on it is said, kg (common practice: one person at arm's length). */
    private static final double HEAVY = 10;

    String text() {
        List<String> said = new ArrayList<>();
        if (cover.hidesAll()) {
            said.add("it hides all " + cover.slots() + " T-slots: studs only at its ends or through its own holes");
        }
        if (cover.front() > 0 || cover.back() > 0) {
            said.add("it reaches " + over(cover.front(), "front") + both() + over(cover.back(), "back")
                    + " of the table");
        }
        if (cover.end() > 0) {
            said.add("it reaches " + length(cover.end()) + " beyond the end of the table");
        }
        if (!cover.tooShort().isEmpty()) {
            said.add("its cuts want " + length(cover.travel()) + " of X, more than there is on "
                    + String.join(", ", cover.tooShort()));
        }
        if (cover.mass() > HEAVY) {
            said.add("it weighs " + printing.of(Measure.MASS, cover.mass(), 1));
        }
        return String.join("; ", said);
    }

    private String over(double mm, String edge) {
        return mm > 0 ? length(mm) + " beyond the " + edge : "";
    }

    private String both() {
        return cover.front() > 0 && cover.back() > 0 ? " and " : "";
    }

    private String length(double mm) {
        return printing.of(Measure.LENGTH, mm);
    }
}
