package setwright.caution;

import static setwright.caution.SmallShop.READING;
import static setwright.caution.SmallShop.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.shop.Cutter.Form;
import setwright.shop.CuttingSpeed;
import setwright.shop.IsoGroup;
import setwright.shop.Material;
import setwright.shop.ShopRow;
import setwright.shop.ToolMaterial;

/** Mild steel and aluminium, with starting speeds; common practice. */
final class SmallMaterials {
    static final String STEEL = "mild-steel";
    static final String ALUMINIUM = "aluminium-6061";

    private SmallMaterials() {}

    static List<ShopRow> all() {
        List<ShopRow> rows = new ArrayList<>();
        rows.add(material(STEEL, "Mild steel", IsoGroup.P, "1350 N/mm2", "0.21", "24000", "2300 N/mm2", "7850 kg/m3"));
        rows.add(material(
                ALUMINIUM, "Aluminium 6061", IsoGroup.N, "700 N/mm2", "0.25", "7000", "800 N/mm2", "2700 kg/m3"));
        for (String material : List.of(STEEL, ALUMINIUM)) {
            double times = material.equals(STEEL) ? 1 : 3;
            rows.add(speed(material, Form.FACE_MILL, ToolMaterial.CARBIDE, 100 * times, at("50 mm", "0.1 mm")));
            rows.add(speed(material, Form.END_MILL, ToolMaterial.CARBIDE, 100 * times, at("12 mm", "0.05 mm")));
            rows.add(speed(material, Form.END_MILL, ToolMaterial.HSS, 25 * times, at("20 mm", "0.075 mm")));
            rows.add(speed(material, Form.SPOT_DRILL, ToolMaterial.HSS, 24 * times, at("12 mm", "0.08 mm")));
            rows.add(speed(
                    material,
                    Form.DRILL,
                    ToolMaterial.HSS,
                    24 * times,
                    at("3 mm", "0.004 in"),
                    at("1/4 in", "0.004 in"),
                    at("1/2 in", "0.007 in")));
            rows.add(speed(material, Form.REAMER, ToolMaterial.HSS, 12 * times, at("12 mm", "0.35 mm")));
            rows.add(speed(material, Form.TAP, ToolMaterial.HSS, 9 * times, at("8 mm", "1.25 mm")));
        }
        return rows;
    }

    /** @param numbers kc1.1, mc, drill factor, tapping force, density */
    private static Material material(String id, String name, IsoGroup group, String... numbers) {
        return new Material(
                id,
                name,
                List.of(),
                group,
                READING.stress(numbers[0]),
                READING.ratio(numbers[1]),
                READING.ratio(numbers[2]),
                null,
                READING.stress(numbers[3]),
                READING.density(numbers[4]),
                READING.stress("200 GPa"),
                READING.ratio("0.0000115"),
                null,
                null,
                SmallShop.SOURCE);
    }

    /** The same material with what bites. */
    static Material withHazard(Material of, @Nullable String hazard) {
        return new Material(
                of.id(),
                of.name(),
                of.calledToo(),
                of.group(),
                of.kc11(),
                of.mc(),
                of.drillFactor(),
                of.unitPower(),
                of.tapForce(),
                of.density(),
                of.elasticModulus(),
                of.expansion(),
                hazard,
                of.edge(),
                of.source());
    }

    private static CuttingSpeed.FeedAt at(String diameter, String feed) {
        return new CuttingSpeed.FeedAt(length(diameter), length(feed));
    }

    private static CuttingSpeed speed(
            String material, Form form, ToolMaterial tool, double metres, CuttingSpeed.FeedAt... feeds) {
        String what = form.name().toLowerCase(Locale.ROOT) + " " + tool.name().toLowerCase(Locale.ROOT);
        return new CuttingSpeed(
                "speed-" + material + "-" + what.replace('_', '-').replace(' ', '-'),
                material + ", " + what,
                material,
                form,
                tool,
                READING.cuttingSpeed(metres + " m/min"),
                READING.cuttingSpeed(1.4 * metres + " m/min"),
                List.of(feeds),
                null,
                SmallShop.SOURCE);
    }
}
