package setwright.window.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import setwright.job.JobPlan;
import setwright.plan.choose.HolderRank;
import setwright.quantity.UnitSystem;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.Owned;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.Vise;
import setwright.window.state.QuickField;
import setwright.window.state.QuickFields;

/** What may stand in the fields of the quick check, and what stands there where nobody said otherwise. */
final class QuickRows {
    /** Written in place of a vise where the work lies strapped on the table. */
    static final String TABLE = "table";

    private static final double USUAL_CUTTER = 12;

    private final Shop shop;
    private final JobPlan beside;

    QuickRows(Shop shop, JobPlan beside) {
        this.shop = shop;
        this.beside = beside;
    }

    /** The fields with what is usual in those that are empty or name what the shop no longer has. */
    QuickFields filled(QuickFields typed) {
        QuickFields filled = typed;
        for (QuickField field : QuickField.values()) {
            List<Choice> choices = choices(field, filled);
            String text = filled.text(field);
            boolean gone = !choices.isEmpty()
                    && choices.stream().noneMatch(choice -> choice.value().equals(text));
            if (!field.plannable() && (text.isEmpty() || gone)) {
                filled = filled.with(field, usual(field, filled));
            } else if (gone) {
                filled = filled.with(field, "");
            }
        }
        return filled;
    }

    /** Empty where the field is typed. */
    List<Choice> choices(QuickField field, QuickFields filled) {
        return switch (field) {
            case MACHINE -> rows(owned(Machine.class));
            case HELD -> held();
            case MATERIAL -> rows(shop.all(Material.class));
            case CUTTER ->
                rows(owned(Cutter.class).stream()
                        .filter(cutter -> !QuickKind.with(cutter).isEmpty())
                        .toList());
            case HOLDER -> holders(filled);
            case OPERATION ->
                cutter(filled).map(QuickKind::with).orElse(List.of()).stream()
                        .map(QuickKind::choice)
                        .toList();
            case HEIGHT, STICK_OUT, CUT -> List.of();
        };
    }

    Optional<Cutter> cutter(QuickFields filled) {
        return shop.row(filled.text(QuickField.CUTTER), Cutter.class);
    }

    private List<Choice> held() {
        List<Choice> all = new ArrayList<>(rows(owned(Vise.class)));
        all.add(new Choice(TABLE, "Strapped to the table"));
        return all;
    }

    private List<Choice> holders(QuickFields filled) {
        Optional<Machine> machine = shop.row(filled.text(QuickField.MACHINE), Machine.class);
        return cutter(filled).stream()
                .flatMap(cutter -> machine.stream().map(on -> HolderRank.of(cutter, on, shop.all(Holder.class))))
                .flatMap(List::stream)
                .map(candidate -> new Choice(
                        candidate.holder().id(), candidate.holder().name(), String.join("; ", candidate.against())))
                .toList();
    }

    private String usual(QuickField field, QuickFields filled) {
        return switch (field) {
            case MACHINE -> likely(beside.machine().machine(), owned(Machine.class));
            case HELD -> first(owned(Vise.class), vise -> -vise.jawWidth().inside());
            case MATERIAL -> likely(beside.material(), shop.all(Material.class));
            case HEIGHT -> either("25 mm", "1 in");
            case CUTTER -> usualCutter();
            case OPERATION ->
                choices(field, filled).stream().map(Choice::value).findFirst().orElse("");
            case CUT -> usualCut(filled);
            case HOLDER, STICK_OUT -> "";
        };
    }

    private String usualCutter() {
        return first(
                owned(Cutter.class).stream()
                        .filter(cutter -> cutter.form() == Cutter.Form.END_MILL)
                        .toList(),
                cutter -> Math.abs(cutter.diameter().inside() - USUAL_CUTTER));
    }

    private String usualCut(QuickFields filled) {
        return switch (QuickKind.named(filled.text(QuickField.OPERATION)).orElse(QuickKind.STEP)) {
            case STEP -> either("3 x 6", "1/8 x 1/4");
            case FACE -> either("1 x 6", "1/32 x 1/4");
            case SLOT, SPOT -> either("3", "1/8");
            case DRILL, REAM, TAP -> either("20", "3/4");
        };
    }

    private String either(String metric, String inch) {
        return beside.units() == UnitSystem.METRIC ? metric : inch;
    }

    private <R extends Owned> List<R> owned(Class<R> kind) {
        return shop.all(kind).stream().filter(row -> row.kept().owned() != 0).toList();
    }

    private static String likely(String id, List<? extends ShopRow> rows) {
        return rows.stream()
                .map(ShopRow::id)
                .filter(id::equals)
                .findFirst()
                .orElseGet(() -> rows.isEmpty() ? "" : rows.get(0).id());
    }

    private static <R extends ShopRow> String first(List<R> rows, Function<R, Double> order) {
        return rows.stream().min(Comparator.comparing(order)).map(ShopRow::id).orElse("");
    }

    private static List<Choice> rows(List<? extends ShopRow> rows) {
        return rows.stream().map(row -> new Choice(row.id(), row.name())).toList();
    }
}
