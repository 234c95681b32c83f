package setwright.drawing;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import setwright.batch.Batch;
import setwright.batch.BatchTime;
import setwright.geometry.plane.Point2;
import setwright.quantity.Measure;
import setwright.quantity.Printing;

/** Time against quantity: each part complete, drawn thick, and one tool through the whole batch, drawn thin. */
final class BatchPlot {
    private static final double POINT = 1.2;
    /** A line's words stand this far over its end, or further under it. */
    private static final double APART = 4;
    /** At least so many parts are shown, and a multiple of the ticks. */
    private static final int PARTS = 8;

    private static final int TICKS = 4;

    private final List<Batch> setUps;
    private final int parts;
    private final int most;
    private final Axes axes;

    private BatchPlot(List<Batch> setUps) {
        this.setUps = setUps;
        parts = (int) setUps.get(0).parts();
        most = Math.max(PARTS, TICKS * ((2 * parts + TICKS - 1) / TICKS));
        double longest = Math.max(complete(most), throughAll(most));
        axes = new Axes(new Span(0, most), new Span(0, longest));
    }

    /** Empty without set-ups. */
    static Drawing of(List<Batch> setUps, Printing printing) {
        return setUps.isEmpty() ? Drawing.EMPTY : new BatchPlot(setUps).drawing(printing);
    }

    private double complete(int parts) {
        return sum(BatchTime::eachPartComplete, parts);
    }

    private double throughAll(int parts) {
        return sum(BatchTime::oneToolThroughBatch, parts);
    }

    private double sum(ToDoubleFunction<Batch> time, int parts) {
        return setUps.stream()
                .mapToDouble(batch -> time.applyAsDouble(batch.of(parts)))
                .sum();
    }

    private Drawing drawing(Printing printing) {
        Pen pen = new Pen();
        pen.line(LineRole.VISIBLE, line(this::complete));
        pen.line(LineRole.THIN, line(this::throughAll));
        axes.draw(
                pen,
                new Axes.Scale("parts", at -> String.valueOf(Math.round(at))),
                new Axes.Scale("time", at -> printing.of(Measure.TIME, at)));
        letter(pen, "each part complete", complete(most), throughAll(most));
        letter(pen, "one tool through the batch", throughAll(most), complete(most));
        Point2 now = axes.at(parts, complete(parts));
        pen.add(new Mark.Round(LineRole.VISIBLE, null, now, POINT));
        pen.add(new Mark.CallOut(now, parts + " off: " + printing.of(Measure.TIME, complete(parts))));
        return pen.drawing(Axes.FRAME);
    }

    private void letter(Pen pen, String words, double here, double other) {
        Point2 end = axes.at(most, here);
        Point2 aside = new Point2(0, here >= other ? APART : -2.5 * APART);
        pen.add(new Mark.Text(end.plus(aside), Mark.Anchor.RIGHT, Mark.Lettering.SMALL, words));
    }

    private List<Point2> line(IntToDoubleFunction time) {
        return IntStream.rangeClosed(1, most)
                .mapToObj(parts -> axes.at(parts, time.applyAsDouble(parts)))
                .toList();
    }
}
