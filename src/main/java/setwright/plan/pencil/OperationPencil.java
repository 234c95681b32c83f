package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.cutting.ToolLife;
import setwright.geometry.Side;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.plan.Rows;
import setwright.plan.UnderSkin;
import setwright.plan.part.Heights;
import setwright.plan.part.Lying;
import setwright.plan.part.MilledDepth;
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
    /** Between the top of the part and the holder, mm (common practice). */
    private static final double OVER_PART = 2;

    /** Least of a shank that stays gripped, in diameters (common practice). */
    private static final double LEAST_GRIP = 1.5;

    private final Drafting drafting;
    private final Side up;
    private final Optional<Heights> heights;

    OperationPencil(Drafting drafting, Side up, Optional<Heights> heights) {
        this.drafting = drafting;
        this.up = up;
        this.heights = heights;
    }

    /** @param earlier operations of the set-up before it */
    DrawnOperation drawUp(Operation ink, Standing standing, List<DrawnOperation> earlier) {
        double across = heights.map(Heights::depth).orElse(0.0);
        DrawnOperation draft = draft(ink, standing, new CutterPencil(drafting).choose(ink, across));
        return heights.map(seat -> ink.kind().inHole()
                        ? new HolePencil(drafting, up, seat).eased(draft, earlier)
                        : milled(ink, standing, new PassPencil(drafting, up, seat), draft, earlier))
                .orElse(draft);
    }

    /** A slot that would come too wide at the size of its cutter is cut on both sides by a smaller one. */
    private DrawnOperation milled(
            Operation ink, Standing standing, PassPencil pencil, DrawnOperation draft, List<DrawnOperation> earlier) {
        DrawnOperation passes = pencil.passes(ink, draft, earlier);
        return passes.cutter().pencilled() && pencil.comesWide(ink, passes, earlier)
                ? new MillPencil(drafting)
                        .forBothSides(ink)
                        .map(smaller -> pencil.passes(ink, draft(ink, standing, smaller), earlier))
                        .orElse(passes)
                : passes;
    }

    private DrawnOperation draft(Operation ink, Standing standing, String chosen) {
        Drawn<String> cutterId = Drawn.of(ink.cutter(), () -> chosen);
        Optional<Cutter> cutter = drafting.rows().cutter(cutterId.value());
        Drawn<String> holderId = Drawn.of(
                ink.holder(),
                () -> cutter.map(new HolderPencil(drafting)::choose).orElse(Rows.NOTHING));
        Optional<Holder> holder = drafting.rows().holder(holderId.value());
        Drawn<Typed<Length>> stickOut = Drawn.of(
                ink.stickOut(),
                () -> cutter.flatMap(tool -> holder.map(
                                held -> reaching(ink, tool, new StickOutPencil(drafting).choose(tool, held))))
                        .orElse(drafting.length(0)));
        Drawn<Operation.Method> method = Drawn.of(ink.method(), () -> new MethodPencil(drafting).choose(ink, cutter));
        Drawn<Operation.Coolant> coolant = Drawn.of(ink.coolant(), () -> coolant(cutter));
        Drawn<Typed<Time>> life = Drawn.of(ink.toolLife(), () -> drafting.time(ToolLife.ASKED));
        Drawn<Typed<Length>> passWidth =
                Drawn.of(ink.width(), () -> both(cutter, new DepthPencil(drafting), ink, false));
        Drawn<Typed<Length>> depth = Drawn.of(ink.depth(), () -> both(cutter, new DepthPencil(drafting), ink, true));
        LastPassPencil last = new LastPassPencil(drafting, ink, cutter);
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
                        engaged(ink.kind(), cutter, passWidth.value().inside())));
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
                Drawn.of(ink.finish(), () -> drafting.length(last.finish())),
                Drawn.of(ink.lastPass(), last::lastPass),
                life,
                Drawn.of(ink.direction(), () -> Operation.Direction.CONVENTIONAL),
                coolant,
                method,
                speed,
                feed,
                Drawn.of(ink.kneeHeight(), () -> drafting.length(0)),
                ink.reason());
    }

    /** A seat cutter on its shank reaches down past the top of the part, to what it cuts in the side. */
    private Typed<Length> reaching(Operation ink, Cutter cutter, Typed<Length> out) {
        if (cutter.form() != Cutter.Form.KEYSEAT_CUTTER || heights.isEmpty()) {
            return out;
        }
        double high = heights.get().startTop() - heights.get().partBottom();
        double down = ink.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .flatMap(feature -> MilledDepth.level(feature, up, Lying.of(drafting.block(), up, 0)).stream())
                .mapToDouble(low -> high - low + OVER_PART)
                .max()
                .orElse(0);
        double most =
                cutter.overallLength().inside() - LEAST_GRIP * cutter.shank().inside();
        return down <= out.inside() ? out : drafting.length(Math.ceil(Math.min(down, most)));
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
