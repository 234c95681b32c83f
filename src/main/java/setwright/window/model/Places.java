package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.job.BlockSize;
import setwright.job.DrawnHolding;
import setwright.job.DrawnOperation;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.window.state.Selection;

/** Which places an unfolded line shows: the five or six that matter for its kind, and those one key further. */
final class Places {
    private static final Place CUTTER =
            new OperationPlace<>(OperationField.CUTTER, "Cutter", Sort.row(ShopChoices::cutters));
    private static final Place HOLDER =
            new OperationPlace<>(OperationField.HOLDER, "Holder", Sort.row(ShopChoices::holders));
    private static final Place STICK_OUT = new OperationPlace<>(OperationField.STICK_OUT, "Stick-out", Sort.SIZE);
    private static final Place DEPTH = new OperationPlace<>(OperationField.DEPTH, "Depth", Sort.SIZE);
    private static final Place WIDTH = new OperationPlace<>(OperationField.WIDTH, "Width", Sort.SIZE);
    private static final Place SPEED = new OperationPlace<>(OperationField.SPEED, "Speed", Sort.SPINDLE_SPEED);
    private static final Place FEED = new OperationPlace<>(OperationField.FEED, "Feed", Sort.FEED);
    private static final Place KNEE = new OperationPlace<>(OperationField.KNEE_HEIGHT, "Nose over table", Sort.SIZE);
    private static final Place FINISH =
            new OperationPlace<>(OperationField.FINISH, "Left for the last pass", Sort.length(0));
    private static final Place LAST_PASS = new OperationPlace<>(
            OperationField.LAST_PASS, "Last pass", Sort.words(List.of(Operation.LastPass.values())));
    private static final Place TOOL_LIFE = new OperationPlace<>(OperationField.TOOL_LIFE, "Tool life", Sort.TIME);
    private static final Place DIRECTION = new OperationPlace<>(
            OperationField.DIRECTION, "Direction", Sort.words(List.of(Operation.Direction.values())));
    private static final Place COOLANT =
            new OperationPlace<>(OperationField.COOLANT, "On the cut", Sort.words(List.of(Operation.Coolant.values())));
    private static final Place METHOD =
            new OperationPlace<>(OperationField.METHOD, "Fed by", Sort.words(List.of(Operation.Method.values())));

    private static final Place VISE = new HoldingPlace<>(ViseField.VISE, "Vise", Sort.row(ShopChoices::vises));
    private static final Place GRIP =
            new HoldingPlace<>(ViseField.GRIP, "Grip", Sort.words(List.of(ViseHolding.GripAsked.values())));
    private static final Place PARALLELS =
            new HoldingPlace<>(ViseField.PARALLELS, "Parallels", Sort.row(ShopChoices::parallels));
    private static final Place PARALLEL_HEIGHT = new HoldingPlace<>(ViseField.PARALLEL_HEIGHT, "Height", heights());
    private static final Place SEAT =
            new HoldingPlace<>(ViseField.SEAT, "Jaws on", Sort.words(List.of(ViseHolding.JawSeat.values())));
    private static final Place INSET =
            new HoldingPlace<>(ViseField.PARALLEL_INSET, "Parallels off the jaws", Sort.length(0));
    private static final Place OFFSET =
            new HoldingPlace<>(ViseField.OFFSET, "Part off the middle", Sort.length(Double.NEGATIVE_INFINITY));

    private static final Place JAWS = new HoldingPlace<>(ViseField.JAWS, "Jaws", Sort.row(ShopChoices::jaws));
    private static final Place JAW_CUT =
            new HoldingPlace<>(ViseField.JAW_CUT, "Cut to", Sort.words(List.of(ViseHolding.JawCut.values())));
    private static final Place JAW_CUT_DEPTH =
            new HoldingPlace<>(ViseField.JAW_CUT_DEPTH, "Cut below the jaw top", Sort.length(0));
    private static final Place BETWEEN = new HoldingPlace<>(
            ViseField.BETWEEN, "At the moving jaw", Sort.words(List.of(ViseHolding.Between.values())));
    private static final Place PARTS = new HoldingPlace<>(ViseField.PARTS, "Side by side", Sort.COUNT);
    private static final Place VISES = new HoldingPlace<>(ViseField.VISES, "Vises", Sort.COUNT);
    private static final Place APART = new HoldingPlace<>(ViseField.APART, "Vises apart", Sort.length(0));

