package setwright.plan.choose;

import java.util.stream.Stream;

/** The arrangements of one kind. */
interface WaysToHold {
    Stream<Arrangement> of(ToHold part);
}
