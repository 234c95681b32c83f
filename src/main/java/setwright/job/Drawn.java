package setwright.job;

import java.util.function.Supplier;

/** A value of the drawn-up job: always there, with its standing. */
public record Drawn<T>(T value, Standing standing) {
    /** What a person decided, else what the pencil works out. */
    public static <T> Drawn<T> of(Plannable<T> plannable, Supplier<T> pencil) {
        if (plannable instanceof Plannable.Inked<T> inked) {
            return new Drawn<>(inked.value(), Standing.INKED);
        }
        if (plannable instanceof Plannable.Measured<T> measured) {
            return new Drawn<>(measured.value(), Standing.MEASURED);
        }
        return new Drawn<>(pencil.get(), Standing.PENCILLED);
    }

    public boolean pencilled() {
        return standing == Standing.PENCILLED;
    }
}
