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

/**
 * The rows that a job is worked out with: the copies that it carries, then what the shop has.
 *
 * @param shop the shop with the copies in the place of its own rows
 * @param today the shop as it stands, without the copies
 */
public record Rows(Job job, Shop shop, Shop today) {
    /** The id that stands where the pencil found nothing that fits. */
    public static final String NOTHING = "none";

    public static Rows of(Job job, Shop shop) {
        return new Rows(
                job, job.plan().rows().isEmpty() ? shop : shop.with(job.plan().rows()), shop);
    }

    /** Whether whatever is worked out by rows comes out the same with these: same shop, copies, machine and material. */
    boolean alike(Rows other) {
        return today == other.today
                && job.plan().rows().equals(other.job.plan().rows())
                && job.plan().material().equals(other.job.plan().material())
                && job.plan().machine().equals(other.job.plan().machine());
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

    /** The cutting speeds of a form, or of the form that stands for it where it has none of its own. */
    public Optional<CuttingSpeed> cuttingSpeed(Cutter.Form form, ToolMaterial tool) {
        return ownSpeed(form, tool).or(() -> ownSpeed(form.cutsLike(), tool));
    }

    private Optional<CuttingSpeed> ownSpeed(Cutter.Form form, ToolMaterial tool) {
        return shop.all(CuttingSpeed.class).stream()
                .filter(row -> row.material().equals(job.plan().material()) && row.form() == form && row.tool() == tool)
                .findFirst();
    }

    /** The row of that id where it is of that kind. */
    public <T extends ShopRow> Optional<T> row(String id, Class<T> kind) {
        return shop.row(id, kind);
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
