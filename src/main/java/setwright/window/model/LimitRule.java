package setwright.window.model;

import java.util.List;
import java.util.stream.Collectors;

/**
 * How far one choice of an operation can go before something binds it.
 *
 * @param key of the field that is the choice
 * @param name of the choice
 * @param now where it stands
 * @param nowText the same as printed
 * @param end of the scale; all pins lie on it
 * @param pins where each limit binds, the nearest first
 */
public record LimitRule(String key, String name, double now, String nowText, double end, List<Pin> pins) {
    public LimitRule {
        pins = List.copyOf(pins);
    }

    /**
     * A limit on the scale.
     *
     * @param text where it binds, as printed
     */
    public record Pin(String name, double at, String text) {}

    /** Whether the choice stands beyond what binds first. */
    public boolean broken() {
        return !pins.isEmpty() && now > pins.get(0).at();
    }

    /** For who hears it instead of seeing it. */
    public String spoken() {
        return name + " " + nowText + ". "
                + pins.stream()
                        .map(pin -> pin.name() + " binds at " + pin.text())
                        .collect(Collectors.joining(", "));
    }
}
