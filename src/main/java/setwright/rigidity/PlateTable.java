package setwright.rigidity;

import java.util.List;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** Coefficients of plates by the ratio of their sides, read between the rows of a table along straight lines. */
public enum PlateTable {
    /** All edges rest, force in the middle, by longer over shorter side. */
    EDGES_REST(
            "y = α W b²/(E t³): edges resting, a/b 1 0.1267, 1.2 0.1478, 1.4 0.1621, 1.6 0.1715, 1.8 0.1770, 2 0.1805,"
                    + " long 0.1851",
            "Roark's Formulas for Stress and Strain, 7th ed., Table 11.4 case 1b",
            false,
            new double[] {1, 1.2, 1.4, 1.6, 1.8, 2, 3},
            new double[] {0.1267, 0.1478, 0.1621, 0.1715, 0.1770, 0.1805, 0.1851}),
    /** All edges fixed, force in the middle, by longer over shorter side. */
    EDGES_FIXED(
            "y = α W b²/(E t³): edges fixed, a/b 1 0.0611, 1.2 0.0706, 1.4 0.0754, 1.6 0.0777, 1.8 0.0786, 2 0.0788,"
                    + " long 0.0791",
            "from memory: Roark's Formulas for Stress and Strain, 7th ed., Table 11.4 case 8b",
            false,
            new double[] {1, 1.2, 1.4, 1.6, 1.8, 2, 3},
            new double[] {0.0611, 0.0706, 0.0754, 0.0777, 0.0786, 0.0788, 0.0791}),
    /** On two parallels, force in the middle, by width over span. */
    PARALLELS_MIDDLE(
            "y = c W L²/D: on two parallels, force in the middle, w/L 0.25 0.0898, 0.5 0.0438, 1 0.0232, 2 0.0175, 4 0.0170",
            PlateTable.ELEMENTS,
            true,
            new double[] {0.25, 0.5, 1, 2, 4},
            new double[] {0.0898, 0.0438, 0.0232, 0.0175, 0.0170}),
    /** On two parallels, force at the middle of a free edge, by width over span. */
    PARALLELS_EDGE(
            "y = c W L²/D: on two parallels, force on a free edge, w/L 0.25 0.1042, 0.5 0.0686, 1 0.0594, 2 and more 0.0587",
            PlateTable.ELEMENTS,
            true,
            new double[] {0.25, 0.5, 1, 2, 4},
            new double[] {0.1042, 0.0686, 0.0594, 0.0587, 0.0587}),
    /** Standing out from its hold, force at the middle of the free edge, by width over length out. */
    OVERHANG(
            "y = c W L²/D: standing out, force at the middle of the free edge, w/L 0.5 0.708, 1 0.362, 2 0.211, 4 0.169,"
                    + " long 0.168",
            PlateTable.ELEMENTS,
            true,
            new double[] {0.5, 1, 2, 4, 8},
            new double[] {0.708, 0.362, 0.211, 0.169, 0.168});

    private static final String ELEMENTS = "computed: plate elements of 12 degrees of freedom, checked against Roark";

    private final Table table;
    private final boolean narrows;
    private final double[] ratios;
    private final double[] values;

    PlateTable(String text, String source, boolean narrows, double[] ratios, double[] values) {
        this.table = new Table("coefficient of the plate", text, Unit.NONE, Source.of(source));
        this.narrows = narrows;
        this.ratios = ratios;
        this.values = values;
    }

    public Table table() {
        return table;
    }

    /** The coefficient; a strip narrower than the narrowest row gives in proportion to its width, as a beam does. */
    public double at(double ratio) {
        if (ratio <= ratios[0]) {
            return narrows ? values[0] * ratios[0] / ratio : values[0];
        }
        for (int i = 1; i < ratios.length; i++) {
            if (ratio <= ratios[i]) {
                double share = (ratio - ratios[i - 1]) / (ratios[i] - ratios[i - 1]);
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }

    /** The coefficient with the row that it was read at. */
    public Worked of(double ratio) {
        return table.of("sides " + Math.round(100 * ratio) / 100.0 + " to 1", at(ratio));
    }

    /** Every table, for whoever shows them. */
    public static List<Table> tables() {
        return List.of(values()).stream().map(PlateTable::table).toList();
    }
}
