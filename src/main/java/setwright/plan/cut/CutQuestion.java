package setwright.plan.cut;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import setwright.cutting.Kienzle;
import setwright.cutting.KienzleForce;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingForce;
import setwright.cutting.SpeedAndFeed;
import setwright.cutting.SpindleDrive;
import setwright.geometry.Side;
import setwright.job.DrawnOperation;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Size;
import setwright.plan.CutSpeed;
import setwright.plan.Rows;
import setwright.plan.UnderSkin;
import setwright.plan.part.Heights;
import setwright.plan.part.Holes;
import setwright.plan.part.Mouths;
import setwright.quantity.Given;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.EndMill;
import setwright.shop.Holder;
import setwright.shop.Material;

/** One operation with all that its cut is worked out from, and the givens that its workings start with. */
record CutQuestion(
        String setUp,
        Side up,
        DrawnOperation operation,
        Cutter cutter,
        CuttingSpeed row,
        Heights heights,
        CutPlace place,
        Rows rows) {

    Kienzle kienzle() {
        Material material = rows.material();
        return new Kienzle(material.kc11().inside(), material.mc().inside());
    }

    /** The force of a cut in this material over the turn. */
    MillingForce force(MillingCut cut) {
        return MillingForce.of(cut, KienzleForce.of(kienzle(), cut.cutter()));
    }

    /** The cutter on what holds it. */
    Mounting mounting() {
        return Mounting.of(rows, cutter, holder(), operation.stickOut().value().inside());
    }

    Value kc11() {
        return shop("specific cutting force at 1 mm", rows.material().kc11().inside(), Unit.N_PER_MM2, "kc11");
    }

    Value mc() {
        return shop("exponent of the specific force", rows.material().mc().inside(), Unit.NONE, "mc");
    }

    /** A given from the material's row. */
    Given shop(String name, double inside, Unit unit, String key) {
        return Given.of(name, inside, unit, "shop/" + rows.material().id() + "/" + key);
    }

    /** A given from the cutter's row. */
    Given tool(String name, double inside, Unit unit, String key) {
        return Given.of(name, inside, unit, "shop/" + cutter.id() + "/" + key);
    }

    /** A given from a field of this operation. */
    Given field(String name, double inside, Unit unit, String key) {
        return Given.of(name, inside, unit, setUp + "/" + operation.id() + "/" + key);
    }

    Value diameter() {
        return tool("diameter", cutter.diameter().inside(), Unit.MM, "diameter");
    }

    /** From crest to trough of a roughing mill's edge, mm; empty where it is plain. */
    OptionalDouble wave() {
        Typed<Length> wave = cutter instanceof EndMill mill ? mill.wave() : null;
        return wave == null ? OptionalDouble.empty() : OptionalDouble.of(wave.inside());
    }

    /** The diameter that it leaves on its first hole; the cutter's where it makes none. */
    double opened() {
        return Holes.of(operation, rows.job())
                .findFirst()
                .map(hole -> Mouths.diameter(operation.kind(), cutter, hole))
                .orElse(cutter.diameter().inside());
    }

    /** The diameter that is cut, from the hole where it is not the cutter's own. */
    Value openedDiameter() {
        double opened = opened();
        return opened == cutter.diameter().inside()
                ? diameter()
                : Given.of("diameter", opened, Unit.MM, setUp + "/" + operation.id() + "/features");
    }

    Value speed() {
        return field("spindle speed", operation.speed().value().inside(), Unit.RPM, "speed");
    }

    Value feed() {
        return field("feed", operation.feed().value().inside(), Unit.MM_PER_MIN, "feed");
    }

    Value wantedSpeed() {
        return SpeedAndFeed.SPINDLE_SPEED.of(wantedCuttingSpeed(), openedDiameter());
    }

    private Value wantedCuttingSpeed() {
        boolean skin = UnderSkin.cuts(rows.job(), operation.kind(), operation.features(), heights);
        Given life = field("tool life asked", operation.toolLife().value().inside(), Unit.MINUTE, "toolLife");
        return new CutSpeed(operation.kind(), operation.coolant().value(), skin, life)
                .of(row, rows.material().group());
    }

    /** Feed per turn where the spindle turns; else as the table gives it. */
    Value feedPerTurn() {
        return operation.speed().value().inside() > 0
                ? SpeedAndFeed.FEED_PER_TURN.of(feed(), speed())
                : Given.of(
                        "feed per turn",
                        row.feedAt(cutter.diameter().inside()),
                        Unit.MM_PER_REV,
                        "shop/" + row.id() + "/feeds");
    }

    /** Share of the source's upper cutting speed that this spindle speed uses. */
    double shareOfCuttingSpeed() {
        double cutting = SpeedAndFeed.cuttingSpeed(operation.speed().value().inside(), opened());
        return cutting / Math.max(row.speedHigh().inside(), 1e-9);
    }

    /** Power that the spindle has at the cutter at this speed, W. */
    double spindlePower() {
        return new SpindleDrive(rows.machine())
                .powerAt(operation.speed().value().inside());
    }

    /** What of the drawing it cuts. */
    Stream<Feature> features() {
        return rows.job().plan().features().stream()
                .filter(feature -> operation.features().contains(feature.id()));
    }

    Optional<Holder> holder() {
        return rows.holder(operation.holder().value());
    }

    /** Half the tolerance of the face that is cut, mm; empty where the drawing leaves it general. */
    Optional<Double> toleratedLean() {
        return features()
                .filter(feature -> feature.kind() == Feature.Kind.FACE)
                .map(feature -> ((Face) feature).across())
                .filter(Size::toleranced)
                .map(size -> (size.greatestMm() - size.leastMm()) / 2)
                .filter(half -> half > 0)
                .findFirst();
    }

    /** Diameter of the hole that an earlier operation of the job drilled for the same feature, mm. */
    Optional<Double> holeBefore() {
        return place.holeBefore();
    }

    /** The same with another depth, width, feed or stick-out; a deeper pass goes deeper into the work. */
    CutQuestion with(LimitRule.Choice choice, double value) {
        boolean deep = choice == LimitRule.Choice.DEPTH && !operation.kind().inHole();
        CutPlace there = deep ? place.atLeast(value) : place;
        return new CutQuestion(
                setUp, up, new ChangedChoice(operation).to(choice, value), cutter, row, heights, there, rows);
    }
}
