package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Feature;
import setwright.job.InWords;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.note.NoteRead;
import setwright.job.note.Spoken;
import setwright.shop.Material;
import setwright.shop.Shop;
import setwright.window.state.Entry;

/** The page of drawing notes as it stands: title block, notes with their sentences, the line that is being typed. */
public final class EntryModel {
    private EntryModel() {}

    public static EntryPage of(Entry entry, Job job, Shop shop) {
        if (!entry.open()) {
            return EntryPage.CLOSED;
        }
        NoteState note = NoteState.of(entry, job.plan());
        List<Field> title = entry.page() == Entry.Page.NEW_JOB ? new TitleModel(job, shop).fields(entry) : List.of();
        return new EntryPage(
                entry.page(),
                title,
                complaint(title),
                readBack(job.plan(), shop),
                notes(entry.before(), job.plan()),
                entry.note(),
                note.sentence(),
                note.refused(),
                note.asks(),
                entry.answer().isEmpty() ? note.likelyAnswer() : entry.answer(),
                note.offers());
    }

    private static String complaint(List<Field> title) {
        return title.stream()
                .filter(field -> !field.said().isEmpty())
                .map(Field::said)
                .findFirst()
                .orElse("");
    }

    private static String readBack(JobPlan plan, Shop shop) {
        String material =
                shop.row(plan.material(), Material.class).map(Material::name).orElse(plan.material());
        return Words.capital(InWords.blank(plan.blank())) + ", " + material + ", " + plan.numberOff() + " off";
    }

    /** Features that came of one note stand behind each other. */
    private static List<EntryPage.Noted> notes(List<Feature> features, JobPlan plan) {
        List<EntryPage.Noted> all = new ArrayList<>();
        Spoken spoken = new Spoken(plan.units());
        for (int from = 0; from < features.size(); ) {
            int to = from + 1;
            String note = features.get(from).note();
            while (to < features.size()
                    && !note.isEmpty()
                    && features.get(to).note().equals(note)) {
                to++;
            }
            List<Feature> together = features.subList(from, to);
            String said = to - from == 6 ? "Every side faced to the sizes of the blank" : spoken.all(together);
            all.add(new EntryPage.Noted(note.isEmpty() ? InWords.feature(features.get(from)) : note, said));
            from = to;
        }
        return all;
    }

    /** The note of an offer by its number from 1; empty where there is none such. */
    public static String picked(List<NoteRead.Offer> offers, int number) {
        return number >= 1 && number <= offers.size() ? offers.get(number - 1).note() : "";
    }
}
