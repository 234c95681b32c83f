package setwright.window.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.job.InWords;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Standing;
import setwright.job.Title;
import setwright.job.note.BlankNote;
import setwright.job.note.Blanks;
import setwright.job.note.Materials;
import setwright.job.note.NoteRead;
import setwright.quantity.UnitSystem;
import setwright.quantity.Unreadable;
import setwright.shop.Material;
import setwright.shop.Shop;
import setwright.window.state.Entry;
import setwright.window.state.Entry.TitleField;

/** The title block: what each text makes of the job, and why it cannot be read. */
public final class TitleModel {
    private final Job job;
    private final Shop shop;

    public TitleModel(Job job, Shop shop) {
        this.job = job;
        this.shop = shop;
    }

    /**
     * The job with this text in its title block.
     *
     * @throws Unreadable where the text says nothing of that kind
     */
    public Job with(TitleField field, String text) {
        JobPlan plan = job.plan();
        Title title = plan.title();
        return job.withPlan(
                switch (field) {
                    case BLANK -> blank(text);
                    case MATERIAL -> plan.withMaterial(material(text));
                    case OFF -> plan.withNumberOff(PartPlace.count(text));
                    case UNITS -> plan.withUnits(UnitSystem.valueOf(text));
                    case PART -> plan.withTitle(new Title(text, title.drawing(), title.revision()));
                    case DRAWING -> plan.withTitle(new Title(title.part(), text, title.revision()));
                });
    }

    /** A material that stands behind the sizes is taken with them. */
    private JobPlan blank(String text) {
        NoteRead<BlankNote> read = Blanks.read(text, job.plan().units());
        if (read instanceof NoteRead.One<BlankNote> one) {
            BlankNote note = one.value();
            JobPlan sized = job.plan().withBlank(note.blank());
            return note.material().isBlank() ? sized : sized.withMaterial(material(note.material()));
        }
        throw new Unreadable(why(read));
    }

    private static String why(NoteRead<BlankNote> read) {
        return switch (read.kind()) {
            case REFUSED -> ((NoteRead.Refused<BlankNote>) read).message();
            case SEVERAL ->
                "may mean "
                        + String.join(
                                ", or ",
                                ((NoteRead.Several<BlankNote>) read)
                                        .offers().stream()
                                                .map(offer -> offer.note() + " (" + offer.sentence() + ")")
                                                .toList())
                        + "; write it as one of them";
            case MISSING -> ((NoteRead.Missing<BlankNote>) read).question().asks();
            case ONE -> "";
        };
    }

    private String material(String words) {
        return Materials.called(words, shop)
                .map(Material::id)
                .orElseThrow(() -> new Unreadable(Materials.unknown(words, shop)));
    }

    List<Field> fields(Entry entry) {
        return Arrays.stream(TitleField.values())
                .map(field -> field(field, entry))
                .toList();
    }

    private Field field(TitleField field, Entry entry) {
        String text = entry.title().getOrDefault(field, text(field));
        List<Choice> choices =
                field == TitleField.UNITS ? List.of(new Choice("METRIC", "mm"), new Choice("INCH", "inch")) : List.of();
        return new Field(
                "title." + field.name(), field.words(), text, Standing.INKED, complaint(field, entry), choices);
    }

    /** Why a text that stands in the title block cannot be read; empty where it can. */
    private String complaint(TitleField field, Entry entry) {
        return Optional.ofNullable(entry.title().get(field))
                .map(text -> whyNot(field, text))
                .orElse("");
    }

    private String whyNot(TitleField field, String text) {
        try {
            with(field, text);
            return "";
        } catch (Unreadable why) {
            return String.valueOf(why.getMessage());
        }
    }

    private String text(TitleField field) {
        JobPlan plan = job.plan();
        return switch (field) {
            case BLANK -> InWords.blank(plan.blank()).replace("block ", "");
            case MATERIAL ->
                shop.row(plan.material(), Material.class).map(Material::name).orElse(plan.material());
            case OFF -> Integer.toString(plan.numberOff());
            case UNITS -> plan.units().name();
            case PART -> plan.title().part();
            case DRAWING -> plan.title().drawing();
        };
    }
}
