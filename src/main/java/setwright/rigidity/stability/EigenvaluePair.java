package setwright.rigidity.stability;

/**
 * The two roots Λ of a0 Λ² + a1 Λ + 1 = 0 with complex a0 and a1, kept apart from one frequency to the next: each is the
 * one nearest to what it was before. A root that does not exist (one flexible direction) is not a number.
 */
final class EigenvaluePair {
    private final double[] real = {Double.NaN, Double.NaN};
    private final double[] imaginary = {Double.NaN, Double.NaN};

    double real(int branch) {
        return real[branch];
    }

    double imaginary(int branch) {
        return imaginary[branch];
    }

    /** Goes on to the receptances of the next frequency. */
    void follow(DirectionalFactors factors, double xr, double xi, double yr, double yi) {
        double a0r = factors.determinant() * (xr * yr - xi * yi);
        double a0i = factors.determinant() * (xr * yi + xi * yr);
        double a1r = factors.xx() * xr + factors.yy() * yr;
        double a1i = factors.xx() * xi + factors.yy() * yi;
        double dr = a1r * a1r - a1i * a1i - 4 * a0r;
        double di = 2 * a1r * a1i - 4 * a0i;
        double size = StrictMath.hypot(dr, di);
        double rr = Math.sqrt(Math.max(0, (size + dr) / 2));
        double ri = Math.copySign(Math.sqrt(Math.max(0, (size - dr) / 2)), di);
        double sign = a1r * rr + a1i * ri < 0 ? -1 : 1;
        double qr = -(a1r + sign * rr) / 2;
        double qi = -(a1i + sign * ri) / 2;
        double q = qr * qr + qi * qi;
        double a0 = a0r * a0r + a0i * a0i;
        take(qr / q, -qi / q, (qr * a0r + qi * a0i) / a0, (qi * a0r - qr * a0i) / a0);
    }

    private void take(double oneReal, double oneImaginary, double otherReal, double otherImaginary) {
        double straight = apart(0, oneReal, oneImaginary) + apart(1, otherReal, otherImaginary);
        double crossed = apart(1, oneReal, oneImaginary) + apart(0, otherReal, otherImaginary);
        int one = crossed < straight ? 1 : 0;
        real[one] = oneReal;
        imaginary[one] = oneImaginary;
        real[1 - one] = otherReal;
        imaginary[1 - one] = otherImaginary;
    }

    /** Square of the distance from where a branch was. */
    private double apart(int branch, double r, double i) {
        double dr = r - real[branch];
        double di = i - imaginary[branch];
        return dr * dr + di * di;
    }
}
