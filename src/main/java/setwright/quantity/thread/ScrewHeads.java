package setwright.quantity.thread;

import java.util.List;
import java.util.Optional;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Socket head cap screws and the counterbores for them. */
public final class ScrewHeads {
    private static final double SAME = 1e-3;
    private static final List<Head> LISTED = CsvRows.beside(ScrewHeads.class, "screw-heads.csv").stream()
            .map(ScrewHeads::read)
            .toList();

    /** The head of a screw of a size, and the counterbore that takes it; millimetres. */
    public record Head(
            String size,
            boolean inch,
            double major,
            double diameter,
            double height,
            double counterbore,
            double depth,
            Source source) {}

    private ScrewHeads() {}

    public static List<Head> listed() {
        return LISTED;
    }

    public static Optional<Head> of(ScrewThread thread) {
        return LISTED.stream()
                .filter(head -> thread.series().profile() == ThreadProfile.SIXTY_DEGREES)
                .filter(head -> head.inch() == thread.series().isInch())
                .filter(head -> Math.abs(head.major() - thread.major()) < SAME)
                .findFirst();
    }

    private static Head read(CsvRows.Row row) {
        boolean inch = row.text("unit").equals("in");
        Unit unit = inch ? Unit.IN : Unit.MM;
        String size = row.text("size");
        double major = inch ? Threads.unifiedSize(size) : Double.parseDouble(size.substring(1));
        return new Head(
                size,
                inch,
                unit.toInside(major),
                unit.toInside(row.number("head_diameter")),
                unit.toInside(row.number("head_height")),
                unit.toInside(row.number("counterbore")),
                unit.toInside(row.number("counterbore_depth")),
                Source.of(row.text("source")));
    }
}
