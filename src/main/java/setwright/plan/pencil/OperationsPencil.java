package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Divided;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Ids;
import setwright.job.Operation;
import setwright.job.SetUp;
import setwright.plan.part.Lying;
import setwright.plan.part.MadeFrom;
import setwright.plan.part.Mouths;

/** Order: adds the operations that the features of a side need and nobody wrote down, each in its working place. */
final class OperationsPencil {
    private final Drafting drafting;

    OperationsPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    /** The set-up's own operations in their order, with the missing ones put in before the first of a later kind. */
    List<Operation> complete(SetUp setUp, Side up) {
        List<Operation> all = new ArrayList<>(setUp.operations());
        for (Operation missing : missing(setUp, up)) {
            all.add(place(all, missing), missing);
        }
        return all;
    }

    private static int place(List<Operation> all, Operation missing) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).kind().compareTo(missing.kind()) > 0) {
                return i;
            }
        }
        return all.size();
    }

    private List<Operation> missing(SetUp setUp, Side up) {
        List<Operation> found = new ArrayList<>();
        List<String> spotted = new ArrayList<>();
        for (Feature feature : drafting.job().plan().features()) {
            for (Operation.Kind kind : steps(feature, up)) {
                if (made(feature.id(), kind)) {
                    continue;
                }
                if (kind == Operation.Kind.SPOT) {
                    spotted.add(feature.id());
                } else {
                    found.add(pencilled(feature.id(), kind, List.of(feature.id())));
                }
            }
        }
        if (!spotted.isEmpty()) {
            found.add(pencilled(setUp.id(), Operation.Kind.SPOT, spotted));
        }
        found.sort(Comparator.comparing(Operation::kind));
        return found;
    }

    /** Whether some operation of the job, in whatever set-up, makes that step of the feature. */
    private boolean made(String feature, Operation.Kind kind) {
        return drafting.job().plan().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .anyMatch(operation ->
                        operation.kind() == kind && operation.features().contains(feature));
    }

    private Operation pencilled(String of, Operation.Kind kind, List<String> features) {
        List<String> taken = drafting.job().plan().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .map(Operation::id)
                .toList();
        String id = Ids.operation(of, kind);
        return Operation.pencilled(Ids.free(id, taken), kind, features);
    }

    /** What a feature needs with a side up: all of it on its own side, the mouth of a hole where that is opened from. */
    private List<Operation.Kind> steps(Feature feature, Side up) {
        List<Operation.Kind> found = new ArrayList<>();
        if (MadeFrom.up(feature, drafting.job()) == up) {
            found.addAll(steps(feature));
        }
        if (feature instanceof Hole hole && Mouths.side(hole) == up) {
            mouth(hole).ifPresent(found::add);
        }
        return found;
    }

    /** The mouth that the drawing asks for; before a tap a countersink where the shop has one. */
    private Optional<Operation.Kind> mouth(Hole hole) {
        Hole.Mouth mouth = hole.mouth();
        if (mouth != null) {
            return Optional.of(
                    switch (mouth.form()) {
                        case COUNTERBORE -> Operation.Kind.COUNTERBORE;
                        case COUNTERSINK -> Operation.Kind.COUNTERSINK;
                        case SPOTFACE -> Operation.Kind.SPOTFACE;
                    });
        }
        return hole.make() == Hole.Make.TAPPED
                ? new MouthPencil(drafting).countersink(hole).map(tool -> Operation.Kind.COUNTERSINK)
                : Optional.empty();
    }

    private static List<Operation.Kind> steps(Feature feature) {
        return switch (feature.kind()) {
            case FACE, INCLINED_FACE, FLATS -> List.of(Operation.Kind.FACE);
            case STEP -> List.of(Operation.Kind.STEP);
            case SLOT, ARC_SLOT -> List.of(Operation.Kind.SLOT);
            case RADIUS_END, PROFILE -> List.of(Operation.Kind.PROFILE);
            case POCKET -> List.of(Operation.Kind.POCKET);
            case KEYSEAT -> List.of(Operation.Kind.KEYSEAT);
            case WOODRUFF_SEAT -> List.of(Operation.Kind.WOODRUFF);
            case T_SLOT -> List.of(Operation.Kind.SLOT, Operation.Kind.T_SLOT);
            case DOVETAIL -> List.of(Operation.Kind.SLOT, Operation.Kind.DOVETAIL);
            case CHAMFER -> List.of(Operation.Kind.CHAMFER);
            case SLIT -> List.of(Operation.Kind.SAW);
            case DIVIDED ->
                switch (((Divided) feature).what()) {
                    case TEETH -> List.of(Operation.Kind.FORM);
                    case SPLINES -> List.of(Operation.Kind.SLOT);
                    case GRADUATIONS -> List.of(Operation.Kind.SCRIBE);
                    case FLATS -> List.of(Operation.Kind.FACE);
                    case HOLES -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL);
                };
            case HOLE ->
                switch (((Hole) feature).make()) {
                    case PLAIN -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL);
                    case BORED -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.BORE);
                    case REAMED -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.REAM);
                    case TAPPED -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.TAP);
                };
        };
    }

    /** Sides that carry features: those to be faced first, the larger before the smaller, then as {@link Side} goes. */
    List<Side> sides() {
        return Arrays.stream(Side.values())
                .filter(this::worked)
                .sorted(Comparator.comparing((Side side) -> !faced(side))
                        .thenComparing(side -> faced(side) ? -area(side) : 0))
                .toList();
    }

    private boolean worked(Side side) {
        boolean mouths = drafting.job().plan().features().stream()
                .anyMatch(feature -> feature instanceof Hole hole && Mouths.side(hole) == side);
        return mouths
                || drafting.job().plan().features().stream()
                        .anyMatch(feature -> MadeFrom.up(feature, drafting.job()) == side);
    }

    private boolean faced(Side side) {
        return drafting.on(side).stream().anyMatch(feature -> feature.kind() == Feature.Kind.FACE);
    }

    private double area(Side side) {
        Lying lying = Lying.of(drafting.block(), side, 0);
        return lying.along().nominal().inside() * lying.across().nominal().inside();
    }
}
