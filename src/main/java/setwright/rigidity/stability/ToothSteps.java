package setwright.rigidity.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One tooth period cut into steps, none of which an entry or an exit of a tooth falls into.
 *
 * @param lengths of the steps, s
 * @param forces what a shift of the tip does to the force, N/mm, at the beginning and the middle of every step
 * @param ends the same at the end of every step
 */
record ToothSteps(List<Double> lengths, List<DirectionalFactors> forces, List<DirectionalFactors> ends) {
    private static final int LEAST = 8;

    static ToothSteps of(ToothCut cut, double speed, double depth, double wanted) {
        List<Double> lengths = new ArrayList<>();
        List<DirectionalFactors> forces = new ArrayList<>();
        List<DirectionalFactors> ends = new ArrayList<>();
        double pitch = cut.pitch();
        double[] marks = DoubleStream.of(0, cut.arc().start() % pitch, cut.arc().exit() % pitch, pitch)
                .sorted()
                .toArray();
        for (int i = 1; i < marks.length; i++) {
            double whole = marks[i] - marks[i - 1];
            if (whole < 1e-9) {
                continue;
            }
            int count = LEAST + (int) Math.ceil(wanted * whole / pitch);
            double middle = (marks[i] + marks[i - 1]) / 2;
            for (int j = 0; j < count; j++) {
                double from = marks[i - 1] + whole * j / count;
                double step = whole / count;
                lengths.add(step / speed);
                forces.add(force(cut, depth, from, middle));
                forces.add(force(cut, depth, from + step / 2, middle));
                ends.add(force(cut, depth, from + step, middle));
            }
        }
        return new ToothSteps(List.copyOf(lengths), List.copyOf(forces), List.copyOf(ends));
    }

    /** @param inside an angle of the same stretch, which says what teeth are in the cut */
    private static DirectionalFactors force(ToothCut cut, double depth, double angle, double inside) {
        double xx = 0;
        double xy = 0;
        double yx = 0;
        double yy = 0;
        for (int tooth = 0; tooth < cut.teeth(); tooth++) {
            double ahead = tooth * cut.pitch();
            if (inside + ahead > cut.arc().start() && inside + ahead < cut.arc().exit()) {
                double sin = StrictMath.sin(angle + ahead);
                double cos = StrictMath.cos(angle + ahead);
                double alongX = depth * cut.specific() * (cos + cut.radialRatio() * sin);
                double alongY = depth * cut.specific() * (cut.radialRatio() * cos - sin);
                xx += alongX * sin;
                xy += alongX * cos;
                yx += alongY * sin;
                yy += alongY * cos;
            }
        }
        return new DirectionalFactors(xx, xy, yx, yy);
    }

    int count() {
        return lengths.size();
    }

    double length(int i) {
        return lengths.get(i);
    }

    DirectionalFactors force(int half) {
        return forces.get(half);
    }

    DirectionalFactors forceAtEnd(int i) {
        return ends.get(i);
    }
}
