package setwright.file;

import java.util.List;
import setwright.file.json.Tree;

/** A shop file as it stands; a row of the kind {@code series} stands for many. */
public record ShopDocument(String format, int version, List<Tree> rows) {}
