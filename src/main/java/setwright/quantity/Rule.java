package setwright.quantity;

/** A published way to work something out: a formula, a table or a procedure, with its source. */
public sealed interface Rule permits Formula, Table, Procedure {
    /** What the rule gives, in the trade's words. */
    String name();

    /** The formula as written, the table's name, or the steps in words. */
    String text();

    Source source();

    Kind kind();

    enum Kind {
        FORMULA,
        TABLE,
        PROCEDURE
    }
}
