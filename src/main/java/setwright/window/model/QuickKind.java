package setwright.window.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.job.Operation;
import setwright.shop.Cutter;

/** What the quick check can cut, with the forms of cutter that do it. */
enum QuickKind {
    STEP(Operation.Kind.STEP, "Mill along an edge", Cutter.Form.END_MILL, Cutter.Form.SHELL_MILL),
    SLOT(Operation.Kind.SLOT, "Mill a slot", Cutter.Form.END_MILL),
    FACE(
            Operation.Kind.FACE,
            "Face",
            Cutter.Form.FACE_MILL,
            Cutter.Form.SHELL_MILL,
            Cutter.Form.FLY_CUTTER,
            Cutter.Form.END_MILL),
    SPOT(Operation.Kind.SPOT, "Spot", Cutter.Form.SPOT_DRILL),
    DRILL(Operation.Kind.DRILL, "Drill", Cutter.Form.DRILL),
    REAM(Operation.Kind.REAM, "Ream", Cutter.Form.REAMER),
    TAP(Operation.Kind.TAP, "Tap", Cutter.Form.TAP);

    private final Operation.Kind kind;
    private final String words;
    private final List<Cutter.Form> forms;

    QuickKind(Operation.Kind kind, String words, Cutter.Form... forms) {
        this.kind = kind;
        this.words = words;
        this.forms = List.of(forms);
    }

    Operation.Kind kind() {
        return kind;
    }

    Choice choice() {
        return new Choice(name(), words);
    }

    static List<QuickKind> with(Cutter cutter) {
        return Arrays.stream(values())
                .filter(one -> one.forms.contains(cutter.form()))
                .toList();
    }

    static Optional<QuickKind> named(String name) {
        return Arrays.stream(values()).filter(one -> one.name().equals(name)).findFirst();
    }
}
