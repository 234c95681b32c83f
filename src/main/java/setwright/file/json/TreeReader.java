package setwright.file.json;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** Takes the tokens of a JSON text into a {@link Tree}. */
final class TreeReader {
    private final JsonParser parser;
    private final String text;
    private final Problems problems = new Problems();
    private final Deque<Place> open = new ArrayDeque<>();

    private TreeReader(JsonParser parser, String text) {
        this.parser = parser;
        this.text = text;
    }

    static TreeRead read(String text) {
        if (text.length() > Limits.DOCUMENT) {
            return TreeRead.refused(tooLong());
        }
        if (text.isBlank()) {
            return TreeRead.refused(Problem.at(new Place(1, 1), "", "The file is empty."));
        }
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(Limits.constraints())
                .build();
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
            return new TreeReader(parser, text).whole();
        }
    }

    static Problem tooLong() {
        return Problem.whole("The file is larger than " + Limits.DOCUMENT / (1024 * 1024)
                + " MB; no job or shop file is so large, so nothing of it was read.");
    }

    private TreeRead whole() {
        Optional<Tree> tree = Optional.empty();
        try {
            parser.nextToken();
            Tree read = value();
            if (parser.nextToken() == null) {
                tree = Optional.of(read);
            } else {
                problems.add(here(), "", "The file goes on after its closing bracket; one value is read, no more.");
            }
        } catch (JacksonException e) {
            problems.add(new Syntax(text, open).problem(e, place(parser.currentLocation()), Way.to(parser)));
        }
        return new TreeRead(tree, problems.inOrder());
    }

    private Tree value() {
        Place at = here();
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(at);
            case START_ARRAY -> array(at);
            case VALUE_STRING -> new Tree.Text(at, parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Tree.Numeral(at, parser.getString());
            case VALUE_TRUE -> new Tree.Flag(at, true);
            case VALUE_FALSE -> new Tree.Flag(at, false);
            case VALUE_NULL -> new Tree.Nothing(at);
            case END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                throw new IllegalStateException("A JSON value does not start with " + parser.currentToken() + ".");
        };
    }

    private Tree object(Place at) {
        open.push(at);
        Map<String, Tree.Member> members = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String key = parser.currentName();
            Place keyAt = here();
            Tree.Member first = members.get(key);
            if (first != null) {
                twice(key, keyAt, first.at());
            }
            parser.nextToken();
            members.putIfAbsent(key, new Tree.Member(key, keyAt, value()));
        }
        open.pop();
        return new Tree.JsonObject(at, List.copyOf(members.values()));
    }

    private void twice(String key, Place second, Place first) {
        problems.add(
                second,
                Way.to(parser),
                "The key " + Quoted.of(key) + " stands twice in this object, first at " + first.words()
                        + "; keep one of the two.");
    }

    private Tree array(Place at) {
        open.push(at);
        List<Tree> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value());
        }
        open.pop();
        return new Tree.JsonArray(at, items);
    }

    private Place here() {
        return place(parser.currentTokenLocation());
    }

    static Place place(@Nullable TokenStreamLocation location) {
        return location == null ? Place.NONE : new Place(location.getLineNr(), location.getColumnNr());
    }
}
