package setwright.caution;

/** How bad a caution is. On screen a stop reads "do not run": a stop at the machine is a vise stop or quill stop. */
public enum Severity {
    STOP("stop", "do not run"),
    CAUTION("caution", "caution"),
    NOTE("note", "note");

    private final String written;
    private final String onScreen;

    Severity(String written, String onScreen) {
        this.written = written;
        this.onScreen = onScreen;
    }

    /** As written in files and answers. */
    public String written() {
        return written;
    }

    public String onScreen() {
        return onScreen;
    }

    /** The worse of two. */
    public Severity worse(Severity other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
