package setwright.geometry;

import java.util.List;

/**
 * The place nearest to the origin of up to four corners, and the fewest of them between which it lies.
 *
 * @param corners those that count
 * @param shares how much each counts; together 1
 * @param around true where the origin lies within
 */
record Simplex(List<Corner> corners, double[] shares, boolean around) {
    /** A tetrahedron flatter than this share of its edges cubed has no inside. */
    private static final double FLAT = 1e-12;

    /**
     * A place of the tool less a place of the body.
     *
     * @param tool the place on the tool
     * @param body the place on the body
     * @param along how far along the move the tool then is
     */
    record Corner(Point3 at, Point3 tool, Point3 body, double along) {}

    static Simplex nearest(List<Corner> corners) {
        return switch (corners.size()) {
            case 1 -> new Simplex(corners, new double[] {1}, false);
            case 2 -> line(corners.get(0), corners.get(1));
            case 3 -> triangle(corners.get(0), corners.get(1), corners.get(2));
            default -> tetrahedron(corners);
        };
    }

    Point3 place() {
        Point3 sum = Point3.ORIGIN;
        for (int i = 0; i < shares.length; i++) {
            sum = sum.plus(corners.get(i).at().times(shares[i]));
        }
        return sum;
    }

    Point3 tool() {
        Point3 sum = Point3.ORIGIN;
        for (int i = 0; i < shares.length; i++) {
            sum = sum.plus(corners.get(i).tool().times(shares[i]));
        }
        return sum;
    }

    Point3 body() {
        Point3 sum = Point3.ORIGIN;
        for (int i = 0; i < shares.length; i++) {
            sum = sum.plus(corners.get(i).body().times(shares[i]));
        }
        return sum;
    }

    double along() {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * corners.get(i).along();
        }
        return sum;
    }

    private static Simplex line(Corner a, Corner b) {
        Point3 step = b.at().minus(a.at());
        double squared = step.dot(step);
        double share = squared == 0 ? 0 : -a.at().dot(step) / squared;
        if (share <= 0) {
            return new Simplex(List.of(a), new double[] {1}, false);
        }
        return share >= 1
                ? new Simplex(List.of(b), new double[] {1}, false)
                : new Simplex(List.of(a, b), new double[] {1 - share, share}, false);
    }

    private static Simplex triangle(Corner a, Corner b, Corner c) {
        Point3 normal = cross(b.at().minus(a.at()), c.at().minus(a.at()));
        double squared = normal.dot(normal);
        double forA = normal.dot(cross(b.at(), c.at()));
        double forB = normal.dot(cross(c.at(), a.at()));
        double forC = normal.dot(cross(a.at(), b.at()));
        if (squared > 0 && forA > 0 && forB > 0 && forC > 0) {
            double sum = forA + forB + forC;
            return new Simplex(List.of(a, b, c), new double[] {forA / sum, forB / sum, forC / sum}, false);
        }
        return nearer(nearer(line(a, b), line(b, c)), line(c, a));
    }

    private static Simplex tetrahedron(List<Corner> all) {
        Point3 a = all.get(0).at();
        Point3 b = all.get(1).at();
        Point3 c = all.get(2).at();
        Point3 d = all.get(3).at();
        double whole = triple(b.minus(a), c.minus(a), d.minus(a));
        double[] shares = {
            triple(b, c, d) / whole, -triple(a, c, d) / whole, triple(a, b, d) / whole, -triple(a, b, c) / whole
        };
        double size = b.distance(a) * c.distance(a) * d.distance(a);
        boolean hollow = Math.abs(whole) > FLAT * size;
        if (hollow && shares[0] >= 0 && shares[1] >= 0 && shares[2] >= 0 && shares[3] >= 0) {
            return new Simplex(all, shares, true);
        }
        Simplex best = null;
        for (int i = 0; i < 4; i++) {
            if (!hollow || shares[i] < 0) {
                Simplex face = triangle(all.get((i + 1) % 4), all.get((i + 2) % 4), all.get((i + 3) % 4));
                best = best == null ? face : nearer(best, face);
            }
        }
        return best == null ? triangle(all.get(1), all.get(2), all.get(3)) : best;
    }

    private static Simplex nearer(Simplex one, Simplex other) {
        return other.place().length() < one.place().length() ? other : one;
    }

    private static double triple(Point3 a, Point3 b, Point3 c) {
        return a.dot(cross(b, c));
    }

    static Point3 cross(Point3 a, Point3 b) {
        return new Point3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
