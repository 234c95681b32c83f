package setwright.plan.part;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.plan.Rows;
import setwright.shop.ColletBlock;
import setwright.shop.Vise;

/** The vise that a collet block is held in: one that is clocked in, else the widest that is owned. */
public final class DeviceVise {
    private DeviceVise() {}

    public static Optional<Vise> of(ColletBlock block, Rows rows) {
        List<String> clockedIn = rows.job().plan().machine().clockedIn();
        return rows.all(Vise.class).stream()
                .filter(vise -> vise.kept().owned() != 0
                        && vise.openingOutboard().inside()
                                >= block.acrossFlats().inside())
                .min(Comparator.comparing((Vise vise) -> !clockedIn.contains(vise.id()))
                        .thenComparing(vise -> -vise.jawWidth().inside())
                        .thenComparing(Vise::id));
    }
}
