package setwright.job.note;

import java.util.List;
import java.util.Optional;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.note.NoteRead.Kind;
import setwright.job.note.NoteRead.One;
import setwright.job.note.NoteRead.Refused;
import setwright.shop.Material;
import setwright.shop.Shop;

/** A new job from a title block and drawing notes; holding, operations and tools are left to the pencil. */
public final class NewJob {
    private static final int MOST_OFF = 100_000;

    private NewJob() {}

    /**
     * A job of the notes that can be read, those that lack something with what is likely.
     *
     * @return the job; a refusal of the title block, or of the first note that is refused or may mean two things
     */
    public static NoteRead<Job> of(TitleBlock block, String notes, Shop shop) {
        NoteRead<BlankNote> blank = Blanks.read(block.blank(), block.units());
        if (!(blank instanceof One<BlankNote> read)) {
            return untyped(blank);
        }
        NoteSheet sheet = NoteSheet.read(
                notes, new NoteContext(block.units(), read.value().blank(), List.of()));
        for (NoteSheet.Line line : sheet.lines()) {
            if (line.likely().kind() != Kind.ONE) {
                return refused("Line " + line.number() + ", " + line.note() + ": " + why(line.likely()));
            }
        }
        return of(block, sheet.features(), shop);
    }

    /** A job of features that are read already. */
    public static NoteRead<Job> of(TitleBlock block, List<Feature> features, Shop shop) {
        NoteRead<BlankNote> read = Blanks.read(block.blank(), block.units());
        if (!(read instanceof One<BlankNote> blank)) {
            return untyped(read);
        }
        if (block.numberOff() < 1 || block.numberOff() > MOST_OFF) {
            return refused("The number off is " + block.numberOff() + "; 1 to " + MOST_OFF + " is accepted.");
        }
        String called = block.material().isBlank() ? blank.value().material() : block.material();
        Optional<Material> material = Materials.called(called, shop);
        if (material.isEmpty() && !called.isBlank()) {
            return refused(Materials.unknown(called, shop));
        }
        JobPlan plan = new JobPlan(
                block.title(),
                block.units(),
                block.numberOff(),
                material.map(Material::id).orElse(Materials.UNKNOWN_STEEL),
                blank.value().blank(),
                block.machine(),
                features,
                List.of(),
                List.of());
        return new One<>(new Job(plan, JobRecord.EMPTY), blank.sentence() + ", " + block.numberOff() + " off");
    }

    private static String why(NoteRead<?> read) {
        return switch (read.kind()) {
            case REFUSED -> ((Refused<?>) read).message();
            case SEVERAL -> "it may mean two things; pick one, or write it so that it means one.";
            case MISSING -> ((NoteRead.Missing<?>) read).question().asks();
            case ONE -> "";
        };
    }

    private static NoteRead<Job> refused(String message) {
        return new Refused<>(message, 0, 0);
    }

    /** A reading without a value is one of any type. */
    private static NoteRead<Job> untyped(NoteRead<BlankNote> read) {
        return switch (read.kind()) {
            case REFUSED ->
                new Refused<>(((Refused<?>) read).message(), ((Refused<?>) read).from(), ((Refused<?>) read).to());
            case SEVERAL -> new NoteRead.Several<>(((NoteRead.Several<?>) read).offers());
            case MISSING -> new NoteRead.Missing<>(((NoteRead.Missing<?>) read).question());
            case ONE -> throw new IllegalStateException("A reading with a value was handed on as one without.");
        };
    }
}
