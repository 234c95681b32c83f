package setwright.window.view.card;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import setwright.job.Standing;
import setwright.window.desk.FieldActions;
import setwright.window.look.Palette;
import setwright.window.look.Written;
import setwright.window.model.Field;
import setwright.window.view.part.Keys;
import setwright.window.view.part.StandingMark;

/**
 * A value that is typed. Enter inks it, Delete on the whole text gives it back to the pencil; pencilled it has dots below,
 * measured a box.
 */
final class TypedField extends JTextField implements FieldView {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 28;

    private final transient FieldActions actions;
    private final String key;
    private Standing standing = Standing.PENCILLED;
    private boolean showing;

    TypedField(Field field, FieldActions actions) {
        this.actions = actions;
        this.key = field.key();
        setName("field." + key);
        setColumns(6);
        setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
        setMinimumSize(new java.awt.Dimension(40, HEIGHT));
        setPreferredSize(new java.awt.Dimension(60, HEIGHT));
        getDocument().addDocumentListener(new Typing());
        addFocusListener(new Focus());
        addActionListener(event -> {
            actions.ink(key);
            selectAll();
        });
        Keys.on(this, "PAGE_UP", () -> actions.nudge(key, 1));
        Keys.on(this, "PAGE_DOWN", () -> actions.nudge(key, -1));
        bindDelete();
        bindBack();
        show(field);
    }

    private void bindBack() {
        Keys.on(this, "ESCAPE", () -> {
            actions.back(key);
            selectAll();
        });
    }

    private void bindDelete() {
        Object plainDelete = getInputMap().get(KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0));
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), "delete");
        getActionMap().put("delete", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                String selected = getSelectedText();
                if (getText().isEmpty() || getText().equals(selected)) {
                    actions.pencil(key);
                    selectAll();
                } else {
                    getActionMap().get(plainDelete).actionPerformed(event);
                }
            }
        });
    }

    @Override
    public void show(Field field) {
        standing = field.standing();
        if (!getText().equals(field.text())) {
            boolean whole = getText().equals(getSelectedText());
            showing = true;
            setText(field.text());
            showing = false;
            if (whole && isFocusOwner()) {
                selectAll();
            }
        }
        FieldView.describe(this, field);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = Written.sharp(graphics);
        StandingMark.paint(g, standing, this, getFontMetrics(getFont()).stringWidth(getText()));
        g.dispose();
    }

    @Override
    public java.awt.Color getBackground() {
        return Palette.now().paper();
    }

    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            changed();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            changed();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            // Attributes only; the text is the same.
        }

        private void changed() {
            if (!showing) {
                actions.typed(key, getText());
            }
        }
    }

    private final class Focus extends FocusAdapter {
        @Override
        public void focusGained(FocusEvent event) {
            selectAll();
        }

        @Override
        public void focusLost(FocusEvent event) {
            if (!event.isTemporary()) {
                actions.left(key);
            }
        }
    }
}
