package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Margin;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.OperationField;
import setwright.job.Standing;
import setwright.plan.NotChecked;
import setwright.quantity.Measure;
import setwright.review.Margins;
import setwright.review.SignOffs;

/** The job for whoever answers for it: margins, cautions, what it rests on, tolerances, signatures. */
public final class ReviewModel {
    private static final int MARGINS = 5;

    private final Planned planned;
    private final SignOffs signOffs;

    private ReviewModel(Planned planned) {
        this.planned = planned;
        this.signOffs = SignOffs.of(planned.job().record(), planned.fingerprint());
    }

    public static Review of(Planned planned) {
        ReviewModel model = new ReviewModel(planned);
        return new Review(
                List.of(
                        new Review.Section("The five thinnest margins", model.margins()),
                        new Review.Section("Cautions", model.cautions()),
                        new Review.Section("What could not be checked, and what it needs", model.unlooked()),
                        new Review.Section("What it rests on: values that nobody inked", model.pencilled()),
                        new Review.Section("Tolerances of place", model.places()),
                        new Review.Section("Choices against the ranking", model.chosen()),
                        new Review.Section("Signed", model.signed())),
                model.sign());
    }

    private String sign() {
        return signOffs.next().map(sign -> "Sign: " + Words.of(sign)).orElse("");
    }

    private List<Review.Item> margins() {
        return Margins.thinnest(planned.plan(), planned.findings(), MARGINS).stream()
                .map(this::margin)
                .toList();
    }

    private Review.Item margin(Margin margin) {
        Caution.Place place = margin.place();
        String words = Margins.words(margin, planned.printing()).replace(" " + place.address(), "");
        return new Review.Item(Badge.NONE, words, planned.brief(place.operation()), place.setUp(), place.operation());
    }

    private List<Review.Item> cautions() {
        List<Review.Item> items =
                planned.findings().judged().stream().map(this::caution).toList();
        return items.isEmpty() ? List.of(Review.Item.of("None found.", "")) : items;
    }

    private Review.Item caution(Findings.Judged judged) {
        Caution caution = judged.caution();
        String said = judged.accepted()
                .map(accepted -> "accepted by " + accepted.by() + ": " + accepted.reason())
                .orElse(open(caution));
        return new Review.Item(
                Badges.of(caution),
                NextModel.firstSentence(NextModel.said(planned, caution)),
                said,
                caution.setUp(),
                caution.operation());
    }

    private static String open(Caution caution) {
        String words = caution.severity().onScreen();
        return caution.severity() == Severity.NOTE ? words : words + ", open";
    }

    private List<Review.Item> unlooked() {
        List<NotChecked> all = planned.findings().notChecked();
        return all.isEmpty()
                ? List.of(Review.Item.of("Every check could look.", ""))
                : all.stream().map(this::unlooked).toList();
    }

    private Review.Item unlooked(NotChecked what) {
        String where = planned.operation(what.operation())
                .map(operation -> ", " + planned.words().brief(operation))
                .orElse("");
        return new Review.Item(
                Badge.NONE,
                Words.capital(what.check().replace('-', ' ')) + where,
                "needs " + what.needs(),
                what.setUp(),
                what.operation());
    }

    private List<Review.Item> pencilled() {
        List<Review.Item> items = new ArrayList<>();
        planned.plan()
                .drawnUp()
                .setUps()
                .forEach(setUp -> setUp.operations().forEach(operation -> {
                    List<String> open = OperationField.all().stream()
                            .filter(field -> planned.value(operation, field).standing() == Standing.PENCILLED)
                            .map(field -> field.key())
                            .toList();
                    if (!open.isEmpty()) {
                        items.add(item(operation, setUp.id(), open.size()));
                    }
                }));
        return items;
    }

    private Review.Item item(DrawnOperation operation, String setUp, int open) {
        return new Review.Item(
                Badge.NONE,
                planned.words().brief(operation),
                open + " of " + OperationField.all().size() + " pencilled",
                setUp,
                operation.id());
    }

    private List<Review.Item> places() {
        return planned.plan().place().budgets().stream()
                .map(budget -> new Review.Item(
                        Badge.NONE,
                        Words.capital(budget.what()) + ": "
                                + planned.printing().of(budget.rss()) + " root-sum-square, "
                                + planned.printing().of(budget.worstCase()) + " worst case",
                        "of " + planned.printing().of(Measure.LENGTH, budget.limit()) + "; most by " + budget.largest(),
                        budget.setUp(),
                        budget.operation()))
                .toList();
    }

    private List<Review.Item> chosen() {
        List<Review.Item> items = AgainstRanking.of(planned);
        return items.isEmpty() ? List.of(Review.Item.of("None: what stands first is taken.", "")) : items;
    }

    private List<Review.Item> signed() {
        return signOffs.states().stream()
                .map(state -> Review.Item.of(state.words(), ""))
                .toList();
    }
}
