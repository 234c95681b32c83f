package setwright.command;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Printing;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.quantity.Working;

/** One figure of the plan worked out as a handbook prints it: the thrust of the hardest drill, else a power. */
record WorkedExample(Plan plan, Printing printing) {
    String text() {
        return example().map(this::printed).orElse("");
    }

    private Optional<Example> example() {
        List<OperationCut> cuts = plan.cut().operations();
        Stream<Example> thrusts = cuts.stream().flatMap(cut -> example(cut, cut.thrust()));
        Stream<Example> powers = cuts.stream().flatMap(cut -> example(cut, cut.power()));
        return thrusts.max(Comparator.comparingDouble(one -> one.worked().inside()))
                .or(() -> powers.max(
                        Comparator.comparingDouble(one -> one.worked().inside())));
    }

    private static Stream<Example> example(OperationCut cut, @org.jspecify.annotations.Nullable Value value) {
        return Stream.of(Optional.ofNullable(value))
                .flatMap(Optional::stream)
                .filter(Worked.class::isInstance)
                .map(worked -> new Example(cut.operation(), (Worked) Objects.requireNonNull(worked)));
    }

    private record Example(String operation, Worked worked) {}

    private String printed(Example example) {
        StringBuilder text = new StringBuilder("\nWorked out, for instance (" + example.operation() + ")\n");
        Working.of(example.worked(), printing).text().lines().forEach(line -> text.append(wrapped(line)));
        return text.toString();
    }

    private static String wrapped(String line) {
        String indent =
                "  " + line.substring(0, line.length() - line.stripLeading().length());
        return Wrapped.behind(indent, line);
    }
}
