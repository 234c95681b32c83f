package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Relation;
import setwright.location.Contributor;
import setwright.location.ErrorBudget;
import setwright.location.TouchOff;
import setwright.location.budget.Seating;
import setwright.plan.part.OperationStage;
import setwright.quantity.Source;

/** What puts two features out of their relation: in one loading less than in two, each of which adds its own. */
record RelationErrors(Relation relation, Side of, Side to, double length) {
    private static final Source COMMON = Source.of("common practice");

    /** A feature where it is made. */
    record Side(Loading loading, Feature feature, Making making, OperationStage stage) {
        double depth() {
            return stage.workTop() - stage.lowest();
        }

        List<Contributor> within() {
            if (feature.kind() == Feature.Kind.HOLE) {
                return new HolePlace(loading, (Hole) feature, making, stage).within();
            }
            return loading.table().contributors();
        }

        /** What one loading adds that another does not share. */
        List<Contributor> loaded() {
            return List.of(loading.datum().contributor(), loading.loading());
        }
    }

    boolean oneLoading() {
        return of.making().setUp().id().equals(to.making().setUp().id());
    }

    ErrorBudget budget() {
        return switch (relation.kind()) {
            case POSITION, COAXIAL -> ErrorBudget.fromTruePlace(places());
            case IN_LINE -> ErrorBudget.alongAnAxis(places());
            case PARALLEL -> ErrorBudget.alongAnAxis(parallel());
            case SQUARE -> ErrorBudget.alongAnAxis(square());
            case ANGULAR -> ErrorBudget.alongAnAxis(angular());
            case DEPTH -> ErrorBudget.alongAnAxis(heights());
        };
    }

    /** A zone about a true place is shared both ways; a zone between two planes is used whole. */
    double limit() {
        double within = relation.within().inside();
        return switch (relation.kind()) {
            case POSITION, COAXIAL, IN_LINE, DEPTH -> ErrorBudget.radialLimit(within);
            case PARALLEL, SQUARE, ANGULAR -> within;
        };
    }

    private List<Contributor> places() {
        List<Contributor> all = new ArrayList<>(of.within());
        all.addAll(to.within());
        return withLoadings(all);
    }

    private List<Contributor> withLoadings(List<Contributor> all) {
        if (!oneLoading()) {
            all.addAll(of.loaded());
            all.addAll(to.loaded());
        }
        return all;
    }

    private List<Contributor> parallel() {
        List<Contributor> all = new ArrayList<>();
        all.add(Contributor.eachAxis("straightness of the slide", Seating.skew(length, Seating.STRAIGHTNESS), COMMON)
                .halvedBy("a light last pass one way"));
        if (!oneLoading()) {
            all.add(Seating.seat());
            all.add(Seating.jaw(length));
        }
        return all;
    }

    private List<Contributor> square() {
        List<Contributor> all = new ArrayList<>();
        if (of.feature().kind() == Feature.Kind.HOLE || to.feature().kind() == Feature.Kind.HOLE) {
            all.add(Seating.lean(Math.min(of.depth(), to.depth())));
        } else {
            all.add(Seating.squareness(length));
        }
        if (!oneLoading()) {
            all.add(Seating.seat());
        }
        return all;
    }

    private List<Contributor> angular() {
        List<Contributor> all = new ArrayList<>(of.loading().index(length / 2));
        all.addAll(to.loading().index(length / 2));
        if (all.isEmpty()) {
            all.add(Seating.squareness(length));
        }
        if (!oneLoading()) {
            all.add(Seating.jaw(length));
        }
        return all;
    }

    private List<Contributor> heights() {
        List<Contributor> all = new ArrayList<>(of.loading().knee().contributors());
        boolean oneTool =
                of.making().operation().id().equals(to.making().operation().id());
        if (!oneTool) {
            all.add(touchOff(of));
            all.add(touchOff(to));
        }
        if (!oneLoading()) {
            all.add(Seating.seat());
        }
        return all;
    }

    private static Contributor touchOff(Side side) {
        return Contributor.oneDirection("touching off for " + side.feature().id(), TouchOff.EACH, COMMON)
                .halvedBy("cutting both with one tool");
    }
}
