package setwright.location.budget;

import java.util.Optional;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.fit.ToleranceGrade;

/** Which tolerance grades of ISO 286 a process usually reaches: a band, for the sources disagree by up to three grades. */
public enum ProcessGrade {
    DRILLING("drilling", 10, 13),
    REAMING("reaming", 6, 10),
    BORING("boring", 7, 13),
    MILLING("milling", 10, 13);

    public static final Table BAND = new Table(
            "grade that a process usually reaches",
            "finest and coarsest grade named by any of the three sources",
            Unit.NONE,
            Source.of("Machine Drawing textbook Fig. 15.2 (issuhub.com/view/index?id=5590&pageIndex=233);"
                    + " engineeringessentials.com/ege5/files/ege/tol/tol_page7.htm, its columns from memory;"
                    + " a job shop's guide"));
    private static final int FINEST_LISTED = 5;
    private static final int COARSEST_LISTED = 14;

    private final String words;
    private final int finest;
    private final int coarsest;

    ProcessGrade(String words, int finest, int coarsest) {
        this.words = words;
        this.finest = finest;
        this.coarsest = coarsest;
    }

    public int finest() {
        return finest;
    }

    public int coarsest() {
        return coarsest;
    }

    /** Whether a tolerance is finer than this process usually reaches. */
    public boolean seldomReaches(double nominal, double tolerance) {
        boolean listed = nominal >= 1 && nominal <= 250;
        return asked(nominal, tolerance).map(grade -> grade < finest).orElse(listed);
    }

    /** The coarsest grade that a tolerance takes; empty where it is finer than IT5 or the size is not listed. */
    public static Optional<Integer> asked(double nominal, double tolerance) {
        if (nominal < 1 || nominal > 250) {
            return Optional.empty();
        }
        for (int grade = COARSEST_LISTED; grade >= FINEST_LISTED; grade--) {
            if (ToleranceGrade.of(nominal, grade).tolerance() <= tolerance + 1e-9) {
                return Optional.of(grade);
            }
        }
        return Optional.empty();
    }

    /** The second opinion in words: {@code IT7 is asked; reaming usually reaches IT6 to IT10}. */
    public String opinion(double nominal, double tolerance) {
        String usual = words + " usually reaches IT" + finest + " to IT" + coarsest;
        return asked(nominal, tolerance)
                .map(grade -> "IT" + grade + " is asked; " + usual)
                .orElse(usual);
    }
}
