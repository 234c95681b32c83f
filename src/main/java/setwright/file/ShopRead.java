package setwright.file;

import java.util.List;
import setwright.file.json.Problem;
import setwright.shop.Shop;

/** What came of reading a shop: the shop, or every problem with its files; paths begin with the file's name. */
public sealed interface ShopRead {
    /** Every file was read. */
    record Opened(Shop shop) implements ShopRead {}

    /** The files were left as they are. */
    record Refused(List<Problem> problems) implements ShopRead {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
