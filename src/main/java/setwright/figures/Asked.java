package setwright.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.quantity.Given;
import setwright.quantity.UnitSystem;
import setwright.shop.Material;
import setwright.shop.Shop;

/** The inputs of a question, read and found within their ranges. */
public final class Asked {

    private final Map<String, ReadInput> read;
    private final Shop shop;

    private Asked(Map<String, ReadInput> read, Shop shop) {
        this.read = read;
        this.shop = shop;
    }

    /** @throws Refusal where an input is unknown, missing, unreadable or out of its range */
    static Asked of(Question question, List<Input> inputs, UnitSystem units, Shop shop) {
        List<String> keys = inputs.stream().map(Input::key).toList();
        for (String key : question.typed().keySet()) {
            if (!keys.contains(key)) {
                throw Refusal.of(
                        key, question.figure() + " has no such input; it takes " + String.join(", ", keys) + ".");
            }
        }
        Map<String, ReadInput> read = new LinkedHashMap<>();
        for (Input input : inputs) {
            String typed = question.typed().getOrDefault(input.key(), "");
            if (!typed.isBlank()) {
                read.put(input.key(), ReadInput.of(input, typed, units));
            } else if (input.required()) {
                throw Refusal.of(input.key(), "it is missing; accepted: " + input.accepted() + ".");
            } else if (!input.standard().isEmpty()) {
                read.put(input.key(), ReadInput.standard(input));
            }
        }
        return new Asked(read, shop);
    }

    /** How each input was read, in order. */
    public List<ReadInput> inputs() {
        return List.copyOf(read.values());
    }

    Shop shop() {
        return shop;
    }

    boolean has(String key) {
        return read.containsKey(key);
    }

    private ReadInput input(String key) {
        ReadInput input = read.get(key);
        if (input == null) {
            throw Refusal.of(key, "it is missing.");
        }
        return input;
    }

    /** A measure or count as a given of a working. */
    Given value(String key) {
        return input(key).values().get(0);
    }

    /** The same, or another where it is left out. */
    Given valueOr(String key, Given other) {
        return has(key) ? value(key) : other;
    }

    double number(String key) {
        return value(key).inside();
    }

    double numberOr(String key, double other) {
        return has(key) ? number(key) : other;
    }

    int count(String key) {
        return (int) number(key);
    }

    List<Given> list(String key) {
        return input(key).values();
    }

    /** What was typed for a choice or words. */
    String words(String key) {
        return input(key).words();
    }

    boolean is(String key, String choice) {
        return words(key).equals(choice);
    }

    Material material() {
        String called = words("material");
        return shop.material(called)
                .orElseThrow(() -> Refusal.of(
                        "material",
                        "the shop has no '" + called + "'; accepted: "
                                + String.join(
                                        ", ",
                                        shop.all(Material.class).stream()
                                                .map(Material::id)
                                                .toList())
                                + "."));
    }

    /** One of several inputs has to be there. */
    void requireOneOf(String... keys) {
        for (String key : keys) {
            if (has(key)) {
                return;
            }
        }
        throw Refusal.of(keys[0], "it is missing; give " + String.join(" or ", keys) + ".");
    }
}
