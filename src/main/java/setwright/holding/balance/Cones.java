package setwright.holding.balance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The rows and columns of a friction balance, scaled to about one: six rows for force and moment about the centre of the
 * contacts (forces divided by all that presses, moments also by the half-spread), then one row for each group that
 * presses. A contact has one column for each edge of its cone: normal + friction (cos φ · t1 + sin φ · t2), and the row of
 * its group, if any. Weighted columns plus the load have to add up to {@link #right()}.
 */
final class Cones implements Columns {
    private final Vector centre;
    private final double spread;
    private final double force;
    private final int rows;
    private final int edges;
    private final double[] cosines;
    private final double[] sines;
    private final double[][] square;
    private final double[][] along;
    private final double[][] across;
    private final double[] right;

    Cones(Grip grip, int edges) {
        List<Contact> contacts = grip.contacts();
        Map<String, Double> groups = groups(contacts);
        this.edges = edges;
        centre = grip.centre();
        spread = grip.halfSpread();
        Load weight = grip.ownWeight();
        double all =
                grip.pressed() + weight.force().length() + weight.about(centre).length() / spread;
        force = all > 0 ? all : 1;
        rows = 6 + groups.size();
        cosines = new double[edges];
        sines = new double[edges];
        for (int j = 0; j < edges; j++) {
            cosines[j] = StrictMath.cos(2 * Math.PI * j / edges);
            sines[j] = StrictMath.sin(2 * Math.PI * j / edges);
        }
        square = new double[contacts.size()][];
        along = new double[contacts.size()][];
        across = new double[contacts.size()][];
        List<String> names = List.copyOf(groups.keySet());
        for (int i = 0; i < contacts.size(); i++) {
            lay(i, contacts.get(i), names);
        }
        right = right(weight, groups);
    }

    private void lay(int i, Contact contact, List<String> groups) {
        Vector first = (Math.abs(contact.normal().x()) < 0.9 ? Vector.RIGHT : Vector.AWAY);
        Vector t1 =
                first.minus(contact.normal().times(first.dot(contact.normal()))).unit();
        Vector t2 = contact.normal().cross(t1);
        square[i] = column(contact, contact.normal());
        along[i] = column(contact, t1.times(contact.friction()));
        across[i] = column(contact, t2.times(contact.friction()));
        if (contact.press() != null) {
            square[i][6 + groups.indexOf(groupOf(contact.press(), i))] = 1;
        }
    }

    private double[] column(Contact contact, Vector direction) {
        return wrench(new double[rows], direction, contact.at().minus(centre).cross(direction));
    }

    private double[] wrench(double[] into, Vector f, Vector moment) {
        into[0] = f.x();
        into[1] = f.y();
        into[2] = f.z();
        into[3] = moment.x() / spread;
        into[4] = moment.y() / spread;
        into[5] = moment.z() / spread;
        return into;
    }

    private double[] right(Load weight, Map<String, Double> groups) {
        double[] sums = load(weight);
        for (int i = 0; i < rows; i++) {
            sums[i] = -sums[i] / force;
        }
        int row = 6;
        for (double total : groups.values()) {
            sums[row++] = total / force;
        }
        return sums;
    }

    private static Map<String, Double> groups(List<Contact> contacts) {
        Map<String, Double> groups = new LinkedHashMap<>();
        for (int i = 0; i < contacts.size(); i++) {
            Press press = contacts.get(i).press();
            if (press != null) {
                groups.merge(groupOf(press, i), press.newtons(), Double::sum);
            }
        }
        return groups;
    }

    /** Who presses alone is a group of one, under a name that nobody can type. */
    private static String groupOf(Press press, int contact) {
        return press.alone() ? "\0" + contact : press.group();
    }

    @Override
    public int rows() {
        return rows;
    }

    int edges() {
        return edges;
    }

    @Override
    public int columns() {
        return square.length * edges;
    }

    @Override
    public double[] right() {
        return right;
    }

    /** Newtons that stand for one. */
    double force() {
        return force;
    }

    double spread() {
        return spread;
    }

    /** A load as a column, not scaled: newtons, and moments about the centre divided by the half-spread. */
    double[] load(Load load) {
        return wrench(new double[rows], load.force(), load.about(centre));
    }

    @Override
    public double[] column(int id) {
        int contact = id / edges;
        double cosine = cosines[id % edges];
        double sine = sines[id % edges];
        double[] column = new double[rows];
        for (int i = 0; i < rows; i++) {
            column[i] = square[contact][i] + cosine * along[contact][i] + sine * across[contact][i];
        }
        return column;
    }

    @Override
    public double[] products(double[] row, double @Nullable [] into) {
        double[] products = into == null ? new double[columns()] : into;
        int id = 0;
        for (int contact = 0; contact < square.length; contact++) {
            double straight = dot(row, square[contact]);
            double first = dot(row, along[contact]);
            double second = dot(row, across[contact]);
            for (int j = 0; j < edges; j++) {
                products[id++] = straight + first * cosines[j] + second * sines[j];
            }
        }
        return products;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
