package setwright.job.note;

/** A piece of a note: a number with its unit, a word, a named thread or drill, a tolerance class, or a sign. */
record Piece(Kind kind, String text, int from, int to) {
    enum Kind {
        NUMBER,
        WORD,
        THREAD,
        DRILL,
        FIT,
        CLASS,
        SIGN
    }

    boolean is(Kind wanted) {
        return kind == wanted;
    }

    boolean sign(String wanted) {
        return kind == Kind.SIGN && text.equals(wanted);
    }

    boolean word(String wanted) {
        return kind == Kind.WORD && text.equals(wanted);
    }

    /** Whether it stands without a blank behind the other. */
    boolean touches(Piece before) {
        return from == before.to;
    }
}
