package setwright.location.budget;

import java.util.List;
import setwright.location.Contributor;

/**
 * What a tool by itself makes of a size, as deviations from its nominal size; millimetres.
 *
 * @param aim where the size comes to lie on average, such as over the drill's
 * @param spreads what it scatters by about that
 */
public record Made(double aim, List<Contributor> spreads) {
    public Made {
        spreads = List.copyOf(spreads);
    }
}
