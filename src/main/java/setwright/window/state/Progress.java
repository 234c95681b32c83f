package setwright.window.state;

import java.util.concurrent.CancellationException;

/** How far a piece of background work has got, and whether anybody still wants it. */
public final class Progress {
    private volatile boolean cancelled;
    private volatile Standing standing = new Standing("", 0, 0);

    /**
     * Where the work stands.
     *
     * @param doing what it is at, in words; empty before the first word
     * @param done pieces done
     * @param of pieces in all; 0 where nobody knows
     */
    public record Standing(String doing, int done, int of) {}

    public void cancel() {
        cancelled = true;
    }

    public boolean cancelled() {
        return cancelled;
    }

    /**
     * Says how far the work is.
     *
     * @throws CancellationException where nobody wants it any more
     */
    public void at(String doing, int done, int of) {
        if (cancelled) {
            throw new CancellationException(doing);
        }
        standing = new Standing(doing, done, of);
    }

    public Standing standing() {
        return standing;
    }
}
