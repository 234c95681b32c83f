package setwright.file.shape;

import java.util.Optional;
import setwright.file.json.Place;
import setwright.file.json.Quoted;
import setwright.file.json.Tree;

/** A tree that is not what its shape accepts. */
final class Unfit extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Place at;

    Unfit(Place at, String message) {
        super(message, null, false, false);
        this.at = at;
    }

    static Unfit wanted(String accepted, Tree found) {
        return wanted(Optional.empty(), accepted, found);
    }

    static Unfit wanted(Optional<String> close, String accepted, Tree found) {
        String hint = close.map(name -> "; " + Quoted.of(name) + " is close").orElse("");
        return new Unfit(found.at(), "Found " + found.found() + hint + "; accepted here: " + accepted + ".");
    }

    Place at() {
        return at;
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
