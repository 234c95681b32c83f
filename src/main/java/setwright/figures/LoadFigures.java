package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;

import java.util.List;
import java.util.Locale;
import setwright.cutting.ChiselFactors;
import setwright.cutting.CuttingPower;
import setwright.cutting.Drilling;
import setwright.cutting.Tapping;
import setwright.cutting.UnitPower;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.shop.Material;
import setwright.shop.Tap;

/** What cuts ask of tool and spindle. */
final class LoadFigures {
    static final Input MATERIAL = words("material").maybe("its figures have to be given");
    static final Input KC11 = measure("kc11", Measure.STRESS).upTo(20_000);
    static final Input MC = measure("mc", Measure.RATIO).within(0, 0.99);
    private static final Input DIAMETER = measure("diameter", Measure.LENGTH).upTo(1000);
    private static final Input DRILL_FEED = measure("feed", Measure.FEED_PER_REV);
    private static final Input WEAR = measure("wear-factor", Measure.RATIO).or("1");
    private static final double WIDEST_WEB = 0.9;

    private LoadFigures() {}

    static List<Figure> all() {
        return List.of(MillingLoadFigure.FIGURE, unitPower(), drillLoad(), drillTorque(), tapTorque());
    }

    private static Figure unitPower() {
        return new Figure(
                "unit-power",
                "Removing {rate} of a material of {unit-power} takes",
                List.of(
                        measure("unit-power", Measure.UNIT_POWER),
                        measure("rate", Measure.REMOVAL_RATE),
                        measure("efficiency", Measure.RATIO).upTo(1).or("0.8"),
                        measure("feed-factor", Measure.RATIO).or("1"),
                        WEAR),
                List.of("at-cutter kW", "at-motor kW"),
                asked -> {
                    Worked cutter = UnitPower.AT_CUTTER.of(
                            asked.value("unit-power"),
                            asked.value("rate"),
                            asked.value("feed-factor"),
                            asked.value("wear-factor"));
                    return Answered.of(
                            Answer.of("at-cutter", cutter, Unit.KW),
                            Answer.of(
                                    "at-motor",
                                    CuttingPower.MOTOR_POWER.of(cutter, asked.value("efficiency")),
                                    Unit.KW));
                });
    }

    private static Figure drillLoad() {
        return new Figure(
                "drill-load",
                "A plain drill of {diameter} fed by {feed} at {speed} pushes with",
                List.of(
                        measure("work-factor", Measure.RATIO).upTo(200_000).maybe("that of the material counts"),
                        MATERIAL,
                        DIAMETER,
                        DRILL_FEED,
                        measure("speed", Measure.SPINDLE_SPEED),
                        measure("web-ratio", Measure.RATIO)
                                .within(0, WIDEST_WEB)
                                .or("0.18"),
                        WEAR,
                        measure("pilot", Measure.LENGTH).maybe("solid work")),
                List.of("thrust N", "torque N·m", "power kW"),
                LoadFigures::drill);
    }

    private static Answered drill(Asked asked) {
        asked.requireOneOf("work-factor", "material");
        Given factor = asked.has("work-factor")
                ? asked.value("work-factor")
                : ofMaterial(
                        asked.material(),
                        "work-material factor",
                        asked.material().drillFactor().inside(),
                        Unit.NONE,
                        "drillFactor");
        Given web = asked.value("web-ratio");
        Given pilot = pilotRatio(asked);
        Given feed = asked.value("feed");
        Given diameter = asked.value("diameter");
        Given wear = asked.value("wear-factor");
        Worked thrust = Drilling.THRUST.of(
                factor,
                feed,
                diameter,
                ChiselFactors.LIPS_WITH_PILOT.of(web, pilot),
                ChiselFactors.WEB_WITH_PILOT.of(web, pilot),
                wear);
        Worked torque =
                Drilling.TORQUE.of(factor, feed, diameter, ChiselFactors.TORQUE_WITH_PILOT.of(web, pilot), wear);
        return Answered.of(
                Answer.of("thrust", thrust, Unit.N),
                Answer.of("torque", torque, Unit.N_M),
                Answer.of("power", CuttingPower.POWER.of(torque, asked.value("speed")), Unit.KW));
    }

