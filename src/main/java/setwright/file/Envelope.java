package setwright.file;

import java.util.Optional;
import setwright.file.json.Place;
import setwright.file.json.Problems;
import setwright.file.json.Quoted;
import setwright.file.json.Tree;

/** What a file says of itself: its format and version, which decide whether the rest is looked at. */
enum Envelope {
    JOB("setwright job", "a job", 1),
    SHOP("setwright shop", "a shop file", 1);

    private static final String FORMAT = "format";
    private static final String VERSION = "version";

    private final String format;
    private final String words;
    private final int newest;

    Envelope(String format, String words, int newest) {
        this.format = format;
        this.words = words;
        this.newest = newest;
    }

    String format() {
        return format;
    }

    int newest() {
        return newest;
    }

    /** The file in the newest version; empty with one problem where it is not such a file. */
    Optional<Tree.JsonObject> open(Tree tree, Problems problems) {
        if (!(tree instanceof Tree.JsonObject object)) {
            problems.add(tree.at(), "", "Found " + tree.found() + "; accepted here: " + accepted() + ".");
            return Optional.empty();
        }
        Optional<Tree> found = object.get(FORMAT);
        if (!object.text(FORMAT).equals(Optional.of(format))) {
            Place at = found.map(Tree::at).orElse(object.at());
            problems.add(
                    at,
                    FORMAT,
                    "This is not " + words + ": " + otherFormat(found) + "; accepted here: " + accepted() + ".");
            return Optional.empty();
        }
        return version(object, problems).map(version -> Migrations.of(this).toNewest(object, version));
    }

    private Optional<Integer> version(Tree.JsonObject object, Problems problems) {
        Tree found = object.get(VERSION).orElse(object);
        Optional<Integer> version = found instanceof Tree.Numeral numeral ? numeral.whole() : Optional.empty();
        if (version.isEmpty() || version.get() < oldest()) {
            String what = found == object ? "The key \"version\" is missing" : "Found " + found.found();
            problems.add(found.at(), VERSION, what + "; accepted here: " + versions() + ".");
            return Optional.empty();
        }
        if (version.get() > newest) {
            problems.add(
                    found.at(),
                    VERSION,
                    "The file has version " + version.get() + " and was written by a newer Setwright; this one reads "
                            + versions() + ". Open it with the newer one.");
            return Optional.empty();
        }
        return version;
    }

    private int oldest() {
        return newest - Migrations.of(this).count();
    }

    private String versions() {
        return oldest() == newest ? "version " + newest : "versions " + oldest() + " to " + newest;
    }

    private String accepted() {
        return "an object with " + Quoted.of(FORMAT) + ": " + Quoted.of(format) + " and " + Quoted.of(VERSION) + ": "
                + newest;
    }

    private static String otherFormat(Optional<Tree> found) {
        for (Envelope other : values()) {
            if (found.isPresent()
                    && found.get() instanceof Tree.Text text
                    && text.text().equals(other.format)) {
                return "it is " + other.words;
            }
        }
        return found.map(tree -> "its \"format\" is " + tree.found()).orElse("it has no \"format\"");
    }
}
