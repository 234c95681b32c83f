package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import setwright.plan.Rows;
import setwright.quantity.Band;
import setwright.quantity.Stiffness;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.rigidity.CutterBeam;
import setwright.rigidity.HolderSeat;
import setwright.rigidity.MountedTool;
import setwright.rigidity.SpringBand;
import setwright.rigidity.Springs;
import setwright.rigidity.ToolBeam;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.JointSpring;
import setwright.shop.StiffnessBand;
import setwright.shop.TiltBand;

/**
 * The cutter of an operation on what gives behind it: clamp, holder, taper and machine, each as the shop's rows say. A
 * joint that no row is kept of counts as rigid.
 */
public record Mounting(ToolBeam beam, SpringBand springs) {
    private static final double RIGID = Double.POSITIVE_INFINITY;

    /** @param stickOut out of the holder, mm */
    public static Mounting of(Rows rows, Cutter cutter, Optional<Holder> holder, double stickOut) {
        Joints joints = new Joints(rows.all(JointSpring.class), holder);
        StiffnessBand machine = rows.machine().spring();
        SpringBand springs = new SpringBand(
                joints.springs(StiffnessBand::low, TiltBand::low),
                joints.springs(StiffnessBand::expected, TiltBand::expected),
                joints.springs(StiffnessBand::high, TiltBand::high));
        Band behind = new Band(
                machine.low().inside(),
                machine.expected().inside(),
                machine.high().inside());
        return new Mounting(CutterBeam.of(cutter, stickOut), springs.onMachine(behind));
    }

    /** On the springs that are expected. */
    public MountedTool expected() {
        return new MountedTool(beam, springs.expected());
    }

    /** The rows of the clamp and of the taper of a holder. */
    private record Joints(List<JointSpring> rows, Optional<Holder> holder) {
        Springs springs(Function<StiffnessBand, Typed<Stiffness>> shift, Function<TiltBand, Typed<Torque>> tilt) {
            Optional<JointSpring> clamp = holder.flatMap(held -> row(joint -> held.style() == joint.style()));
            Optional<JointSpring> taper = holder.flatMap(held -> row(joint -> held.taper() == joint.taper()));
            return new Springs(
                    clamp.flatMap(joint -> Optional.ofNullable(joint.shift()))
                            .map(band -> shift.apply(band).inside())
                            .orElse(RIGID),
                    clamp.map(joint -> tilt.apply(joint.tilt()).inside()).orElse(RIGID),
                    RIGID,
                    seat(taper.map(joint -> tilt.apply(joint.tilt()).inside()).orElse(RIGID)));
        }

        private Optional<JointSpring> row(Predicate<JointSpring> of) {
            return rows.stream().filter(of).findFirst();
        }

        private HolderSeat seat(double taper) {
            return holder.map(held -> new HolderSeat(
                            held.projection().inside(), held.noseDiameter().inside(), taper))
                    .orElse(HolderSeat.RIGID);
        }
    }
}
