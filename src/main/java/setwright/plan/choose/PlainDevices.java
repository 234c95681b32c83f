package setwright.plan.choose;

import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Heading;
import setwright.job.DeviceHolding.Fastening;
import setwright.job.DeviceHolding.On;
import setwright.shop.AnglePlate;
import setwright.shop.FixturePlate;
import setwright.shop.IsoGroup;
import setwright.shop.MagneticChuck;
import setwright.shop.SetUpBlocks;
import setwright.shop.VBlocks;

/** On a device that only holds: V-blocks, plates, blocks, a magnet. */
final class PlainDevices implements WaysToHold {
    /** What is higher than this leans on its tape, mm (common practice). */
    private static final double THIN = 6;

    @Override
    public Stream<Arrangement> of(ToHold part) {
        return Stream.of(
                        DeviceWays.of(part, On.V_BLOCKS, VBlocks.class, row -> notInVees(part, row)),
                        DeviceWays.of(part, On.SET_UP_BLOCKS, SetUpBlocks.class, row -> strapped(part)),
                        magnets(part),
                        DeviceWays.of(part, On.ANGLE_PLATE, AnglePlate.class, row -> notOnFace(part, row)),
                        plates(part))
                .flatMap(ways -> ways);
    }

    private static Optional<String> notInVees(ToHold part, VBlocks row) {
        if (!part.barAlong()) {
            return Optional.of("It is not a round bar along the table");
        }
        double diameter = part.diameter();
        return diameter < row.least().inside() || diameter > row.greatest().inside()
                ? Optional.of("They hold " + row.least().text() + " to "
                        + row.greatest().text() + " round, this is " + part.length(diameter))
                : Optional.empty();
    }

    private static Optional<String> strapped(ToHold part) {
        if (part.barAlong()) {
            return Optional.of(TableWays.ROLLS);
        }
        return part.topIsCut() ? Optional.of(TableWays.TOP_IS_CUT) : Optional.empty();
    }

    /** A magnet is made for grinding: against a mill it wants help, and all of the part on it. */
    private static Stream<Arrangement> magnets(ToHold part) {
        return DeviceWays.of(part, On.MAGNETIC_CHUCK, MagneticChuck.class, row -> notMagnetic(part))
                .map(one -> one.doubted("A magnet holds against a grinding wheel better than against a mill:"
                        + " put a stop before the cut"));
    }

    private static Optional<String> notMagnetic(ToHold part) {
        IsoGroup group = part.rows().material().group();
        boolean pulled = switch (group) {
            case P, K, H -> true;
            case M, N, S -> false;
        };
        if (!pulled) {
            return Optional.of(
                    "A magnet does not pull " + part.rows().material().name());
        }
        if (part.round()) {
            return Optional.of("A round bar touches the magnet on a line only");
        }
        return part.roughBody(Heading.MINUS_Z)
                ? Optional.of("Its underside is rough: a magnet wants a flat, clean face")
                : Optional.empty();
    }

    private static Optional<String> notOnFace(ToHold part, AnglePlate row) {
        double high = part.lying().upright().greatestMm();
        double along = part.lying().along().greatestMm();
        boolean larger = high > 2 * row.faceHeight().inside()
                || along > 3 * row.faceWidth().inside();
        return larger
                ? Optional.of("Its face of " + row.faceWidth().text() + " x "
                        + row.faceHeight().text() + " is too small for a part " + part.length(along) + " long and "
                        + part.length(high) + " high")
                : Optional.empty();
    }

    /** Under straps, or stuck down where nothing may lie on top. */
    private static Stream<Arrangement> plates(ToHold part) {
        return DeviceWays.of(part, On.FIXTURE_PLATE, FixturePlate.class, row -> notOnPlate(part, row))
                .flatMap(plate -> Stream.of(
                        plate,
                        DeviceWays.fastened(plate, Fastening.TAPE, "on double-sided tape", notTaped(part, plate))));
    }

    private static Optional<String> notTaped(ToHold part, Arrangement plate) {
        boolean strapsOnly = plate.against().isEmpty() || plate.against().contains(TableWays.TOP_IS_CUT);
        if (!strapsOnly) {
            return plate.against().stream().findFirst();
        }
        return part.lying().upright().greatestMm() > THIN
                ? Optional.of("Tape is for what is thin; this is "
                        + part.length(part.lying().upright().greatestMm()) + " high")
                : Optional.empty();
    }

    private static Optional<String> notOnPlate(ToHold part, FixturePlate row) {
        boolean larger = part.lying().along().greatestMm() > row.length().inside()
                || part.lying().across().greatestMm() > row.width().inside();
        return larger
                ? Optional.of("It is larger than the plate of " + row.length().text() + " x "
                        + row.width().text())
                : strapped(part);
    }
}
