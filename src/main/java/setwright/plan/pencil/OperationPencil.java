package setwright.plan.pencil;

import java.util.Optional;
import setwright.cutting.MillingCut;
import setwright.cutting.ToolLife;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.plan.Rows;
import setwright.plan.UnderSkin;
import setwright.plan.part.Heights;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Typed;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.ToolMaterial;

/** Draws one operation up: cutter, holder, stick-out, depth, width, then how it is fed and how fast. */
final class OperationPencil {
    private final Drafting drafting;
    private final Optional<Heights> heights;

    OperationPencil(Drafting drafting, Optional<Heights> heights) {
        this.drafting = drafting;
        this.heights = heights;
    }

    DrawnOperation drawUp(Operation ink, Standing standing) {
        double width = heights.map(Heights::depth).orElse(0.0);
        Drawn<String> cutterId = Drawn.of(ink.cutter(), () -> new CutterPencil(drafting).choose(ink, width));
        Optional<Cutter> cutter = drafting.rows().cutter(cutterId.value());
        Drawn<String> holderId = Drawn.of(
                ink.holder(),
                () -> cutter.map(new HolderPencil(drafting)::choose).orElse(Rows.NOTHING));
        Optional<Holder> holder = drafting.rows().holder(holderId.value());
        Drawn<Typed<Length>> stickOut = Drawn.of(
                ink.stickOut(),
                () -> cutter.flatMap(tool -> holder.map(held -> new StickOutPencil(drafting).choose(tool, held)))
                        .orElse(drafting.length(0)));
        Drawn<Operation.Method> method = Drawn.of(ink.method(), () -> new MethodPencil(drafting).choose(ink, cutter));
        Drawn<Operation.Coolant> coolant = Drawn.of(ink.coolant(), () -> coolant(cutter));
        Drawn<Typed<Time>> life = Drawn.of(ink.toolLife(), () -> drafting.time(ToolLife.ASKED));
        Drawn<Typed<Length>> passWidth =
                Drawn.of(ink.width(), () -> both(cutter, new DepthPencil(drafting), ink, false));
        Drawn<Typed<Length>> depth = Drawn.of(ink.depth(), () -> both(cutter, new DepthPencil(drafting), ink, true));
        SpeedPencil pace = new SpeedPencil(
                drafting,
                ink,
                cutter,
                new SpeedPencil.Setting(
                        method.value(),
                        coolant.value(),
                        holder,
                        stickOut.value().inside(),
                        life.value().inside(),
                        underSkin(ink)));
        Drawn<Typed<SpindleSpeed>> speed = Drawn.of(ink.speed(), pace::speed);
        Drawn<Typed<Speed>> feed = Drawn.of(
                ink.feed(),
                () -> pace.feed(
                        speed.value(),
                        new MillingCut.Section(
                                engaged(ink.kind(), cutter, passWidth.value().inside()),
                                depth.value().inside())));
        return new DrawnOperation(
                ink.id(),
                standing,
                ink.kind(),
                ink.features(),
                cutterId,
                holderId,
                stickOut,
                depth,
                passWidth,
                Drawn.of(ink.finish(), () -> drafting.length(LastPassPencil.finish(ink.kind()))),
                Drawn.of(ink.lastPass(), () -> LastPassPencil.lastPass(ink.kind())),
                life,
                Drawn.of(ink.direction(), () -> Operation.Direction.CONVENTIONAL),
                coolant,
                method,
                speed,
                feed,
                Drawn.of(ink.kneeHeight(), () -> drafting.length(0)),
                ink.reason());
    }

    private boolean underSkin(Operation ink) {
        return heights.map(seat -> UnderSkin.cuts(drafting.job(), ink.kind(), ink.features(), seat))
                .orElse(false);
    }

    /** The first round of a pocket is cut in the full. */
    private static double engaged(Operation.Kind kind, Optional<Cutter> cutter, double width) {
        return kind == Operation.Kind.POCKET
                ? cutter.map(tool -> tool.diameter().inside()).orElse(width)
                : width;
    }

    private Typed<Length> both(Optional<Cutter> cutter, DepthPencil pencil, Operation ink, boolean depth) {
        return cutter.flatMap(tool ->
                        heights.map(seat -> depth ? pencil.depth(ink, tool, seat) : pencil.width(ink, tool, seat)))
                .orElse(drafting.length(0));
    }

    private static Operation.Coolant coolant(Optional<Cutter> cutter) {
        boolean carbide =
                cutter.map(tool -> tool.material() == ToolMaterial.CARBIDE).orElse(false);
        return carbide ? Operation.Coolant.DRY : Operation.Coolant.BRUSHED_OIL;
    }
}
