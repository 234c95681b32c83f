package setwright.file;

import java.util.List;
import java.util.function.UnaryOperator;
import setwright.file.json.Json;
import setwright.file.json.Tree;

/**
 * The steps that take older files to the newest version, one for each version. A step changes what it knows and leaves
 * the rest as it stands, so that the check reports it; values keep the places where they were read.
 */
record Migrations(int newest, List<UnaryOperator<Tree.JsonObject>> steps) {
    private static final Migrations JOB = new Migrations(Envelope.JOB.newest(), List.of(new JobFromVersion0()));
    private static final Migrations SHOP = new Migrations(Envelope.SHOP.newest(), List.of());

    static Migrations of(Envelope envelope) {
        return switch (envelope) {
            case JOB -> JOB;
            case SHOP -> SHOP;
        };
    }

    int count() {
        return steps.size();
    }

    Tree.JsonObject toNewest(Tree.JsonObject document, int version) {
        Tree.JsonObject migrated = document;
        for (int from = version; from < newest; from++) {
            migrated = steps.get(from - newest + steps.size()).apply(migrated);
        }
        return version == newest ? document : migrated.with("version", Json.number((long) newest));
    }
}