    private final Planned planned;
    private final Selection at;

    Places(Planned planned, Selection at) {
        this.planned = planned;
        this.at = at;
    }

    /** What a place asks of a line: the set-up for its holding, else the line itself. */
    String line() {
        return at.line().equals(Selection.HOLDING) ? at.setUp() : at.line();
    }

    /** Rows of places as they stand beside each other; nothing where no line is unfolded. */
    List<List<Place>> first() {
        return switch (at.line()) {
            case "" -> List.of();
            case Selection.PART ->
                List.of(
                        List.of(PartPlace.material(Material.class), PartPlace.machine(Machine.class)),
                        List.of(
                                PartPlace.NUMBER_OFF,
                                PartPlace.size(BlockSize.LENGTH),
                                PartPlace.size(BlockSize.DEPTH),
                                PartPlace.size(BlockSize.HEIGHT)));
            case Selection.HOLDING ->
                inVise()
                        ? List.of(List.of(VISE, GRIP), List.of(PARALLELS, PARALLEL_HEIGHT))
                        : holding().map(HoldingPlaces::first).orElse(List.of());
            default -> planned.operation(at.line()).map(this::ofOperation).orElse(List.of());
        };
    }

    /** One key further. */
    List<List<Place>> more() {
        return switch (at.line()) {
            case "", Selection.PART -> List.of();
            case Selection.HOLDING ->
                inVise()
                        ? List.of(
                                List.of(SideUpPlace.UP, SEAT, INSET, OFFSET),
                                List.of(JAWS, JAW_CUT, JAW_CUT_DEPTH, BETWEEN),
                                List.of(PARTS, VISES, APART))
                        : holding()
                                .map(HoldingPlaces::more)
                                .map(Places::withSideUp)
                                .orElse(List.of(List.of(SideUpPlace.UP)));
            default -> planned.operation(at.line()).map(Places::moreOfOperation).orElse(List.of());
        };
    }

    private static List<List<Place>> moreOfOperation(DrawnOperation operation) {
        return operation.kind().inHole()
                ? List.of(List.of(METHOD, COOLANT), List.of(TOOL_LIFE, KNEE))
                : List.of(List.of(FINISH, LAST_PASS, DIRECTION), List.of(COOLANT, TOOL_LIFE, KNEE));
    }

    private static List<List<Place>> withSideUp(List<List<Place>> rows) {
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(List.<Place>of(SideUpPlace.UP)), rows.stream())
                .toList();
    }

    private Optional<HoldingPlaces> holding() {
        return planned.setUp(at.setUp()).map(setUp -> new HoldingPlaces(planned, setUp));
    }

    Optional<Place> find(String key) {
        return java.util.stream.Stream.concat(first().stream(), more().stream())
                .flatMap(List::stream)
                .filter(place -> place.key().equals(key))
                .findFirst();
    }

    private List<List<Place>> ofOperation(DrawnOperation operation) {
        List<Place> tool = List.of(CUTTER, HOLDER);
        return switch (operation.kind()) {
            case FACE -> List.of(tool, List.of(STICK_OUT, DEPTH, WIDTH, SPEED, FEED));
            case SPOT -> List.of(tool, List.of(STICK_OUT, SPEED, FEED));
            case STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, WOODRUFF, SAW, CHAMFER, FORM, SCRIBE ->
                List.of(tool, List.of(STICK_OUT, DEPTH, WIDTH, SPEED, FEED));
            case DRILL, REAM, TAP, BORE, COUNTERBORE, SPOTFACE, COUNTERSINK ->
                List.of(
                        tool,
                        blind(operation) ? List.of(STICK_OUT, DEPTH, SPEED, FEED) : List.of(STICK_OUT, SPEED, FEED));
        };
    }

    private boolean inVise() {
        return planned.setUp(at.setUp())
                .filter(setUp -> setUp.holding().kind() == DrawnHolding.Kind.VISE)
                .isPresent();
    }

    private boolean blind(DrawnOperation operation) {
        return planned.job().plan().features().stream()
                .filter(feature -> operation.features().contains(feature.id()))
                .anyMatch(feature -> feature instanceof Hole hole && !hole.through());
    }

    private static Sort<Typed<Length>> heights() {
        return new Sort<>((reading, text) -> reading.length(text), Typed::text, ShopChoices::heights);
    }
}
