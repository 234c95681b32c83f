package setwright.window.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A bench figure as it is being asked for.
 *
 * @param search what was typed to find it
 * @param figure its name; empty while it is looked for
 * @param typed what stands in its blanks
 * @param recent names of the figures that were asked for last, the newest first
 */
public record BenchQuestion(
        boolean open, String search, String figure, Map<String, String> typed, List<String> recent) {
    private static final int KEPT = 8;

    public static final BenchQuestion CLOSED = closed(List.of());

    public BenchQuestion {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
        recent = List.copyOf(recent);
    }

    /** Nothing is asked yet; these were asked for in an earlier session. */
    public static BenchQuestion closed(List<String> recent) {
        return new BenchQuestion(false, "", "", Map.of(), recent);
    }

    /** A new question. */
    public BenchQuestion opened() {
        return new BenchQuestion(true, "", "", Map.of(), recent);
    }

    public BenchQuestion closed() {
        return new BenchQuestion(false, search, figure, typed, figure.isEmpty() ? recent : newest(figure));
    }

    /** Whoever looks on has not chosen yet. */
    public BenchQuestion searching(String text) {
        return new BenchQuestion(open, text, "", Map.of(), recent);
    }

    /** The search itself named the figure and what stands in its blanks. */
    public BenchQuestion filled(String name, Map<String, String> blanks) {
        return new BenchQuestion(open, search, name, blanks, recent);
    }

    /** What was typed for it before stands in its blanks still. */
    public BenchQuestion choosing(String name) {
        return new BenchQuestion(open, search, name, name.equals(figure) ? typed : Map.of(), newest(name));
    }

    private List<String> newest(String name) {
        List<String> names = new ArrayList<>(recent);
        names.remove(name);
        names.add(0, name);
        return names.subList(0, Math.min(KEPT, names.size()));
    }

    public BenchQuestion with(String blank, String text) {
        Map<String, String> changed = new LinkedHashMap<>(typed);
        changed.put(blank, text);
        return new BenchQuestion(open, search, figure, changed, recent);
    }
}