    private static Given pilotRatio(Asked asked) {
        if (!asked.has("pilot")) {
            return Given.of("pilot hole to drill diameter", 0, Unit.NONE, "solid work");
        }
        double ratio = asked.number("pilot") / asked.number("diameter");
        if (ratio >= 1) {
            throw Refusal.of("pilot", "it is no smaller than the drill; accepted: above 0 and below the diameter.");
        }
        return Given.of("pilot hole to drill diameter", ratio, Unit.NONE, "pilot over diameter");
    }

    private static Figure drillTorque() {
        return new Figure(
                "drill-torque",
                "By its specific force {kc11} and {mc}, a drill of {diameter} fed by {feed} turns with",
                List.of(
                        KC11,
                        MC,
                        DIAMETER,
                        DRILL_FEED,
                        measure("point-angle", Measure.ANGLE).within(60, 179).or("118 °"),
                        measure("correction", Measure.RATIO).or("1")),
                List.of("specific-force N/mm²", "torque N·m"),
                asked -> {
                    Worked force = Drilling.SPECIFIC_FORCE.of(
                            asked.value("kc11"), asked.value("mc"), asked.value("feed"), asked.value("point-angle"));
                    Given solid = Given.of("pilot hole", 0, Unit.MM, "solid work");
                    Worked torque = Drilling.TORQUE_BY_KC.of(
                            asked.value("diameter"), solid, asked.value("feed"), force, asked.value("correction"));
                    return Answered.of(
                            Answer.of("specific-force", force, Unit.N_PER_MM2), Answer.of("torque", torque, Unit.N_M));
                });
    }

    private static Figure tapTorque() {
        return new Figure(
                "tap-torque",
                "Tapping {thread} takes",
                List.of(
                        words("thread"),
                        measure("specific-force", Measure.STRESS).upTo(20_000).maybe("that of the material counts"),
                        MATERIAL,
                        choice("tap", "cut", "spiral-point", "spiral-flute", "form")
                                .or("cut"),
                        measure("wear", Measure.RATIO).or("1")),
                List.of("torque N·m"),
                LoadFigures::tap);
    }

    private static Answered tap(Asked asked) {
        asked.requireOneOf("specific-force", "material");
        ScrewThread thread = Threads.listed().read(asked.words("thread"));
        Given force = asked.has("specific-force")
                ? asked.value("specific-force")
                : ofMaterial(
                        asked.material(),
                        "specific force of tapping",
                        asked.material().tapForce().inside(),
                        Unit.N_PER_MM2,
                        "tapForce");
        Tap.Flute flute = flute(asked.words("tap"));
        Worked kind = Tapping.KIND_FACTOR.of(
                flute.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                Tapping.kindFactor(flute).expected());
        return Answered.of(Answer.of(
                "torque",
                Tapping.TORQUE.of(
                        force,
                        ofThread("pitch", thread.pitch(), thread),
                        ofThread("major diameter", thread.major(), thread),
                        kind,
                        asked.value("wear")),
                Unit.N_M));
    }

    static Given ofThread(String name, double mm, ScrewThread thread) {
        return Given.of(name, mm, Unit.MM, spoken(thread));
    }

    /** The designation with its series, which some have in them. */
    static String spoken(ScrewThread thread) {
        String series = thread.series().words();
        return thread.designation().endsWith(series) ? thread.designation() : thread.designation() + " " + series;
    }

    private static Tap.Flute flute(String tap) {
        return switch (tap) {
            case "spiral-point" -> Tap.Flute.SPIRAL_POINT;
            case "spiral-flute" -> Tap.Flute.SPIRAL_FLUTE;
            case "form" -> Tap.Flute.FORM;
            default -> Tap.Flute.STRAIGHT;
        };
    }

    static Given ofMaterial(Material material, String name, double inside, Unit unit, String key) {
        return Given.of(name, inside, unit, "shop/" + material.id() + "/" + key);
    }
}
