package setwright.caution;

import org.jspecify.annotations.Nullable;
import setwright.plan.NotChecked;

/** What a check says about one place: it holds, it fails, or it could not look. */
public sealed interface Finding {
    /** Nothing is wrong, and there is no figure to say how much is left. */
    Finding HOLDS = new Holds(null);

    Kind kind();

    /** The three answers. */
    enum Kind {
        HOLDS,
        FAILS,
        UNLOOKED
    }

    /** Looked, and nothing is wrong; with what is left where there is a figure. */
    record Holds(@Nullable Margin margin) implements Finding {
        @Override
        public Kind kind() {
            return Kind.HOLDS;
        }
    }

    /** Looked, and something is wrong; with what is missing where there is a figure. */
    record Fails(Caution caution, @Nullable Margin margin) implements Finding {
        @Override
        public Kind kind() {
            return Kind.FAILS;
        }
    }

    /** Could not look; never a pass and never a block. */
    record Unlooked(NotChecked what) implements Finding {
        @Override
        public Kind kind() {
            return Kind.UNLOOKED;
        }
    }

    static Finding holds(Margin margin) {
        return new Holds(margin);
    }

    /** A rule is broken that has no figure. */
    static Finding fails(Caution.Place place, String slug, Severity severity, String message) {
        return new Fails(new Caution(slug, severity, place, null, message), null);
    }

    /** A margin is used up, or nearly. */
    static Finding fails(Margin margin, Severity severity, String message) {
        return new Fails(new Caution(margin.of(), severity, margin.place(), margin.figure(), message), margin);
    }
}
