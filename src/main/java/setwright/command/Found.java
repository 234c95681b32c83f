package setwright.command;

import org.jspecify.annotations.Nullable;
import setwright.caution.Caution;
import setwright.caution.Figure;

/** The figure of a caution, its limit and their unit, as they are printed; null where it has none. */
record Found(
        @Nullable Double value,
        @Nullable Double limit,
        @Nullable String unit) {
    static Found of(Caution caution) {
        Figure figure = caution.figure();
        return figure == null
                ? new Found(null, null, null)
                : new Found(
                        OperationJson.finite(figure.unit().fromInside(figure.value())),
                        OperationJson.finite(figure.unit().fromInside(figure.limit())),
                        figure.unit().symbol());
    }
}
