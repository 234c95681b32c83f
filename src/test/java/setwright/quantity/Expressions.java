package setwright.quantity;

import java.util.Locale;
import java.util.random.RandomGenerator;

/** Random texts as a person might type them, with what they come to by ordinary arithmetic of doubles. */
final class Expressions {
    private Expressions() {}

    /** A text and its length in millimetres. */
    record Sum(String text, double mm) {}

    /** Sums and products of bare numbers; may divide by zero. */
    static String bare(RandomGenerator random, int depth) {
        if (depth == 0 || random.nextInt(4) == 0) {
            return number(random);
        }
        String left = bare(random, depth - 1);
        String right = bare(random, depth - 1);
        return switch (random.nextInt(6)) {
            case 0 -> left + " + " + right;
            case 1 -> left + " - " + right;
            case 2 -> left + "*" + right;
            case 3 -> left + " / " + right;
            case 4 -> "(" + left + ")";
            default -> left + " + " + right + (random.nextBoolean() ? " mm" : " in") + "*1";
        };
    }

    /** A sum in which every term has its unit. */
    static Sum withUnits(RandomGenerator random, int terms) {
        String text = "";
        double mm = 0;
        for (int i = 0; i < terms; i++) {
            Sum term = term(random);
            boolean minus = random.nextBoolean();
            text += text.isEmpty() ? (minus ? "-" : "") : (minus ? " - " : " + ");
            text += term.text();
            mm += minus ? -term.mm() : term.mm();
        }
        return new Sum(text, mm);
    }

    private static Sum term(RandomGenerator random) {
        double number = Math.round(random.nextDouble(0, 100) * 1000) / 1000.0;
        int whole = random.nextInt(1, 9);
        int part = random.nextInt(1, 63);
        return switch (random.nextInt(6)) {
            case 0 -> new Sum(number + " mm", number);
            case 1 -> new Sum(whole + "-" + part + "/64 in", (whole + part / 64.0) * 25.4);
            case 2 -> new Sum(part + "/" + whole + "\"", (double) part / whole * 25.4);
            case 3 -> new Sum(whole + "*" + number + "thou", whole * number * 0.0254);
            case 4 -> new Sum("(" + number + " mm + " + whole + "in)/" + part, (number + whole * 25.4) / part);
            default -> new Sum(whole + " " + part + "/64 in*" + whole, (whole + part / 64.0) * 25.4 * whole);
        };
    }

    private static String number(RandomGenerator random) {
        return switch (random.nextInt(4)) {
            case 0 -> Integer.toString(random.nextInt(100));
            case 1 -> String.format(Locale.ROOT, "%.3f", random.nextDouble(0, 100));
            case 2 -> random.nextInt(1, 10) + "-" + random.nextInt(1, 8) + "/8";
            default -> random.nextInt(1, 20) + "/" + random.nextInt(1, 64);
        };
    }
}
