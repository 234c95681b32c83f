package setwright.job.note;

import java.util.List;
import setwright.job.Hole;
import setwright.job.Pattern;
import setwright.job.Pattern.Datum;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A hole as a sentence. */
record SpokenHole(Spoken spoken, Hole hole) {
    String sentence() {
        int count = hole.place().holes();
        String many = count == 1 ? "" : count + " ";
        String what = many + make() + (count == 1 ? "hole " : "holes ") + size();
        return Spoken.capital(what) + ", " + depth() + mouth() + ", from the " + Spoken.word(hole.side()) + place();
    }

    private String make() {
        return switch (hole.make()) {
            case PLAIN -> "";
            case REAMED -> "reamed ";
            case BORED -> "bored ";
            case TAPPED -> "tapped ";
        };
    }

    private String size() {
        if (hole.thread() != null) {
            return hole.thread();
        }
        return hole.fit() == null
                ? spoken.size(hole.size())
                : spoken.plain(hole.size().nominal()) + " " + hole.fit();
    }

    private String depth() {
        boolean tapped = hole.make() == Hole.Make.TAPPED && hole.depth() != null;
        return spoken.depth(hole.depth()) + (tapped ? " of full thread" : "");
    }

    private String mouth() {
        Hole.Mouth mouth = hole.mouth();
        if (mouth == null) {
            return "";
        }
        String wide = spoken.size(mouth.diameter());
        return switch (mouth.form()) {
            case COUNTERBORE -> ", counterbored " + wide + ", " + spoken.depth(mouth.depth());
            case SPOTFACE -> ", spotfaced " + wide + ", " + spoken.depth(mouth.depth());
            case COUNTERSINK ->
                ", countersunk " + wide
                        + (mouth.angle() == null ? "" : " x " + mouth.angle().text());
        };
    }

    private String place() {
        return switch (hole.place().kind()) {
            case POINTS -> points((Pattern.Points) hole.place());
            case GRID -> grid((Pattern.Grid) hole.place());
            case LINE -> line((Pattern.Line) hole.place());
            case BOLT_CIRCLE -> circle((Pattern.BoltCircle) hole.place());
        };
    }

    private String points(Pattern.Points points) {
        if (points.places().size() == 1
                && centred(points.from(), points.places().get(0))) {
            return ", centred";
        }
        List<String> places = points.places().stream()
                .map(place -> spoken.at(hole.side(), points.from(), place))
                .toList();
        return ", at " + String.join("; ", places);
    }

    private String grid(Pattern.Grid grid) {
        String about = about(grid.from(), grid.middle());
        if (grid.columns() == 2 && grid.rows() == 2) {
            return ", on a " + spoken.plain(grid.spacingU()) + " x " + spoken.plain(grid.spacingV()) + " rectangle"
                    + about;
        }
        if (grid.rows() == 1 || grid.columns() == 1) {
            Typed<Length> pitch = grid.rows() == 1 ? grid.spacingU() : grid.spacingV();
            return ", in line " + (grid.rows() == 1 ? "across" : "upright") + ", pitch " + spoken.plain(pitch) + about;
        }
        return ", in " + grid.rows() + " rows of " + grid.columns() + ", pitch " + spoken.plain(grid.spacingU()) + " x "
                + spoken.plain(grid.spacingV()) + about;
    }

    private String line(Pattern.Line line) {
        return ", in line at " + line.angle().text() + ", pitch " + spoken.plain(line.spacing()) + ", the first at "
                + spoken.at(hole.side(), line.from(), line.first());
    }

    private String circle(Pattern.BoltCircle circle) {
        return ", on a bolt circle of " + spoken.plain(circle.diameter()) + about(circle.from(), circle.centre())
                + ", the first at " + circle.start().text();
    }

    private String about(Datum from, Pattern.Place middle) {
        return centred(from, middle) ? " about the middle" : " about " + spoken.at(hole.side(), from, middle);
    }

    private static boolean centred(Datum from, Pattern.Place place) {
        return from == Datum.CENTRE && place.u().inside() == 0 && place.v().inside() == 0;
    }
}
