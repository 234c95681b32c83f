package setwright.caution.check;

import java.util.function.Function;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.InWords;
import setwright.job.Standing;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Quantity;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.shop.ShopRow;

/** How checks name things and numbers in their messages, in the units of the job. */
record Words(Plan plan) {
    Printing printing() {
        return new Printing(plan.job().plan().units());
    }

    Reading reading() {
        return new Reading(plan.job().plan().units());
    }

    String length(double mm) {
        return printing().of(Measure.LENGTH, mm);
    }

    /** To the thousandth of a millimetre or the ten-thousandth of an inch, for what an indicator shows. */
    String fine(double mm) {
        return switch (plan.job().plan().units()) {
            case METRIC -> printing().of(Measure.LENGTH, mm, 3);
            case INCH -> printing().of(Measure.LENGTH, mm, 4);
        };
    }

    /** A length as it is written into a field. */
    Typed<Length> typed(double mm) {
        return reading().length(length(mm));
    }

    /** What an operation cuts with, in the shop's words. */
    String cutter(DrawnOperation operation) {
        return row(operation.cutter().value());
    }

    String holder(DrawnOperation operation) {
        return row(operation.holder().value());
    }

    String row(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse(id);
    }

    /** What a field has now, and that it is ink where the change would rub ink out. */
    static <Q extends Quantity> String now(Drawn<Typed<Q>> field) {
        return now(field, Typed::text);
    }

    static <T> String now(Drawn<T> field, Function<T, String> text) {
        String ink = field.standing() == Standing.PENCILLED ? "" : ", " + standing(field.standing());
        return "(now " + text.apply(field.value()) + ink + ")";
    }

    private static String standing(Standing standing) {
        return switch (standing) {
            case PENCILLED -> "pencilled";
            case INKED -> "inked";
            case MEASURED -> "measured";
        };
    }

    String mass(double kg) {
        return printing().of(Measure.MASS, kg);
    }

    /** A force of a vise or a bolt: kilonewtons or pounds. */
    String force(double newtons) {
        return switch (plan.job().plan().units()) {
            case METRIC -> printing().of(Unit.KN, newtons);
            case INCH -> printing().of(Unit.LBF, newtons);
        };
    }

    /** A feature by its note on the drawing, else by its id. A note that is all numbers has its kind before it. */
    static String called(Feature feature) {
        String note = feature.note();
        String kind = InWords.word(feature.kind());
        if (note.isEmpty()) {
            return feature.id();
        }
        return Character.isLetter(note.charAt(0)) ? note : kind + " " + note;
    }

    /** A figure of any measure, in the units of the job. */
    String of(Measure measure, double inside) {
        return printing().of(measure, inside);
    }

    /** To the hundredth of a kilowatt or horsepower. */
    String power(double watts) {
        return printing().of(Measure.POWER, watts, 2);
    }

    /** Where: a set-up. */
    static String at(String setUp) {
        return "(" + setUp + ")";
    }

    /** Where: set-up and operation, as they are addressed everywhere. */
    static String at(String setUp, String operation) {
        return operation.isEmpty() ? "(" + setUp + ")" : "(" + setUp + "/" + operation + ")";
    }

    /** The same with a capital letter before it, to begin a sentence. */
    static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
