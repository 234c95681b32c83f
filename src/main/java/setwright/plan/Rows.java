package setwright.plan;

import java.util.List;
import java.util.Optional;
import setwright.job.Job;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.Parallels;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.ToolMaterial;
import setwright.shop.Vise;

/** The rows that a job is worked out with: the copies that it carries, then what the shop has. */
public record Rows(Job job, Shop shop) {
    /** The id that stands where the pencil found nothing that fits. */
    public static final String NOTHING = "none";

    public static Rows of(Job job, Shop shop) {
        return new Rows(
                job, job.plan().rows().isEmpty() ? shop : shop.with(job.plan().rows()));
    }

    public Machine machine() {
        return required(job.plan().machine().machine(), Machine.class);
    }

    public Material material() {
        return required(job.plan().material(), Material.class);
    }

    public Optional<Cutter> cutter(String id) {
        return shop.row(id, Cutter.class);
    }

    public Optional<Holder> holder(String id) {
        return shop.row(id, Holder.class);
    }

    public Optional<Vise> vise(String id) {
        return shop.row(id, Vise.class);
    }

    public Optional<Parallels> parallels(String id) {
        return shop.row(id, Parallels.class);
    }

    public Optional<FrictionPair> friction(String id) {
        return shop.row(id, FrictionPair.class);
    }

    public Optional<HandTime> time(String id) {
        return shop.row(id, HandTime.class);
    }

    public Optional<CuttingSpeed> cuttingSpeed(Cutter.Form form, ToolMaterial tool) {
        return shop.all(CuttingSpeed.class).stream()
                .filter(row -> row.material().equals(job.plan().material()) && row.form() == form && row.tool() == tool)
                .findFirst();
    }

    public <T extends ShopRow> List<T> all(Class<T> kind) {
        return shop.all(kind);
    }

    private <T extends ShopRow> T required(String id, Class<T> kind) {
        return shop.row(id, kind)
                .orElseThrow(() -> new IllegalStateException(
                        "The shop has no " + kind.getSimpleName() + " " + id + "; choose another or add its row."));
    }
}
