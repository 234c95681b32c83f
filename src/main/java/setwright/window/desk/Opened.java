package setwright.window.desk;

import java.nio.file.Path;
import setwright.job.Job;
import setwright.shop.Shop;
import setwright.window.state.Document;

/** A document with the shop that belongs to it. */
public record Opened(Document document, Shop shop) {
    public static Opened file(Path file, Job job, Shop shop) {
        return new Opened(Document.opened(file, job), shop);
    }
}
