package setwright.window.view.card;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.FieldActions;
import setwright.window.look.Palette;
import setwright.window.model.Field;

/** A field below its label. */
public final class FieldBox extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel label = new JLabel();
    private final String key;
    private final JComponent component;
    private final transient FieldView view;

    public FieldBox(Field field, FieldActions actions) {
        super(new MigLayout("fillx, insets 0, gap 0, wrap 1", "[grow, fill]", "[]1[28!]"));
        setOpaque(false);
        key = field.key();
        component = field.isChoice() ? new ChoiceField(field, actions) : new TypedField(field, actions);
        view = (FieldView) component;
        label.setLabelFor(component);
        label.setName("label." + field.key());
        add(label, "wmin 0");
        add(component, "wmin 0");
    }

    public void show(Field field) {
        view.show(field);
        label.setText(field.label());
        label.setForeground(
                field.said().isEmpty() ? Palette.now().pencil() : Palette.now().stop());
    }

    /** Tells when the keyboard comes to this field. */
    void whenChosen(Runnable told) {
        component.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                told.run();
            }
        });
    }

    String key() {
        return key;
    }

    public void takeKeyboard() {
        component.requestFocusInWindow();
    }
}
