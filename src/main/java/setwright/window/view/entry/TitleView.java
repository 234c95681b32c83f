package setwright.window.view.entry;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.EntryActions;
import setwright.window.look.Palette;
import setwright.window.model.EntryPage;
import setwright.window.model.Field;
import setwright.window.state.Entry.TitleField;
import setwright.window.view.card.FieldBox;
import setwright.window.view.card.Onward;
import setwright.window.view.part.WrappingText;

/** The title block: size, material, number off, unit; name and drawing where somebody wants them. */
final class TitleView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient EntryActions actions;
    private final transient Runnable onward;
    private final transient List<FieldBox> boxes = new ArrayList<>();
    private final WrappingText readBack = new WrappingText("entry.readBack");

    TitleView(EntryActions actions, Runnable onward) {
        super(new MigLayout(
                "fillx, insets 0, gap 8 6, wrap 4, hidemode 3", "[40%, fill][30%, fill][15%, fill][15%, fill]", ""));
        this.actions = actions;
        this.onward = onward;
        setOpaque(false);
    }

    void show(EntryPage page) {
        setVisible(!page.title().isEmpty());
        if (page.title().isEmpty()) {
            return;
        }
        if (boxes.isEmpty()) {
            build(page.title());
        }
        for (int i = 0; i < boxes.size(); i++) {
            boxes.get(i).show(page.title().get(i));
        }
        boolean readable = page.complaint().isEmpty();
        readBack.write(readable ? page.readBack() : page.complaint());
        readBack.setForeground(readable ? Palette.now().pencil() : Palette.now().stop());
    }

    private void build(List<Field> fields) {
        for (Field field : fields) {
            FieldBox box = new FieldBox(field, new Onward(actions, this::next));
            boxes.add(box);
            add(box, field.key().equals("title.PART") ? "wmin 0, newline" : "wmin 0");
        }
        add(readBack, "newline, span 4, wmin 0");
    }

    void takeKeyboard() {
        if (!boxes.isEmpty()) {
            boxes.get(0).takeKeyboard();
        }
    }

    /** Enter goes from size to material to number off, and from anything further to the notes. */
    private void next(String key) {
        int at = TitleField.valueOf(key.substring(key.indexOf('.') + 1)).ordinal();
        if (at < TitleField.OFF.ordinal()) {
            boxes.get(at + 1).takeKeyboard();
        } else {
            onward.run();
        }
    }
}
