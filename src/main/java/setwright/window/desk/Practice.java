package setwright.window.desk;

import java.util.Comparator;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.plan.Rows;
import setwright.plan.pencil.Pencil;
import setwright.shop.Parallels;
import setwright.shop.Shop;
import setwright.window.state.Document;

/** Makes the practice job: its last step put in the thickest parallels of the shop, which a drill then meets. */
final class Practice {
    private Practice() {}

    /** One set-up is enough to begin with: what the drawing asks for on other sides than the top is left out. */
    static Job topAlone(Job job) {
        return job.withPlan(job.plan()
                .withFeatures(job.plan().features().stream()
                        .filter(feature -> feature.side() == Side.TOP)
                        .toList()));
    }

    static Document withThickParallels(Document document, Shop shop) {
        Job job = document.job();
        DrawnUp drawnUp = Pencil.drawUp(job, Rows.of(job, shop));
        Optional<Parallels> thick = shop.all(Parallels.class).stream()
                .max(Comparator.comparingDouble(set -> set.thickness().inside()));
        if (drawnUp.setUps().isEmpty() || thick.isEmpty()) {
            return document;
        }
        DrawnSetUp first = drawnUp.setUps().get(0);
        Job changed = Edits.set(
                drawnUp,
                first.id(),
                ViseField.PARALLELS,
                Plannable.inked(thick.get().id()));
        Document practice = document.with(document.history().step(thick.get().name() + " into the vise", "", changed));
        return new Document(practice.history(), null, document.untitled(), practice.job());
    }
}
