package setwright.window.view;

import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.CardActions;
import setwright.window.look.Palette;
import setwright.window.model.Field;

/** A field below its label. */
final class FieldBox extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel label = new JLabel();
    private final transient FieldView view;

    FieldBox(Field field, CardActions actions) {
        super(new MigLayout("fillx, insets 0, gap 0, wrap 1", "[grow, fill]", "[]1[28!]"));
        setOpaque(false);
        JComponent component = field.isChoice() ? new ChoiceField(field, actions) : new TypedField(field, actions);
        view = (FieldView) component;
        label.setLabelFor(component);
        label.setName("label." + field.key());
        add(label, "wmin 0");
        add(component, "wmin 0");
    }

    void show(Field field) {
        view.show(field);
        label.setText(field.label());
        label.setForeground(
                field.said().isEmpty() ? Palette.now().pencil() : Palette.now().stop());
    }
}
