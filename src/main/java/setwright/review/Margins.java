package setwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Figure;
import setwright.caution.Findings;
import setwright.caution.Margin;
import setwright.cutting.Limit;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.quantity.Band;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.shop.ShopRow;

/**
 * The margins of a whole job, whether a caution fires or not: what the checks looked at, the limits that each cut uses up,
 * the clearances of cutter and holder.
 */
public final class Margins {
    private final Plan plan;
    private final List<Margin> found = new ArrayList<>();

    private Margins(Plan plan) {
        this.plan = plan;
    }

    /** Every margin of the job, the thinnest first; of two alike the one that comes first in the job. */
    public static List<Margin> all(Plan plan, Findings findings) {
        Margins margins = new Margins(plan);
        margins.found.addAll(findings.margins());
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            setUp.operations().forEach(operation -> margins.add(setUp, operation));
        }
        margins.found.sort(Comparator.comparingDouble(margin -> margin.figure().left()));
        return List.copyOf(margins.found);
    }

    /** The thinnest margins of the job. */
    public static List<Margin> thinnest(Plan plan, Findings findings, int count) {
        return all(plan, findings).stream().limit(count).toList();
    }

    private void add(DrawnSetUp setUp, DrawnOperation operation) {
        plan.cut()
                .operation(operation.id())
                .ifPresent(cut -> cut.limits().forEach(limit -> add(setUp, operation, limit)));
        plan.room().operation(operation.id()).ifPresent(room -> found.addAll(Clearances.of(setUp.id(), room)));
    }

    private void add(DrawnSetUp setUp, DrawnOperation operation, Limit limit) {
        String name = limit.name().words();
        String cutter = plan.rows()
                .shop()
                .row(operation.cutter().value())
                .map(ShopRow::name)
                .orElse(operation.cutter().value());
        found.add(Margin.of(
                name.replace(' ', '-'),
                Caution.Place.of(setUp.id(), operation.id(), name.replace(' ', '-'), name),
                Character.toUpperCase(name.charAt(0)) + name.substring(1) + " with " + cutter,
                Figure.atMost(1, limit.used(), Unit.NONE)));
    }

    /** A margin in a line: what, how much of what, its band, where. */
    public static String words(Margin margin, Printing printing) {
        Figure figure = margin.figure();
        Band band = margin.band();
        String between = band == null ? "" : " (" + ends(printing, figure.unit(), band) + ")";
        Caution.Place place = margin.place();
        return margin.what() + ": " + much(printing, figure) + between + " " + place.address();
    }

    private static String much(Printing printing, Figure figure) {
        if (figure.unit() == Unit.NONE && figure.worseUp()) {
            return printing.of(Unit.PERCENT, figure.value() / figure.limit()) + " used";
        }
        String value = Texts.figure(printing, figure.unit(), figure.value());
        String limit = Texts.figure(printing, figure.unit(), figure.limit());
        return figure.worseUp() ? value + " of " + limit : value + ", asked " + limit;
    }

    private static String ends(Printing printing, Unit unit, Band band) {
        String low = Texts.figure(printing, unit, band.low());
        String high = Texts.figure(printing, unit, band.high());
        return low.equals(high) ? low : low + " to " + high;
    }
}
