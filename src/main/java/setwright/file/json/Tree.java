package setwright.file.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A JSON value that remembers where it stood. */
public sealed interface Tree {
    Place at();

    Kind kind();

    /** What was found here, in words. */
    String found();

    /** The kinds of JSON value. */
    enum Kind {
        OBJECT,
        ARRAY,
        TEXT,
        NUMERAL,
        FLAG,
        NOTHING
    }

    /** A key of an object, where it stood, and its value. */
    record Member(String key, Place at, Tree value) {}

    /** Keys with values, in the order of the text; no key twice. */
    record JsonObject(Place at, List<Member> members) implements Tree {
        public JsonObject {
            members = List.copyOf(members);
        }

        public Optional<Member> member(String key) {
            return members.stream().filter(member -> member.key().equals(key)).findFirst();
        }

        public Optional<Tree> get(String key) {
            return member(key).map(Member::value);
        }

        /** The text under a key, where there is one. */
        public Optional<String> text(String key) {
            return get(key).filter(Text.class::isInstance).map(value -> ((Text) value).text());
        }

        /** With another value under a key, at its old place among the keys, else last. */
        public JsonObject with(String key, Tree value) {
            List<Member> changed = new ArrayList<>(members);
            int old = changed.indexOf(member(key).orElse(null));
            Member member = new Member(key, value.at(), value);
            if (old < 0) {
                changed.add(member);
            } else {
                changed.set(old, member);
            }
            return new JsonObject(at, changed);
        }

        public JsonObject without(String key) {
            return new JsonObject(
                    at,
                    members.stream().filter(member -> !member.key().equals(key)).toList());
        }

        @Override
        public Kind kind() {
            return Kind.OBJECT;
        }

        @Override
        public String found() {
            return "an object in { }";
        }
    }

    /** Values in a row. */
    record JsonArray(Place at, List<Tree> items) implements Tree {
        public JsonArray {
            items = List.copyOf(items);
        }

        @Override
        public Kind kind() {
            return Kind.ARRAY;
        }

        @Override
        public String found() {
            return "a list in [ ]";
        }
    }

    /** A text, without its quotes and escapes. */
    record Text(Place at, String text) implements Tree {
        @Override
        public Kind kind() {
            return Kind.TEXT;
        }

        @Override
        public String found() {
            return "the text " + Quoted.of(text);
        }
    }

    /** A number as written. */
    record Numeral(Place at, String digits) implements Tree {
        /** Where it is written without point and exponent, and is an {@code int}. */
        public Optional<Integer> whole() {
            try {
                return Optional.of(Integer.parseInt(digits));
            } catch (NumberFormatException e) {
                return Optional.empty();
            }
        }

        /** The nearest double; infinite where it is too large for one. */
        public double value() {
            return Double.parseDouble(digits);
        }

        @Override
        public Kind kind() {
            return Kind.NUMERAL;
        }

        @Override
        public String found() {
            return "the number " + digits;
        }
    }

    /** {@code true} or {@code false}. */
    record Flag(Place at, boolean value) implements Tree {
        @Override
        public Kind kind() {
            return Kind.FLAG;
        }

        @Override
        public String found() {
            return Boolean.toString(value);
        }
    }

    /** {@code null}. */
    record Nothing(Place at) implements Tree {
        @Override
        public Kind kind() {
            return Kind.NOTHING;
        }

        @Override
        public String found() {
            return "null";
        }
    }
}
