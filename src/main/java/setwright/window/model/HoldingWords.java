package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Drawn;
import setwright.job.DrawnSetUp;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Typed;

/** What holds the part, in the trade's words. */
final class HoldingWords {
    private HoldingWords() {}

    /** For instance {@code 6 in vise, parallels 1-1/4 in}. */
    static String brief(Planned planned, DrawnSetUp setUp) {
        String vise = planned.words().row(planned.value(setUp, ViseField.VISE).value());
        Drawn<Typed<Length>> height = planned.value(setUp, ViseField.PARALLEL_HEIGHT);
        return vise
                + (onBed(planned, setUp)
                        ? ", on the bed"
                        : ", parallels " + height.value().text());
    }

    static List<Span> grip(Planned planned, DrawnSetUp setUp) {
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
