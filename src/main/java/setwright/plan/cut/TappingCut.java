package setwright.plan.cut;

import java.util.List;
import setwright.cutting.Tapping;
import setwright.job.InWords;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.shop.Tap;

/** A tapped hole: torque from pitch and diameter with the specific force of tapping. */
final class TappingCut {
    private static final Given SHARP = Given.of("wear factor", 1, Unit.NONE, "a sharp tap");

    private TappingCut() {}

    static OperationCut of(CutQuestion question) {
        Tap tap = (Tap) question.cutter();
        ScrewThread thread = Threads.listed().read(tap.thread());
        Value force = question.shop(
                "specific force of tapping",
                question.rows().material().tapForce().inside(),
                Unit.N_PER_MM2,
                "tapForce");
        Value pitch = question.tool("pitch", thread.pitch(), Unit.MM, "thread");
        Value kind = Tapping.KIND_FACTOR.of(
                InWords.word(tap.flute()), Tapping.kindFactor(tap.flute()).expected());
        Value torque = Tapping.TORQUE.of(
                force, pitch, question.tool("major diameter", thread.major(), Unit.MM, "thread"), kind, SHARP);
        Band kinds = Tapping.kindFactor(tap.flute());
        double perKind = torque.inside() / kinds.expected();
        Band band = new Band(perKind * kinds.low(), torque.inside(), perKind * kinds.high() * Tapping.DULL.low());
        return new HoleCut(pitch, torque, null, 1, List.of(), HoleWork.plain(question, band, null)).of(question);
    }
}
