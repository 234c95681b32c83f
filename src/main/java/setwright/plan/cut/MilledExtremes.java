package setwright.plan.cut;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Kienzle;
import setwright.cutting.MillingForce;
import setwright.cutting.ShapedCut;
import setwright.cutting.SharedForce;
import setwright.cutting.UnevenTeeth;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.Holder;

/**
 * What a milled cut comes to where it goes worse than nominal; limits are judged by the nominal cut.
 *
 * @param runOut total indicated, the poor end of the holder's, mm
 * @param chip the largest, without run-out, mm; of a roughing mill that at the crest of a wave
 * @param chipRunningOut the largest that one tooth takes with it, mm
 * @param forceRunningOut largest side force on the cutter with it, N
 * @param power from the least of the published ways that lie apart to a worn edge or the highest of them, W
 */
public record MilledExtremes(Value runOut, Value chip, Worked chipRunningOut, Worked forceRunningOut, Band power) {
    /** The cut that is gone beyond. */
    record Nominal(CutQuestion question, MilledShape shape, ShapedCut cut, Worked power) {}

    static MilledExtremes of(Nominal nominal, List<SecondOpinion> opinions, Value... inputs) {
        CutQuestion question = nominal.question();
        ShapedCut cut = nominal.cut();
        Value runOut = runOut(question);
        UnevenTeeth teeth = UnevenTeeth.worstRunningOut(
                question.cutter().teeth(), runOut.inside() / 2, cut.whole().largestChip());
        Value chip = Given.of(
                "largest chip", thickest(question, null, cut.largestChip()), Unit.MM, "thickest place of the arc");
        double force = MillingForce.of(cut, nominal.shape().kienzle(), teeth)
                .largest()
                .force()
                .resultant();
        String worst = "with the tooth that stands out most over the one before it";
        return new MilledExtremes(
                runOut,
                chip,
                UnevenTeeth.LARGEST.of(thickest(question, teeth, cut.largestChip()), worst, chip, runOut),
                MillingForce.PEAK_RUNNING_OUT.of(
                        force,
                        worst,
                        Stream.concat(Arrays.stream(inputs), Stream.of(runOut)).toArray(Value[]::new)),
                band(nominal.power(), opinions));
    }

    /** The largest chip of any tooth where plain ones that run true would take the given one, mm. */
    static double thickest(CutQuestion question, @Nullable UnevenTeeth out, double even) {
        int count = question.cutter().teeth();
        UnevenTeeth teeth = out == null ? UnevenTeeth.runningOut(count, 0, 0) : out;
        return question.wave().isEmpty()
                ? teeth.largest(even)
                : IntStream.range(0, SharedForce.HEIGHTS)
                        .mapToObj(i -> SharedForce.wave(count, question.wave().getAsDouble(), i))
                        .mapToDouble(wave -> wave.and(teeth).largest(even))
                        .max()
                        .orElseThrow();
    }

    static Value runOut(CutQuestion question) {
        String id = question.operation().holder().value();
        double poor = question.rows()
                .holder(id)
                .map(Holder::runOutHigh)
                .map(typed -> typed.inside())
                .orElse(0.0);
        return Given.of("run-out of the holder", poor, Unit.MM, "shop/" + id + "/runOutHigh");
    }

    private static Band band(Worked power, List<SecondOpinion> opinions) {
        double low = power.inside();
        double high = power.inside() * Kienzle.WORN_EDGE.inside();
        for (SecondOpinion opinion : opinions) {
            if (opinion.ours().equals(power) && opinion.apart()) {
                low = Math.min(low, opinion.other().inside());
                high = Math.max(high, opinion.other().inside());
            }
        }
        return new Band(low, power.inside(), high);
    }
}
