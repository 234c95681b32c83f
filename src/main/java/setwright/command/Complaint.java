package setwright.command;

/** Why a command cannot do what it was asked; goes to standard error, and the exit code is 2. */
final class Complaint extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Complaint(String message) {
        super(message);
    }
}
