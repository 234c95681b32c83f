package setwright.job;

/**
 * A value that may be left to the pencil. The file and the {@link Job} hold ink and measurements only; {@link
 * Pencilled} stands for a place that the pencil fills.
 */
public sealed interface Plannable<T> {
    Standing standing();

    static <T> Plannable<T> pencilled() {
        return new Pencilled<>();
    }

    static <T> Plannable<T> inked(T value) {
        return new Inked<>(value);
    }

    /** Left to the pencil: worked out or a default, follows every change. */
    record Pencilled<T>() implements Plannable<T> {
        @Override
        public Standing standing() {
            return Standing.PENCILLED;
        }
    }

    /** Typed or confirmed by a person; stays. */
    record Inked<T>(T value) implements Plannable<T> {
        @Override
        public Standing standing() {
            return Standing.INKED;
        }
    }

    /** Read at the machine, by whom and when (ISO 8601 date). */
    record Measured<T>(T value, String by, String at) implements Plannable<T> {
        @Override
        public Standing standing() {
            return Standing.MEASURED;
        }
    }
}
