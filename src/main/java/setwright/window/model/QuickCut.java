package setwright.window.model;

import java.util.Optional;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.Unreadable;

/**
 * Depth and width of a cut as one text: {@code 5 x 6}, or {@code 20} where the width follows from the cutter.
 *
 * @param width empty where only a depth was typed
 */
record QuickCut(Typed<Length> depth, Optional<Typed<Length>> width) {
    /** @throws Unreadable where the text says neither */
    static QuickCut read(Reading reading, String text) {
        String[] parts = text.strip().split("\\s*[x×*]\\s*", -1);
        if (parts.length > 2) {
            throw new Unreadable("takes a depth, or depth x width, for instance 5 x 6");
        }
        Typed<Length> depth = Sort.SIZE.read().apply(reading, parts[0]);
        return new QuickCut(
                depth,
                parts.length == 1
                        ? Optional.empty()
                        : Optional.of(Sort.SIZE.read().apply(reading, parts[1])));
    }
}
