package setwright.plan.choose;

import java.util.Optional;
import java.util.stream.Stream;
import setwright.job.DeviceHolding.On;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.RotaryTable;

/** On a device that turns the part under the cutter; worth its bolting down only where something is divided or round an axis. */
final class TurningDevices implements WaysToHold {
    @Override
    public Stream<Arrangement> of(ToHold part) {
        return Stream.of(
                        DeviceWays.of(part, On.COLLET_BLOCK, ColletBlock.class, row -> notInCollet(part, row)),
                        DeviceWays.of(part, On.ROTARY_TABLE, RotaryTable.class, row -> notOnTable(part, row)),
                        DeviceWays.of(part, On.DIVIDING_HEAD, DividingHead.class, row -> notInHead(part, row)))
                .flatMap(ways -> ways);
    }

    private static Optional<String> notInCollet(ToHold part, ColletBlock row) {
        if (!part.round()) {
            return Optional.of("It is not round");
        }
        return part.diameter() > row.greatestRound().inside()
                ? Optional.of("Its " + row.collet() + " collets take "
                        + row.greatestRound().text() + " round at most, this is " + part.length(part.diameter()))
                : Optional.empty();
    }

    private static Optional<String> notOnTable(ToHold part, RotaryTable row) {
        if (!part.isTurned()) {
            return Optional.of("Nothing is divided or cut round an axis here");
        }
        double across = StrictMath.hypot(
                part.lying().along().greatestMm(), part.lying().across().greatestMm());
        return across > 2 * row.diameter().inside()
                ? Optional.of("It is " + part.length(across) + " over its corners on a table of "
                        + row.diameter().text())
                : part.topIsCut() ? Optional.of(TableWays.TOP_IS_CUT) : Optional.empty();
    }

    private static Optional<String> notInHead(ToHold part, DividingHead row) {
        if (!part.isTurned()) {
            return Optional.of("Nothing is divided or cut round an axis here");
        }
        if (!part.round()) {
            return Optional.of("It is not round, and no chuck or mandrel is set out for it");
        }
        return part.diameter() > row.swing().inside()
                ? Optional.of("It swings " + row.swing().text() + ", the part is " + part.length(part.diameter()))
                : Optional.empty();
    }
}
