package setwright.caution;

import org.jspecify.annotations.Nullable;

/**
 * Something that a check found.
 *
 * @param slug of the check, trade words joined by hyphens
 * @param place where it is, and what it is about
 * @param figure found against its limit; null where a rule was broken that has no number
 * @param message what, where, by how much, why it matters and what to do
 */
public record Caution(
        String slug,
        Severity severity,
        Place place,
        @Nullable Figure figure,
        String message) {

    /**
     * Where a caution is.
     *
     * @param setUp id; empty for the whole job
     * @param operation id of the operation where it is, or is worst; empty for none
     * @param about whether it is about that operation or about its set-up
     * @param subject id or name of the thing it is about
     * @param subjectText the thing in words
     */
    public record Place(String setUp, String operation, About about, String subject, String subjectText) {
        /** What one operation does. */
        public static Place of(String setUp, String operation, String subject, String subjectText) {
            return new Place(setUp, operation, About.OPERATION, subject, subjectText);
        }

        /** What is about a whole set-up, and no operation more than another. */
        public static Place ofSetUp(String setUp, String subject, String subjectText) {
            return new Place(setUp, "", About.SET_UP, subject, subjectText);
        }

        /** Where it is as every message says it: set-up and operation, or the set-up alone. */
        public String address() {
            return operation.isEmpty() ? "(" + setUp + ")" : "(" + setUp + "/" + operation + ")";
        }

        /** One cause in a set-up that several operations may feel, this one most. */
        public static Place worstAt(String setUp, String operation, String subject, String subjectText) {
            return new Place(setUp, operation, About.SET_UP, subject, subjectText);
        }
    }

    /** How far a cause reaches. */
    public enum About {
        OPERATION,
        SET_UP
    }

    /**
     * Slug, set-up, operation and thing; never the numbers, so that an acceptance survives a recalculation. What is about
     * a set-up keeps its identity whichever operation feels it most.
     */
    public String identity() {
        String of = switch (place.about()) {
            case OPERATION -> place.operation();
            case SET_UP -> "";
        };
        return slug + "/" + place.setUp() + "/" + of + "/" + place.subject();
    }

    /** Whether both were found by one check in one set-up. */
    public boolean isOfTheKindOf(Caution other) {
        return slug.equals(other.slug) && place.setUp().equals(other.place.setUp());
    }

    public String setUp() {
        return place.setUp();
    }

    public String operation() {
        return place.operation();
    }

    public String subject() {
        return place.subject();
    }

    public String subjectText() {
        return place.subjectText();
    }
}
