package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.DeviceHolding;
import setwright.job.Edge;
import setwright.job.Holding;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Plannable;
import setwright.job.StopAt;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.quantity.Reading;
import setwright.quantity.UnitSystem;

/** What holds a part is a row of the right kind. */
class HoldingReferencesTest {
    private static JobRead read(Holding holding) {
        Job job = Samples.bearingBlock();
        JobPlan plan = job.plan();
        Job held = job.withPlan(plan.withSetUps(List.of(plan.setUps().get(0).withHolding(holding))));
        return JobFile.read(JobFile.text(held, null), Samples.shop());
    }

    private static Strapping strap(String strap, String stud) {
        Strapping open = StrapField.STRAP.write(Strapping.pencilled("strap1"), Plannable.inked(strap));
        return StrapField.STUD.write(open, Plannable.inked(stud));
    }

    private static String refusal(Holding holding) {
        assertThat(read(holding)).isInstanceOf(JobRead.Refused.class);
        return read(holding).toString();
    }

    @Test
    void a_strap_and_its_stud_are_rows_of_straps_and_studs() {
        assertThat(refusal(TableHolding.pencilled().withStraps(List.of(strap("vise-6in", "nowhere")))))
                .contains("no strap")
                .contains("no set of studs");
    }

    @Test
    void a_device_and_a_stop_are_rows_and_a_plain_pin_needs_none() {
        DeviceHolding device = DeviceHolding.pencilled(DeviceHolding.On.ROTARY_TABLE);
        Reading reading = new Reading(UnitSystem.METRIC);
        StopAt pin = new StopAt("stop1", "none", Edge.LEFT, reading.length("10 mm"));
        StopAt missing = new StopAt("stop1", "nowhere", Edge.LEFT, reading.length("10 mm"));
        assertThat(refusal(new DeviceHolding(
                        device.on(),
                        Plannable.inked("nowhere"),
                        device.x(),
                        device.y(),
                        null,
                        List.of(),
                        List.of(missing))))
                .contains("no device")
                .contains("no stop");
        assertThat(read(new DeviceHolding(
                        device.on(), device.device(), device.x(), device.y(), null, List.of(), List.of(pin))))
                .isInstanceOf(JobRead.Opened.class);
    }
}
