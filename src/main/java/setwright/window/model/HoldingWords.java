package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Drawn;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnTable;
import setwright.job.HoldingEdits;
import setwright.job.Standing;
import setwright.job.StrapField;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.sheet.OnTable;

/** What holds the part, in the trade's words. */
final class HoldingWords {
    private HoldingWords() {}

    /** For instance {@code 6 in vise, parallels 1-1/4 in}. */
    static String brief(Planned planned, DrawnSetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE -> inVise(planned, setUp);
            case TABLE ->
                Words.of(((DrawnTable) setUp.holding()).seat().value()).equals("t slot")
                        ? "in a T-slot" + strapped(planned, setUp)
                        : "on the table" + strapped(planned, setUp);
            case DEVICE -> Words.of(((DrawnDevice) setUp.holding()).on()) + strapped(planned, setUp);
        };
    }

    private static String strapped(Planned planned, DrawnSetUp setUp) {
        return HoldingEdits.straps(setUp.holding()).isEmpty()
                ? ""
                : ", " + said(planned, setUp).count();
    }

    private static OnTable said(Planned planned, DrawnSetUp setUp) {
        return new OnTable(planned.plan(), setUp, planned.printing());
    }

    /** Where the part lies on the table or a device, and how it is strapped down. */
    private static List<Span> onTable(Planned planned, DrawnSetUp setUp, String where, Standing standing) {
        List<Span> spans = new ArrayList<>();
        spans.add(Span.value(Words.capital(where), standing));
        spans.add(Span.plain(strapped(planned, setUp)));
        return spans;
    }

    private static List<Span> straps(Planned planned, DrawnSetUp setUp) {
        OnTable words = said(planned, setUp);
        List<Span> spans = new ArrayList<>();
        for (StrapPlace strap : words.straps()) {
            Drawn<Typed<Length>> heel =
                    HoldingValue.strap(strap.drawn().id(), StrapField.HEEL_OVER).now(planned, setUp);
            Drawn<Typed<Torque>> torque =
                    HoldingValue.strap(strap.drawn().id(), StrapField.TORQUE).now(planned, setUp);
            spans.add(Span.plain((spans.isEmpty() ? "" : "; ") + strap.name() + ", heel "));
            spans.add(Span.value(words.heel(strap), heel.standing()));
            spans.add(Span.plain(", nut to "));
            spans.add(Span.value(torque.value().text(), torque.standing()));
        }
        return spans;
    }

    private static String inVise(Planned planned, DrawnSetUp setUp) {
        String vise = planned.words().row(planned.value(setUp, ViseField.VISE).value());
        Drawn<Typed<Length>> height = planned.value(setUp, ViseField.PARALLEL_HEIGHT);
        return vise
                + (onBed(planned, setUp)
                        ? ", on the bed"
                        : ", parallels " + height.value().text());
    }

    static List<Span> grip(Planned planned, DrawnSetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE -> closed(planned, setUp);
            case TABLE -> {
                DrawnTable table = (DrawnTable) setUp.holding();
                yield onTable(
                        planned,
                        setUp,
                        said(planned, setUp).table(table),
                        table.seat().standing());
            }
            case DEVICE -> {
                DrawnDevice device = (DrawnDevice) setUp.holding();
                yield onTable(
                        planned,
                        setUp,
                        said(planned, setUp).device(device),
                        device.device().standing());
            }
        };
    }

    private static List<Span> closed(Planned planned, DrawnSetUp setUp) {
        Drawn<ViseHolding.GripAsked> grip = planned.value(setUp, ViseField.GRIP);
        List<Span> spans = new ArrayList<>();
        spans.add(vise(planned, setUp));
        spans.add(Span.plain(", closed "));
        spans.add(Span.value(Words.of(grip.value()), grip.standing()));
        return spans;
    }

    private static Span vise(Planned planned, DrawnSetUp setUp) {
        Drawn<String> vise = planned.value(setUp, ViseField.VISE);
        return Span.value(planned.words().row(vise.value()), vise.standing());
    }

    static List<Span> packing(Planned planned, DrawnSetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE -> parallels(planned, setUp);
            case TABLE, DEVICE -> straps(planned, setUp);
        };
    }

    private static List<Span> parallels(Planned planned, DrawnSetUp setUp) {
        List<Span> spans = new ArrayList<>();
        Drawn<String> set = planned.value(setUp, ViseField.PARALLELS);
        if (onBed(planned, setUp)) {
            spans.add(Span.value("No parallels: on the vise bed", set.standing()));
        } else {
            Drawn<Typed<Length>> height = planned.value(setUp, ViseField.PARALLEL_HEIGHT);
            spans.add(Span.value(planned.words().row(set.value()), set.standing()));
            spans.add(Span.plain(", "));
            spans.add(Span.value(height.value().text(), height.standing()));
            spans.add(Span.plain(" high"));
        }
        planned.plan()
                .part()
                .setUp(setUp.id())
                .map(SetUpStage::heights)
                .ifPresent(heights -> spans.add(Span.plain(
                        "; " + planned.printing().of(Measure.LENGTH, heights.gripDepth()) + " in the jaws")));
        return spans;
    }

    private static boolean onBed(Planned planned, DrawnSetUp setUp) {
        return planned.value(setUp, ViseField.PARALLELS).value().equals(ViseHolding.NONE);
    }
}
