package setwright.caution.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.shop.ShopRow;

/** The shop's row says something else by now than the copy that the job carries and is worked out with. */
public final class ShopRowChanged implements Check {
    /** What says nothing about how a thing works. */
    private static final List<String> BESIDE = List.of("kept", "source", "name");

    @Override
    public String slug() {
        return "shop-row-changed";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        plan.drawnUp().setUps().stream()
                .limit(1)
                .forEach(setUp -> plan.job()
                        .plan()
                        .rows()
                        .forEach(copy -> plan.rows()
                                .today()
                                .row(copy.id())
                                .ifPresent(now -> found.add(look(setUp, copy, now)))));
        return found;
    }

    private Finding look(DrawnSetUp setUp, ShopRow copy, ShopRow now) {
        List<String> changed = changed(copy, now);
        if (changed.isEmpty()) {
            return Finding.HOLDS;
        }
        Caution.Place place = Caution.Place.ofSetUp(setUp.id(), copy.id(), copy.name());
        return Finding.fails(
                place,
                slug(),
                Severity.NOTE,
                "The shop's row of " + copy.name() + " differs from the copy that this job carries " + place.address()
                        + ", in " + String.join(", ", changed)
                        + ". The job is worked out with its copy: take the shop's row into the job, or leave it.");
    }

    /** The fields that differ, in words. */
    private static List<String> changed(ShopRow copy, ShopRow now) {
        if (copy.getClass() != now.getClass()) {
            return List.of("kind");
        }
        return Stream.of(copy.getClass().getRecordComponents())
                .filter(field -> !BESIDE.contains(field.getName()))
                .filter(field -> !Objects.equals(value(field, copy), value(field, now)))
                .map(field -> field.getName().replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT))
                .toList();
    }

    private static @Nullable Object value(RecordComponent field, ShopRow row) {
        try {
            return field.getAccessor().invoke(row);
        } catch (ReflectiveOperationException unread) {
            throw new IllegalStateException("The field " + field.getName() + " of a shop row cannot be read.", unread);
        }
    }
}
