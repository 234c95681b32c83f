package setwright.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import setwright.file.ShopPlace;
import setwright.file.ShopRead;
import setwright.file.json.Problem;
import setwright.shop.Shop;

/** The shops that a command reads, each once. */
final class ShopShelf {
    private final @Nullable Path asked;
    private final Path working;
    private final Map<Optional<Path>, Shop> read = new LinkedHashMap<>();

    ShopShelf(@Nullable Path asked, Path working) {
        this.asked = asked;
        this.working = working;
    }

    /** The shop of a job; null for a job without a file. */
    Shop shop(@Nullable Path job) {
        Path folder = job == null ? null : job.toAbsolutePath().getParent();
        ShopPlace place = new ShopPlace(asked, null, folder, working);
        return read.computeIfAbsent(place.folder(), found -> opened(place.read()));
    }

    private static Shop opened(ShopRead shop) {
        if (shop instanceof ShopRead.Opened opened) {
            return opened.shop();
        }
        List<Problem> problems = ((ShopRead.Refused) shop).problems();
        throw new Complaint("The shop cannot be read:\n" + lines(problems));
    }

    private static String lines(List<Problem> problems) {
        return problems.stream()
                .map(problem -> "  " + problem.path() + place(problem) + ": " + problem.message())
                .collect(Collectors.joining("\n"));
    }

    private static String place(Problem problem) {
        return problem.line() == 0 ? "" : ", line " + problem.line() + ", column " + problem.column();
    }
}
