package setwright.plan.choose;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import setwright.job.DeviceField;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.Holding;
import setwright.job.Plannable;
import setwright.shop.Owned;

/** One arrangement for every device of a kind that the shop owns; one that says so where it owns none. */
final class DeviceWays {
    private DeviceWays() {}

    static <T extends Owned> Stream<Arrangement> of(
            ToHold part, DeviceHolding.On on, Class<T> kind, Function<T, Optional<String>> against) {
        List<T> owned = part.owned(kind);
        String called = ToHold.word(on);
        if (owned.isEmpty()) {
            String text = Character.toUpperCase(called.charAt(0)) + called.substring(1);
            return Stream.of(new Arrangement(text, DeviceHolding.pencilled(on), List.of("None is owned"), false));
        }
        return owned.stream()
                .map(row -> new Arrangement(
                        row.name(),
                        ink(part, on, row.id()),
                        ToHold.reasons(against.apply(row)),
                        isOn(part, on, row.id())));
    }

    /** The same device with the part fastened on it in another way than straps. */
    static Arrangement fastened(Arrangement on, DeviceHolding.Fastening how, String words, Optional<String> against) {
        DeviceHolding device = (DeviceHolding) on.holding();
        return new Arrangement(
                on.text() + ", " + words,
                DeviceField.FASTENING.write(device, Plannable.inked(how)),
                ToHold.reasons(against),
                false);
    }

    private static DeviceHolding ink(ToHold part, DeviceHolding.On on, String row) {
        DeviceHolding from = part.written().kind() == Holding.Kind.DEVICE
                        && ((DeviceHolding) part.written()).on() == on
                        && isOn(part, on, row)
                ? (DeviceHolding) part.written()
                : DeviceHolding.pencilled(on);
        return DeviceField.DEVICE.write(from, Plannable.inked(row));
    }

    private static boolean isOn(ToHold part, DeviceHolding.On on, String row) {
        return part.setUp().holding() instanceof DrawnDevice drawn
                && drawn.on() == on
                && drawn.device().value().equals(row);
    }
}
